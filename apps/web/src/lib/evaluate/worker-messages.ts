import type { Case, Evaluation } from '@evenbore/contract'

/** Asked of the worker; `id` counts up, and only the newest question is answered to the end. */
export interface Question {
  readonly id: number
  readonly case: Case
}

/** Verdict and faults come first (`next` still empty, `ranked` false), the ranking of next tests after. */
export type WorkerAnswer = { readonly id: number; readonly evaluation: Evaluation; readonly ranked: boolean; readonly failed?: undefined } | { readonly id: number; readonly failed: string }
