import type { Knowledge } from '../knowledge/knowledge.ts'
import type { Grid } from './grid.ts'
import type { Grouping } from './groups.ts'
import type { Kinds } from './kinds.ts'
import type { PercentCurve } from './leakage.ts'
import type { Ears } from './listening.ts'
import type { Looks } from './looks.ts'
import type { StateSpace } from './states.ts'

/** What is shared by all cylinders while the evidence is summed. */
export interface Workspace {
  readonly knowledge: Knowledge
  readonly states: StateSpace
  readonly grid: Grid
  readonly ears: Ears
  readonly curve: PercentCurve
  readonly grouping: Grouping
  /** Sets of fault groups in question that the engine is summed without. */
  readonly subsets: readonly number[]
}

/** Priors of a cylinder's own states. */
export interface Priors {
  /** In each class of engine: [class * OWN_COUNT + own] */
  readonly prior: Float64Array
  /** In the class where each is likeliest. */
  readonly likeliest: Float64Array
  readonly kinds: Kinds
}

/** The likelihood of a cylinder's readings, factored over the grid for each state, and summed over its own states. */
export interface Emission extends Priors {
  /** The priors without what the plugs say of the class of engine. */
  readonly plain: Priors
  /** [loss row * levels + level] */
  readonly dry: Float64Array | null
  /** [(family * seal rows + row) * rises + v] */
  readonly wet: Float64Array | null
  /** [row * leakCount + l] for the row of each state in `leakRow`, filled for the rows of live states; tables of wrong notes after it */
  readonly leak: Float64Array | null
  /** Where the table of each family of classes begins in it. */
  readonly leakAt: Int32Array
  readonly leakRow: Int32Array
  readonly looks: Looks | null
  /** Weight x looks of each state, without the prior of its own fault. */
  readonly weight: Float64Array
  /** 1 for states worth summing. */
  readonly live: Uint8Array
  /** 1 for those of them that show where all readings together can lie. */
  readonly leading: Uint8Array
  /** What the readings leave of each own state where they suit each of its states best, without its prior. */
  readonly atBest: Float64Array
  /** [signature * bridge levels + level] over the cells that were roughly kept, null where no state is; scaled to a largest value of one by `scale`. */
  readonly blocks: readonly (Float64Array | null)[]
  readonly scale: number
}

/** The readings of one cylinder as tables over states and grid, before anything is summed. */
export type Likelihood = Omit<Emission, 'blocks' | 'scale'>

/** The part of a column in which anything is kept: rises and healthy leaks, each from the first on, so many. */
export interface Box {
  readonly rise: number
  readonly rises: number
  /** Counted from the first leak that the family can have. */
  readonly leak: number
  readonly leaks: number
}

/** Some cells of the grid, in order. Arrays of the sums hold these alone. */
export interface Cells {
  readonly cells: Int32Array
  /** Where the cells of each column begin, and at last their number. */
  readonly from: Int32Array
  /** For each family of classes, what holds all its kept cells. */
  readonly boxes: readonly Box[]
  /** Place of each cell within the box of its column: rise * leaks + leak. */
  readonly inner: Int32Array
}

/** Cells of the grid that carry any weight. */
export interface KeptCells extends Cells {
  /** Prior of the cells under each cause. */
  readonly prior: readonly Float64Array[]
}
