/**
 * Pushes labels apart so that none lies on another, keeping their order and staying as near to their marks as they can.
 * @param wanted where each label would like to stand (px)
 * @param gap least distance between two (px)
 * @returns a place for each, in the order given
 */
export function spreadLabels(wanted: readonly number[], gap: number, from: number, to: number): number[] {
  const order = [...wanted.keys()].sort((a, b) => wanted[a]! - wanted[b]! || a - b)
  const places = [...wanted]
  let last = from - gap
  for (const index of order) {
    places[index] = Math.max(places[index]!, last + gap, from)
    last = places[index]!
  }
  // too low now? push back up from the foot
  let next = to + gap
  for (const index of order.toReversed()) {
    places[index] = Math.min(places[index]!, next - gap)
    next = places[index]!
  }
  return places
}

/** A label under an axis: its left edge (px) and the row that it stands on, counted from 0. */
export type PlacedLabel = { readonly left: number; readonly row: number }

/**
 * Places labels under their marks, centred where there is room, none off the paper, each on the first row where it lies on no other.
 * @param labels middle and width of each (px)
 */
export function labelRows(labels: readonly { readonly middle: number; readonly width: number }[], from: number, to: number): PlacedLabel[] {
  const ends: number[] = [] // of each row, where its last label ends
  const placed: PlacedLabel[] = []
  for (const [index, { middle, width }] of [...labels.entries()].sort(([, a], [, b]) => a.middle - b.middle)) {
    const left = Math.max(from, Math.min(middle - width / 2, to - width))
    const free = ends.findIndex((end) => end + 10 <= left)
    const row = free < 0 ? ends.length : free
    ends[row] = left + width
    placed[index] = { left, row }
  }
  return placed
}

/** Line styles that differ in black and white: the first is the leading one. */
export const dashes = ['', '9 5', '3 5', '14 4 3 4', '2 3 8 3', '18 6'] as const
