/** How a cylinder stands, said by word and drawn by filling: plain, hatched, dotted, thick accent, dashed. */
export type CylinderState = 'sound' | 'low' | 'unsure' | 'now' | 'unread'

/** What the plan says of one cylinder: texts are ready to show. */
export interface PlanCylinder {
  readonly cylinder: number
  /** The figure in the middle, e.g. "148"; empty while nothing was read. */
  readonly figure?: string
  /** The word for its state, e.g. "low". */
  readonly word: string
  readonly state: CylinderState
}
