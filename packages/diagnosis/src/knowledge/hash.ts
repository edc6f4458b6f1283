/** Fingerprint of a text: two 32-bit FNV-1a style lanes with a final mix, as 16 hexadecimal digits. Not for secrets. */
export function fingerprint(text: string): string {
  let a = 0x811c9dc5
  let b = 0x1b873593
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i)
    a = Math.imul(a ^ code, 0x01000193)
    b = Math.imul(b ^ code, 0x85ebca6b)
    b ^= b >>> 13
  }
  return hex(mix(a)) + hex(mix(b ^ a))
}

function mix(x: number): number {
  let h = x
  h = Math.imul(h ^ (h >>> 16), 0x7feb352d)
  h = Math.imul(h ^ (h >>> 15), 0x846ca68b)
  return h ^ (h >>> 16)
}

function hex(x: number): string {
  return (x >>> 0).toString(16).padStart(8, '0')
}
