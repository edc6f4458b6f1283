import type { Evaluation } from '@evenbore/contract'

/** What a trail keeps of an evaluation beside each reading: enough to follow how the opinion moved, without the whole of it. */
export type EvaluationSummary = {
  readonly consistency: Pick<Evaluation['consistency'], 'rule' | 'spreadPercent' | 'asRead' | 'verdict' | 'probabilityInside'>
  /** By cylinder: free of a fault of its own, and its likeliest fault. */
  readonly cylinders: readonly { readonly cylinder: number; readonly sound: number; readonly fault: string; readonly probability: number }[]
  /** Gaskets between neighbours that are likelier than one in a hundred. */
  readonly neighbours: Evaluation['neighbours']
  readonly engine: { readonly cause: string; readonly probability: number } | null
  readonly objections: readonly string[]
}

const WORTH_A_WORD = 0.01

export function summaryOf({ consistency, cylinders, neighbours, engine, objections }: Evaluation): EvaluationSummary {
  const { rule, spreadPercent, asRead, verdict, probabilityInside } = consistency
  return {
    consistency: { rule, spreadPercent, asRead, verdict, probabilityInside },
    cylinders: cylinders.map(({ cylinder, sound, faults }) => {
      const likeliest = faults.reduce((best, next) => (next.probability > best.probability ? next : best))
      return { cylinder, sound, fault: likeliest.fault, probability: likeliest.probability }
    }),
    neighbours: neighbours.filter(({ probability }) => probability > WORTH_A_WORD),
    engine: engine.reduce<EvaluationSummary['engine']>((best, next) => (best === null || next.probability > best.probability ? next : best), null),
    objections: [...new Set(objections.map(({ code }) => code))],
  }
}
