import type { Evaluation, Finding, Job, Quote, Reading, Retest, RetestComparison, Session } from '@evenbore/contract'

/** What sheets are made of: the answers that the screens get, asked for in the same person's name. */
export type Material = {
  readonly job: Job
  readonly sessions: readonly Session[]
  /** null where the readings cannot be reckoned. */
  readonly evaluation: Evaluation | null
  /** Those that were judged, as the evaluation counts them. */
  readonly judged: readonly Reading[]
  readonly quote: Quote
  readonly findings: readonly Finding[]
  readonly retests: readonly Retest[]
  /** The release retest against its baseline. */
  readonly release: RetestComparison | null
}
