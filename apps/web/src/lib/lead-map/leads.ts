/** One post of the distributor cap: where it stands on the clock face, and the cylinder its lead goes to. */
export interface Lead {
  /** 1 is the post of lead 1, then in the direction the rotor turns. */
  readonly post: number
  readonly cylinder: number
  /** Degrees clockwise from 12 o'clock, 0 up to 360. */
  readonly angle: number
}

/**
 * Which lead goes where: the rotor passes the posts in firing order, so from the post of lead 1 the leads follow in that order, in the rotor's direction.
 * Common practice, no source.
 *
 * @param leadOneAtOClock where the post of cylinder 1 stands, 12 at the top
 * @example leadsOf([1, 3, 4, 2], 'clockwise', 3).map((lead) => lead.angle) // [90, 180, 270, 0]
 */
export function leadsOf(firingOrder: readonly number[], rotor: 'clockwise' | 'anticlockwise', leadOneAtOClock: number): Lead[] {
  const start = firingOrder.indexOf(1)
  const order = start < 0 ? firingOrder : [...firingOrder.slice(start), ...firingOrder.slice(0, start)]
  const step = (360 / order.length) * (rotor === 'clockwise' ? 1 : -1)
  return order.map((cylinder, i) => ({ post: i + 1, cylinder, angle: (((leadOneAtOClock * 30 + i * step) % 360) + 360) % 360 }))
}
