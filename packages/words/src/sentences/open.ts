import type { Evaluation, Suggestion } from '@evenbore/contract'
import { inHundred } from '../format/number.ts'
import type { Reader } from '../reader.ts'

/** Tests and signs that ask whether coolant leaks at any cylinder, and the faults that they speak of. */
const COOLANT_TESTS: ReadonlySet<string> = new Set(['coolant-gas', 'cooling-pressure', 'smoke-white', 'water-in-oil', 'oil-in-water'])
const COOLANT_FAULTS: ReadonlySet<string> = new Set(['gasket-to-coolant', 'cracked-head'])

/** Chance that coolant leaks at any cylinder, each by itself. */
function coolantSomewhere({ cylinders }: Pick<Evaluation, 'cylinders'>): number {
  const tight = cylinders.map(({ faults }) => faults.reduce((left, { fault, probability }) => (COOLANT_FAULTS.has(fault) ? left - probability : left), 1))
  return 1 - tight.reduce((product, p) => product * p, 1)
}

type Believed = Pick<Evaluation, 'cylinders' | 'engine'> & Partial<Pick<Evaluation, 'consistency' | 'leakage' | 'objections'>>

/** Objections to a leakage reading that another reading contradicts. */
const CONTRADICTED: ReadonlySet<string> = new Set(['piston-off-top', 'leakage-against-compression', 'repeat-disagrees'])

/** Why a repeat is owed, whether it pays or not: the verdict hangs on it, the throttle was shut, or a leakage reading is contradicted. */
function owedWords({ tests: [test] }: Suggestion, { consistency, leakage, objections, cylinders }: Believed, { words, locale }: Reader): string | undefined {
  if (test?.repeat !== true || test.first !== undefined || test.wet === true) return undefined
  const [cylinder, other] = test.cylinders ?? []
  const inside = consistency?.probabilityInside ?? null
  if (test.test === 'compression' && other !== undefined && consistency?.verdict === 'undecided' && inside !== null) return words.diagnosis.doubt(inHundred(inside, locale))
  if (test.test === 'compression' && test.cylinders?.length === cylinders.length && objections?.some(({ code }) => code === 'throttle-shut')) return words.diagnosis.throttleWasShut
  const doubted = new Set(objections?.flatMap(({ code, readings }) => (CONTRADICTED.has(code) ? readings : [])))
  const contradicted = test.test === 'leakage' && leakage?.some((each) => each.cylinder === cylinder && doubted.has(each.reading))
  return contradicted && cylinder !== undefined ? words.diagnosis.contradicted(cylinder) : undefined
}

/**
 * Why a suggested test: what it is owed for, else the two likeliest explanations that stand against each other where it is made, at its first cylinder or in the
 * whole engine; of what asks for a leak into the coolant, how likely there is one. Undefined where nothing is open.
 */
export function openWords(suggestion: Suggestion, evaluation: Believed, reader: Reader): string | undefined {
  const owed = owedWords(suggestion, evaluation, reader)
  if (owed !== undefined) return owed
  const { words, locale } = reader
  const { faults, causes, open, openCoolant } = words.diagnosis
  const [asks] = suggestion.tests
  const coolant = asks !== undefined && COOLANT_TESTS.has(asks.code ?? asks.test) ? coolantSomewhere(evaluation) : 0
  if (coolant >= 0.005) return openCoolant(inHundred(coolant, locale))
  const cylinder = suggestion.tests.find(({ cylinders }) => cylinders?.length)?.cylinders?.[0]
  const belief = evaluation.cylinders.find((each) => each.cylinder === cylinder)
  const named = belief
    ? [{ name: faults['sound'] ?? 'sound', probability: belief.sound }, ...belief.faults.map(({ fault, probability }) => ({ name: faults[fault] ?? fault, probability }))]
    : evaluation.engine.map(({ cause, probability }) => ({ name: causes[cause] ?? cause, probability }))
  const [one, other] = named.sort((a, b) => b.probability - a.probability)
  if (!one || !other || other.probability < 0.005) return undefined
  return open(belief?.cylinder, one.name, inHundred(one.probability, locale), other.name, inHundred(other.probability, locale))
}
