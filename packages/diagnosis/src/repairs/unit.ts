/** A thing that may be wrong: a cylinder, a bridge or the engine as a whole, with what it may be. */
export interface Unit {
  readonly cylinders: readonly number[]
  readonly wrong: number
  readonly by: ReadonlyMap<string, number>
}
