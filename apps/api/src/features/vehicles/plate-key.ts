/** A plate as it is searched: capitals and digits alone, accents off, so that "fx 204-b" finds "FX 204 B". */
export function plateKey(plate: string): string {
  return plate.normalize('NFKD').toUpperCase().replace(/[^\p{L}\p{N}]/gu, '')
}
