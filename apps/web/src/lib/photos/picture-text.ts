/** A picture in base64, as the server takes it. */
export function pictureText(picture: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader()
    reader.onload = () => resolve(String(reader.result).replace(/^[^,]*,/, ''))
    reader.onerror = () => reject(new Error('a picture cannot be read', { cause: reader.error }))
    reader.readAsDataURL(picture)
  })
}
