import type { Case, Evaluation } from '@evenbore/contract'
import { evaluate } from '@evenbore/diagnosis'
import type { Judge } from './opinion.ts'

/** The model's full evaluation, with or without the ranking of next tests. */
export function evaluateWithModel(value: Case, ranked: boolean): Evaluation {
  return evaluate(value, undefined, { ranking: ranked })
}

/** The model as a judge: its beliefs and its verdict on the spread. */
export const MODEL: Judge = {
  name: 'model',
  judge: (value) => {
    const evaluation = evaluateWithModel(value, false)
    return {
      cylinders: evaluation.cylinders,
      neighbours: evaluation.neighbours,
      engine: evaluation.engine,
      probabilityInside: evaluation.consistency.probabilityInside,
    }
  },
}
