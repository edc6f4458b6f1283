import type { Case, Consistency, Objection, SuggestedTest } from '@evenbore/contract'
import type { Inference } from '../model/posterior.ts'
import { normalBelow, normalDensity } from '../rules/normal.ts'
import type { Candidate } from './candidates.ts'
import { entropy, worthOf, type Question } from './information.ts'
import { leakageOutcomes, repeatOutcomes } from './outcomes.ts'

/** What the rules say of a case, as far as it calls for a repeat. */
export interface Report {
  readonly consistency: Pick<Consistency, 'verdict' | 'probabilityInside' | 'lowest' | 'highest'>
  readonly objections: readonly Objection[]
}

/** Of a test that was done twice with two answers a third says which is wrong; after that it is left. */
const MOST_REPEATS = 2
/** Objections that call for the same test again. */
const CONTRADICTED: ReadonlySet<Objection['code']> = new Set(['piston-off-top', 'leakage-against-compression', 'repeat-disagrees'])

/**
 * Repeats that are owed whether they pay or not: of the two cylinders that an undecided verdict hangs on (JCGM 106:2012: undecided is
 * an answer, and more readings are what settles it), of readings that another one contradicts, and of all that were taken with the throttle shut.
 */
export function owed(given: Case, inference: Inference, questions: readonly Question[], done: ReadonlyMap<string, number>, { consistency, objections }: Report): Candidate[] {
  const { minutes } = inference.space.knowledge
  const times = (name: string, cylinder: number): number => done.get(`${name} ${cylinder}`) ?? 0
  // oil in the cylinder spoils a dry reading
  const dryAgain = (cylinder: number, most: number): boolean => times('dry', cylinder) >= 1 && times('dry', cylinder) <= most && times('wet', cylinder) === 0 && times('wet leakage', cylinder) === 0
  const list: Candidate[] = []
  const { verdict, probabilityInside, lowest, highest } = consistency
  if (verdict === 'undecided' && probabilityInside !== null && lowest !== null && highest !== null) {
    const cylinders = [lowest.cylinder, highest.cylinder].sort((a, b) => a - b)
    if (cylinders.every((n) => dryAgain(n, 1))) list.push({ tests: [{ test: 'compression', repeat: true, cylinders }], bits: bitsOfVerdict(probabilityInside), saved: 0, settles: 0, minutes: 2 * minutes.dry.value.each, owed: sayVerdict(probabilityInside) })
  }
  const shut = new Set(objections.flatMap(({ code, readings }) => (code === 'throttle-shut' ? readings : [])).flatMap((reading) => {
    const r = given.readings[reading]!
    return r.test === 'compression' && (r.session === undefined ? given : given.sessions?.[r.session])?.conditions?.throttle === 'closed' ? [r.cylinder] : []
  }))
  const readShut = [...shut].filter((n) => dryAgain(n, 1)).sort((a, b) => a - b)
  if (readShut.length > 0) {
    list.push({ tests: [{ test: 'compression', repeat: true, cylinders: readShut }], bits: 0, saved: 0, settles: 0, minutes: readShut.length * minutes.dry.value.each, owed: 'The throttle was closed: with it open the pressures show what this engine has.' })
  }
  const contradicted = objections.flatMap(({ code, readings }) => (CONTRADICTED.has(code) ? readings : []))
  for (const reading of new Set(contradicted)) {
    const r = given.readings[reading]!
    if (r.test === 'leakage' && r.wet !== true && (r.rockersSlack ?? []).length === 0 && times('retest', r.cylinder) < MOST_REPEATS - 1) {
      add({ test: 'leakage', repeat: true }, r.cylinder, leakageOutcomes(inference), minutes.leakage.value.each)
    } else if (r.test === 'compression' && r.wet !== true && r.running !== true && r.snap !== true && dryAgain(r.cylinder, MOST_REPEATS)) {
      add({ test: 'compression', repeat: true }, r.cylinder, repeatOutcomes(inference, r.cylinder - 1), minutes.dry.value.each)
    }
  }
  function add(test: SuggestedTest, cylinder: number, outcomes: ReturnType<typeof repeatOutcomes>, time: number): void {
    if (outcomes !== null) list.push({ tests: [{ ...test, cylinders: [cylinder] }], ...worthOf(questions[cylinder - 1]!, outcomes), minutes: time, owed: `Two readings of cylinder ${cylinder} contradict each other.` })
  }
  return list
}

function sayVerdict(inside: number): string {
  return `The spread is inside the limit with ${Math.round(100 * inside)} in 100: repeats of the lowest and the highest decide it.`
}

/** Of the variance of the difference, what one more reading of either cylinder leaves. */
const LEFT = 0.5
/** Half the width and the number of steps of the sum over what the repeats may show, in standard deviations. */
const WIDE = 4, STEPS = 32

/**
 * Bits that one more reading of the lowest and of the highest are expected to teach of the verdict. The margin to the limit is taken as normal, with
 * half its variance left after them; the part that the gauge's class makes is not narrowed, but cancels for the most part in a difference.
 */
export function bitsOfVerdict(inside: number): number {
  const margin = quantile(inside)
  let after = 0, sum = 0
  for (let k = 0; k <= STEPS; k++) {
    const z = WIDE * (2 * k / STEPS - 1), weight = normalDensity(z)
    after += weight * entropy(normalBelow((margin + Math.sqrt(1 - LEFT) * z) / Math.sqrt(LEFT)))
    sum += weight
  }
  return Math.max(0, entropy(inside) - after / sum)
}

/** Where a standard normal value lies below with this probability, by halving. */
function quantile(p: number): number {
  let low = -8, high = 8
  for (let step = 0; step < 50; step++) {
    const middle = (low + high) / 2
    if (normalBelow(middle) < p) low = middle
    else high = middle
  }
  return (low + high) / 2
}
