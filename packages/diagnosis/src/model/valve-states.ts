/** Usual valve timing in degrees after firing top dead centre, from memory: exhaust open 130 to 370, intake 350 to 590. */
const EXHAUST_OPEN = [130, 370] as const
const INTAKE_OPEN = [350, 590] as const

/** Which valves stand open in each cylinder [j] while cylinder [i] is at firing top dead centre. */
export interface OpenValves {
  readonly intake: readonly (readonly boolean[])[]
  readonly exhaust: readonly (readonly boolean[])[]
}

/**
 * Valve states of a four-stroke engine from its firing order (cylinder numbers), even firing intervals.
 * In 1-3-4-2 with No. 1 at the top, No. 2's exhaust and No. 3's intake are open and No. 4 is on overlap.
 */
export function openValves(firingOrder: readonly number[]): OpenValves {
  const n = firingOrder.length
  const place = new Map(firingOrder.map((cylinder, at) => [cylinder, at]))
  const angle = (i: number, j: number): number => {
    const behind = (place.get(j + 1)! - place.get(i + 1)! + n) % n
    return (720 - behind * 720 / n) % 720
  }
  const table = (open: readonly [number, number]): boolean[][] =>
    Array.from({ length: n }, (_, i) => Array.from({ length: n }, (_, j) => angle(i, j) >= open[0] && angle(i, j) <= open[1]))
  return { intake: table(INTAKE_OPEN), exhaust: table(EXHAUST_OPEN) }
}
