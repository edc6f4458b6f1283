/** Where each cylinder is drawn: the block seen from above, its front at the left. Pure numbers, in CSS pixels. */
export interface PlanShape {
  readonly layout: 'inline' | 'v' | 'flat'
  /** Each bank front to rear; one bank for an engine in line. */
  readonly banks: readonly (readonly number[])[]
  /** Cylinders under one gasket piece, in order; neighbours are consecutive entries. Without it the banks. */
  readonly gaskets?: readonly (readonly number[])[]
}

export interface PlacedCylinder {
  readonly cylinder: number
  readonly bank: number
  readonly x: number
  readonly y: number
}

/** A pair under one gasket piece: the land between them, where a bridge would be. */
export interface PlacedLand {
  readonly cylinders: readonly [number, number]
  readonly x: number
  readonly y: number
}

export interface PlanGeometry {
  readonly width: number
  readonly height: number
  readonly radius: number
  readonly cylinders: readonly PlacedCylinder[]
  readonly lands: readonly PlacedLand[]
  /** Outline of each block as an SVG path, pointed at the front. A V has one block with a valley, a flat engine two. */
  readonly blocks: readonly string[]
  /** The valley of a V or the crankcase of a flat engine: a line from front to rear; none in line. */
  readonly middle: number | undefined
}

const NOSE = 22 // how far the pointed front stands out
const REAR = 14
const WALL = 16 // block wall around a cylinder
const TOUCHING = 5 // between two cylinders under one gasket piece
const APART = 22 // between two that share none
const LARGEST = 78
/** A finger's target: circles never get smaller than 64 px across; a wider engine scrolls sideways instead. */
export const SMALLEST = 32
const FOOT = 26 // room for the words under the block

function sharesLand(gaskets: readonly (readonly number[])[], a: number, b: number): boolean {
  return gaskets.some((piece) => piece.some((cylinder, i) => (cylinder === a && piece[i + 1] === b) || (cylinder === b && piece[i + 1] === a)))
}

function gapsOf(shape: PlanShape): number[][] {
  const gaskets = shape.gaskets ?? shape.banks
  return shape.banks.map((bank) => bank.slice(1).map((cylinder, i) => (sharesLand(gaskets, bank[i]!, cylinder) ? TOUCHING : APART)))
}

/**
 * Places the cylinders in the given width, as large as fits.
 * In a V the second bank is set back by half a bore, as rods that share a crankpin demand; in a flat engine too.
 *
 * @example planGeometry({ layout: 'inline', banks: [[1, 2, 3, 4]] }, 772).cylinders.length // 4
 */
export function planGeometry(shape: PlanShape, width: number, largest = LARGEST): PlanGeometry {
  const gaps = gapsOf(shape)
  const facing = shape.banks.length > 1
  const fixed = NOSE + REAR + 2 * WALL
  const radius = Math.min(
    largest,
    ...shape.banks.map((bank, i) => {
      const gap = gaps[i]!.reduce((sum, value) => sum + value, 0)
      return (width - fixed - gap) / (2 * bank.length + (facing ? 1 : 0))
    }),
  )
  const r = Math.max(SMALLEST, Math.floor(radius))
  const stagger = facing ? r / 2 : 0
  const between = shape.layout === 'flat' ? 40 : 18
  const rowHeight = 2 * r + 2 * WALL

  const cylinders: PlacedCylinder[] = []
  const lands: PlacedLand[] = []
  const ends: number[] = []
  shape.banks.forEach((bank, b) => {
    const y = 2 + WALL + r + b * (facing ? (shape.layout === 'v' ? 2 * r + between : rowHeight + between) : 0)
    let x = NOSE + WALL + r + (b === 1 ? 2 * stagger : 0)
    bank.forEach((cylinder, i) => {
      if (i > 0) x += 2 * r + gaps[b]![i - 1]!
      cylinders.push({ cylinder, bank: b, x, y })
      if (i > 0 && gaps[b]![i - 1] === TOUCHING) lands.push({ cylinders: [bank[i - 1]!, cylinder], x: x - r - TOUCHING / 2, y })
    })
    ends.push(x + r + WALL)
  })
  const right = Math.max(...ends)
  const rows = shape.banks.map((_, b) => cylinders.find((placed) => placed.bank === b)!.y)
  const blocks = shape.layout === 'flat' && facing ? rows.map((y) => outline(y - r - WALL, y + r + WALL, right)) : [outline(rows[0]! - r - WALL, rows.at(-1)! + r + WALL, right)]
  return {
    width: right + REAR,
    height: rows.at(-1)! + r + WALL + FOOT,
    radius: r,
    cylinders,
    lands,
    blocks,
    middle: facing ? (rows[0]! + rows[1]!) / 2 : undefined,
  }
}

function outline(top: number, bottom: number, right: number): string {
  const middle = (top + bottom) / 2
  return `M${NOSE} ${top} H${right} V${bottom} H${NOSE} L6 ${middle} Z`
}
