/** The longest side of a photo that leaves this device, in pixels: a plug fills it, and it is some hundred kilobytes. */
export const LONGEST_PX = 1600
/** Larger files are not opened: unpacking one could end the page. */
export const MOST_MEGABYTES = 60
const QUALITY = 0.85

export type Shrunk = { readonly picture: Blob; readonly problem?: undefined } | { readonly picture?: undefined; readonly problem: 'bad' | 'too-large' }

/** Width and height within the longest side; small pictures stay as they are. */
export function fitted(width: number, height: number, longest = LONGEST_PX): { width: number; height: number } {
  const scale = Math.min(1, longest / Math.max(width, height))
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) }
}

/**
 * Makes a photo small, upright, and JPEG, by drawing it anew: what else the file holds (place, device, time) stays behind.
 * What the file is called counts for nothing: what cannot be drawn is no picture.
 */
export async function shrink(file: Blob): Promise<Shrunk> {
  if (file.size > MOST_MEGABYTES * 1_000_000) return { problem: 'too-large' }
  let drawn: ImageBitmap
  try {
    drawn = await createImageBitmap(file, { imageOrientation: 'from-image' })
  } catch {
    return { problem: 'bad' }
  }
  const { width, height } = fitted(drawn.width, drawn.height)
  const canvas = document.createElement('canvas')
  canvas.width = width
  canvas.height = height
  const context = canvas.getContext('2d')!
  context.fillStyle = '#fff' // under what is transparent
  context.fillRect(0, 0, width, height)
  context.imageSmoothingQuality = 'high'
  context.drawImage(drawn, 0, 0, width, height)
  drawn.close()
  const picture = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', QUALITY))
  return picture ? { picture } : { problem: 'bad' }
}
