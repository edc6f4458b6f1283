/** An arrangement of cylinders with its usual firing order; banks from front to rear. Orders from memory, of no particular make. */
export type Layout = {
  readonly layout: 'inline' | 'v' | 'flat'
  readonly banks: readonly (readonly number[])[]
  readonly firingOrder: readonly number[]
  readonly weight: number
}

export const LAYOUTS: readonly Layout[] = [
  { layout: 'inline', banks: [[1, 2, 3, 4]], firingOrder: [1, 3, 4, 2], weight: 38 },
  { layout: 'inline', banks: [[1, 2, 3, 4]], firingOrder: [1, 2, 4, 3], weight: 8 },
  { layout: 'inline', banks: [[1, 2, 3, 4, 5, 6]], firingOrder: [1, 5, 3, 6, 2, 4], weight: 15 },
  { layout: 'inline', banks: [[1, 2, 3]], firingOrder: [1, 3, 2], weight: 4 },
  { layout: 'inline', banks: [[1, 2]], firingOrder: [1, 2], weight: 2 },
  { layout: 'inline', banks: [[1, 2, 3, 4, 5]], firingOrder: [1, 2, 4, 5, 3], weight: 2 },
  {
    layout: 'v',
    banks: [
      [1, 3, 5, 7],
      [2, 4, 6, 8],
    ],
    firingOrder: [1, 8, 4, 3, 6, 5, 7, 2],
    weight: 9,
  },
  {
    layout: 'v',
    banks: [
      [1, 2, 3, 4],
      [5, 6, 7, 8],
    ],
    firingOrder: [1, 5, 4, 2, 6, 3, 7, 8],
    weight: 5,
  },
  {
    layout: 'v',
    banks: [
      [1, 3, 5],
      [2, 4, 6],
    ],
    firingOrder: [1, 2, 3, 4, 5, 6],
    weight: 4,
  },
  {
    layout: 'v',
    banks: [
      [1, 2, 3],
      [4, 5, 6],
    ],
    firingOrder: [1, 4, 2, 5, 3, 6],
    weight: 3,
  },
  {
    layout: 'flat',
    banks: [
      [1, 2],
      [3, 4],
    ],
    firingOrder: [1, 4, 3, 2],
    weight: 7,
  },
  { layout: 'flat', banks: [[1], [2]], firingOrder: [1, 2], weight: 1.5 },
  {
    layout: 'flat',
    banks: [
      [1, 2, 3],
      [4, 5, 6],
    ],
    firingOrder: [1, 6, 2, 4, 3, 5],
    weight: 1.5,
  },
]
