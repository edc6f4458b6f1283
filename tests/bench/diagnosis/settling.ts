import type { Case, Evaluation, Reading, SuggestedTest } from '@evenbore/contract'
import { cylinderNumbers } from '../../simulator/population/design.ts'
import { drawEngine } from '../../simulator/population/engine.ts'
import { createRandom } from '../../simulator/random.ts'
import { type Truth, truthOf } from '../../simulator/truth.ts'
import { caseOf, describeEngine } from '../../simulator/visit/describe.ts'
import { perform } from '../../simulator/visit/perform.ts'
import { openVisit } from '../../simulator/visit/visit.ts'
import type { World } from '../../simulator/worlds/world.ts'
import { minutesFor, testerAfter } from './minutes.ts'

/** How long an order of testing took to be right and sure about one engine. */
export type Settling = {
  readonly index: number
  /** Minutes until the leading explanation was right at .9; the full time of the fixed order when it never was within that time. */
  readonly minutes: number
  readonly settled: boolean
  /** Minutes and rightness where the order itself stopped: sure at .9, told that enough is known, or nothing left. */
  readonly stopMinutes: number
  readonly rightAtStop: boolean
}
type Leader = { readonly item: string; readonly probability: number }
type Evaluate = (value: Case, ranked: boolean) => Evaluation

const SURE = 0.9
const MOST_TESTS = 30
const NOTHING = 'nothing'

/** Dry, then wet, then leakage on every cylinder, one reading at a time, evaluated after each. */
export function settleByFixedOrder(world: World, seed: number, index: number, evaluate: Evaluate): Settling {
  const bench = open(world, seed, index)
  const state = track(bench, fullMinutes(bench))
  for (const test of fixedOrder(bench)) {
    const leader = bench.measure(test)
    if (state.after(minutesFor(test, bench.cylinders), leadingOf(evaluate(leader, false)))) break
  }
  return state.result()
}

/**
 * What the evaluation suggests first, again and again, from nothing measured at all, for no longer than the fixed order would take. Like the
 * fixed order it is looked at after each reading: a round that has settled the engine is not finished, and of tests suggested one after the
 * other the second is done only if it is suggested again, as in the bay, where each reading brings a new suggestion.
 */
export function settleByNext(world: World, seed: number, index: number, evaluate: Evaluate): Settling {
  const bench = open(world, seed, index)
  const full = fullMinutes(bench)
  const state = track(bench, full)
  let testerOn: number | null = null
  for (let done = 0; done < MOST_TESTS; done++) {
    const evaluation = evaluate(bench.current(), true)
    const [suggestion] = evaluation.next
    if (evaluation.enough !== null) state.stop(leadingOf(evaluation))
    if (suggestion === undefined || suggestion.tests.length === 0) break
    for (const [one, minutes] of oneByOne(suggestion.tests[0]!, bench.cylinders, testerOn)) {
      testerOn = testerAfter(one)
      const value = bench.measure(one)
      if (state.after(minutes, leadingOf(evaluate(value, false))) || state.spent() >= full) return state.result()
    }
  }
  return state.result()
}

/** A test cylinder by cylinder, with the minutes of each: what is set up once is charged at the first. */
function oneByOne(test: SuggestedTest, cylinders: number, testerOn: number | null): [SuggestedTest, number][] {
  const list = test.cylinders ?? []
  if (list.length < 2) return [[test, minutesFor(test, cylinders, testerOn)]]
  const { first: _first, ...again } = test
  return list.map((cylinder, i) => {
    const before = i === 0 ? 0 : minutesFor({ ...test, cylinders: list.slice(0, i) }, cylinders)
    return [{ ...(i === 0 ? test : again), cylinders: [cylinder] }, minutesFor({ ...test, cylinders: list.slice(0, i + 1) }, cylinders) - before]
  })
}

type Bench = {
  readonly index: number
  readonly truth: Truth
  readonly cylinders: number
  readonly petrol: boolean
  readonly current: () => Case
  readonly measure: (test: SuggestedTest) => Case
}

function open(world: World, seed: number, index: number): Bench {
  const random = createRandom(seed, index)
  const engine = drawEngine(random, world)
  const visit = openVisit(random, engine)
  const described = describeEngine(visit)
  const readings: Reading[] = []
  const truth = truthOf(engine, visit.session)
  return {
    index,
    truth,
    cylinders: cylinderNumbers(engine.design).length,
    petrol: engine.design.fuel === 'petrol',
    current: () => caseOf(visit, described, readings),
    measure: (test) => {
      readings.push(...perform(visit, test))
      return caseOf(visit, described, readings)
    },
  }
}

function fixedOrder(bench: Bench): SuggestedTest[] {
  const each = (test: Omit<SuggestedTest, 'cylinders'>): SuggestedTest[] =>
    Array.from({ length: bench.cylinders }, (_, i) => ({ ...test, cylinders: [i + 1] }))
  return [...each({ test: 'compression' }), ...(bench.petrol ? each({ test: 'compression', wet: true }) : []), ...each({ test: 'leakage' })]
}

function fullMinutes(bench: Bench): number {
  return fixedOrder(bench).reduce((sum, test) => sum + minutesFor(test, bench.cylinders), 0)
}

/** The single explanation that leads: a fault in a cylinder, a bridge, an engine-wide cause, or nothing wrong. */
export function leadingOf(evaluation: Pick<Evaluation, 'cylinders' | 'neighbours' | 'engine'>): Leader {
  let nothing = evaluation.engine.find((entry) => entry.cause === 'none')?.probability ?? 0
  let best: Leader = { item: NOTHING, probability: 0 }
  const offer = (item: string, probability: number): void => {
    if (probability > best.probability) best = { item, probability }
  }
  for (const belief of evaluation.cylinders) {
    nothing = Math.min(nothing, belief.sound)
    for (const entry of belief.faults) offer(`${belief.cylinder} ${entry.fault}`, entry.probability)
  }
  for (const entry of evaluation.neighbours) {
    nothing = Math.min(nothing, 1 - entry.probability)
    offer([...entry.cylinders].sort((a, b) => a - b).join('-'), entry.probability)
  }
  for (const entry of evaluation.engine) if (entry.cause !== 'none') offer(entry.cause, entry.probability)
  offer(NOTHING, nothing)
  return best
}

/** Whether a leading explanation is one of the true ones; of two faults in a cylinder either counts. */
export function isRight(truth: Truth, item: string): boolean {
  const items = [
    ...truth.cylinders.flatMap((entry) => entry.faults.map((fault) => `${entry.cylinder} ${fault}`)),
    ...truth.bridges.map((pair) => [...pair].sort((a, b) => a - b).join('-')),
    ...(truth.cause === 'none' ? [] : [truth.cause]),
  ]
  return items.length === 0 ? item === NOTHING : items.includes(item)
}

function track(bench: Bench, full: number) {
  let minutes = 0
  let settledAt: number | undefined
  let stopped: { minutes: number; right: boolean } | undefined
  const stop = (leader: Leader): void => {
    stopped ??= { minutes, right: isRight(bench.truth, leader.item) }
  }
  let last: Leader = { item: NOTHING, probability: 0 }
  return {
    stop,
    spent: () => minutes,
    after: (spent: number, leader: Leader): boolean => {
      minutes += spent
      last = leader
      if (leader.probability >= SURE) stop(leader)
      if (leader.probability >= SURE && minutes <= full && isRight(bench.truth, leader.item)) settledAt = minutes
      return settledAt !== undefined
    },
    result: (): Settling => {
      stop(last)
      return {
        index: bench.index,
        minutes: settledAt ?? full,
        settled: settledAt !== undefined,
        stopMinutes: stopped?.minutes ?? minutes,
        rightAtStop: stopped?.right ?? false,
      }
    },
  }
}
