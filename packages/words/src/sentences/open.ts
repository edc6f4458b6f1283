import type { Evaluation, Suggestion } from '@evenbore/contract'
import { inHundred } from '../format/number.ts'
import type { Reader } from '../reader.ts'

/**
 * Why a suggested test: the two likeliest explanations that stand against each other where it is made, at its first cylinder or in the
 * whole engine. Undefined where nothing is open.
 */
export function openWords(suggestion: Suggestion, evaluation: Pick<Evaluation, 'cylinders' | 'engine'>, { words, locale }: Reader): string | undefined {
  const { faults, causes, open } = words.diagnosis
  const cylinder = suggestion.tests.find(({ cylinders }) => cylinders?.length)?.cylinders?.[0]
  const belief = evaluation.cylinders.find((each) => each.cylinder === cylinder)
  const named = belief
    ? [{ name: faults['sound'] ?? 'sound', probability: belief.sound }, ...belief.faults.map(({ fault, probability }) => ({ name: faults[fault] ?? fault, probability }))]
    : evaluation.engine.map(({ cause, probability }) => ({ name: causes[cause] ?? cause, probability }))
  const [one, other] = named.sort((a, b) => b.probability - a.probability)
  if (!one || !other || other.probability < 0.005) return undefined
  return open(belief?.cylinder, one.name, inHundred(one.probability, locale), other.name, inHundred(other.probability, locale))
}
