import type { Case, SuggestedTest } from '@evenbore/contract'
import { ignitionOf } from '../model/ignition.ts'
import type { Inference } from '../model/posterior.ts'
import { doneTests } from './done.ts'
import { engineWide } from './engine-wide.ts'
import { bitsOfSign, both, worthOf, type Outcomes, type Question, type Worth } from './information.ts'
import { owed, type Report } from './owed.ts'
import { borescopeOutcomes, clearanceOutcomes, liftOutcomes, plugOutcomes, runOutcomes, signOutcomes } from './look-outcomes.ts'
import { balanceOutcomes, currentOutcomes, dryOutcomes, leakageOutcomes, repeatOutcomes, runningOutcomes, wetOutcomes, yesNo } from './outcomes.ts'
import { leftUnread, questionsOf } from './questions.ts'
import type { Stakes } from './stakes.ts'

/** Tests that could be done now, with what they are expected to teach and to save, and the minutes they take. */
export interface Candidate extends Worth {
  readonly tests: readonly SuggestedTest[]
  readonly minutes: number
  /** Why it is owed whether it pays or not; absent where it is not. */
  readonly owed?: string
}

/** A test on one cylinder before its worth is known. */
interface Single {
  readonly cylinder: number
  readonly test: SuggestedTest
  readonly outcomes: Outcomes
  readonly minutes: number
}

/** Everything that could be done now on this engine: single tests, cheap pairs on one cylinder, rounds over cylinders. Diesels get no oil. */
export function candidates(given: Case, inference: Inference, stakes: Stakes, report: Report): Candidate[] {
  const done = doneTests(given, new Set(inference.evidence.cylinders.flatMap(({ dry, leakage }) => [...dry, ...leakage].map(({ reading }) => reading))))
  const whenRead = questionsOf(inference, stakes)
  const questions = whenRead.map(leftUnread)
  const singles = singlesOf(given, inference, done)
  const worth = singles.map((single): Candidate & { single: Single } =>
    ({ single, tests: [single.test], ...worthOf(questions[single.cylinder]!, single.outcomes), minutes: single.minutes }))
  return [
    ...worth.map(({ single: _, ...candidate }) => candidate),
    ...pairs(worth, questions, inference),
    ...rounds(given, inference, questions, whenRead, done),
    ...engineWide(given, inference, questions, done),
    ...swaps(given, inference, done),
    ...owed(given, inference, questions, done, report),
  ]
}

/** What a test is worth on one cylinder of a round. */
type Visited = Worth & { readonly i: number }

const numbers = (count: number): number[] => Array.from({ length: count }, (_, i) => i)

function singlesOf(given: Case, inference: Inference, done: ReadonlyMap<string, number>): Single[] {
  const list: Single[] = []
  const { minutes } = inference.space.knowledge
  const petrol = given.engine.fuel === 'petrol'
  const add = (test: Omit<SuggestedTest, 'cylinders'>, i: number, outcomes: Outcomes | null, time: { once: number; each: number }, before = 0): void => {
    if (outcomes !== null) list.push({ cylinder: i, test: { ...test, cylinders: [i + 1] }, outcomes, minutes: time.once + time.each + before })
  }
  const leakageMinutes = minutes.leakage.value.each
  const leakage = leakageOutcomes(inference), wet = petrol ? wetOutcomes(inference) : null
  const slack = leakageOutcomes(inference, { slack: true }), wetLeakage = petrol ? leakageOutcomes(inference, { wet: true }) : null
  const all = numbers(given.engine.cylinders)
  const backOn = (n: number): number => putBackOn(n, given, done, leakageMinutes)
  const { bridged, other } = inference.space.knowledge.listening.neighbourSlack.value, { bridgeLevel } = inference.space.states
  const neighbourSlack = yesNo((s) => (bridgeLevel[s]! > 0 ? bridged : other)), side = given.engine.valveGear === 'side'
  const run = runOutcomes(inference), borescope = borescopeOutcomes(inference), clearance = clearanceOutcomes(inference)
  const lift = liftOutcomes(inference, all.some((i) => done.has(`valve-lift ${i + 1}`))), thread = signOutcomes(inference, 'bubbles-at-plug-thread'), joint = signOutcomes(inference, 'bubbles-at-joint'), low = signOutcomes(inference, 'piston-low-at-top')
  for (const i of all) {
    const n = i + 1
    if (!done.has(`leakage ${n}`)) add({ test: 'leakage' }, i, leakage, minutes.leakage.value)
    else {
      const neighbour = side ? null : throughValve(inference, i, done)
      if (neighbour !== null) add({ test: 'leakage', rockersSlack: [neighbour + 1] }, i, neighbourSlack, minutes.slackRocker.value, backOn(n))
      // side valves have no rockers to slacken
      if (!side && !done.has(`slack ${n}`)) add({ test: 'leakage', rockersSlack: [n] }, i, slack, minutes.slackRocker.value, backOn(n))
      if (wetLeakage !== null && !done.has(`wet leakage ${n}`)) add({ test: 'leakage', wet: true }, i, wetLeakage, minutes.wetLeakage.value, backOn(n))
      if (!done.has(`retest ${n}`)) add({ test: 'leakage', repeat: true, first: 'run-engine' }, i, run, { once: 0, each: leakageMinutes }, minutes.runAndRetest.value.once)
      if (!done.has(`bubbles-at-plug-thread ${n}`)) add({ test: 'observation', code: 'bubbles-at-plug-thread' }, i, thread, minutes.soap.value, backOn(n))
      if (!done.has(`bubbles-at-joint ${n}`)) add({ test: 'observation', code: 'bubbles-at-joint' }, i, joint, minutes.soap.value, backOn(n))
    }
    if (done.has(`dry ${n}`)) {
      if (wet !== null && !done.has(`wet ${n}`)) add({ test: 'compression', wet: true }, i, wet, minutes.wet.value)
      // oil in the cylinder spoils a dry repeat
      if (!done.has(`wet ${n}`) && !done.has(`wet leakage ${n}`) && done.get(`dry ${n}`)! < 2) add({ test: 'compression', repeat: true }, i, repeatOutcomes(inference, i), minutes.dry.value)
    }
    if (!done.has(`borescope ${n}`)) add({ test: 'borescope' }, i, borescope, minutes.borescope.value)
    if (!done.has(`clearance ${n}`)) add({ test: 'clearance' }, i, clearance, minutes.clearance.value)
    if (!done.has(`valve-lift ${n}`)) add({ test: 'valve-lift' }, i, lift, minutes.valveLift.value)
    if (!done.has(`piston-low-at-top ${n}`)) add({ test: 'observation', code: 'piston-low-at-top' }, i, low, minutes.pistonHeight.value)
  }
  return list
}

/** Minutes to put the tester back on: it stands on one of the cylinders that it was tried on (the case does not say which), if nothing else has been in that plug hole. */
function putBackOn(n: number, given: Case, done: ReadonlyMap<string, number>, leakageMinutes: number): number {
  const leaked = numbers(given.engine.cylinders).filter((i) => done.has(`leakage ${i + 1}`)).length
  return leakageMinutes * (done.has(`borescope ${n}`) || done.has(`wet ${n}`) ? 1 : 1 - 1 / leaked)
}

/** Dearest test that is done in one go with another. */
const CHEAP_MINUTES = 6
/** So many of the best cheap tests are tried in pairs. */
const IN_PAIRS = 3

/** The best cheap tests of the cylinder in question, two and two: exactly what both teach together. */
function pairs(singles: readonly (Candidate & { readonly single: Single })[], questions: readonly Question[], inference: Inference): Candidate[] {
  const cheap = singles.filter((c) => c.minutes <= CHEAP_MINUTES).sort((a, b) => scoreOf(b, inference) - scoreOf(a, inference))
  const cylinder = cheap[0]?.single.cylinder
  if (cylinder === undefined) return []
  const best = cheap.filter((c) => c.single.cylinder === cylinder).slice(0, IN_PAIRS)
  return best.flatMap((a, i) => best.slice(i + 1).filter((b) => b.single.test.test !== a.single.test.test).map((b) => {
    // oil last: it would spoil the others
    const [first, second] = a.single.test.wet === true ? [b.single, a.single] : [a.single, b.single]
    return { tests: [first.test, second.test], ...worthOf(questions[cylinder]!, both(first.outcomes, second.outcomes)), minutes: a.minutes + b.minutes }
  }))
}

/** What a candidate is worth for each minute, the changes of tools included. */
export function scoreOf({ tests, bits, saved, settles, minutes }: Candidate, { space }: Inference): number {
  const { minutesPerBit, minutesSettled, changeOver } = space.knowledge.stopping
  return (saved + minutesPerBit.value * bits + minutesSettled.value * settles) / (minutes + tests.length * changeOver.value)
}

/** Tests that go from cylinder to cylinder: as many of them as pay best together. */
function rounds(given: Case, inference: Inference, questions: readonly Question[], whenRead: readonly Question[], done: ReadonlyMap<string, number>): Candidate[] {
  const { minutes } = inference.space.knowledge
  const all = numbers(given.engine.cylinders)
  const list: Candidate[] = []
  const each = (name: string, outcomes: Outcomes, asked = questions): Visited[] =>
    all.filter((i) => !done.has(`${name} ${i + 1}`)).map((i) => ({ i, ...worthOf(asked[i]!, outcomes) }))
  const round = (items: readonly Visited[], test: Omit<SuggestedTest, 'cylinders'>, time: { once: number; each: number }, named = true): void => {
    if (items.length === 0) return
    const sum = (of: keyof Worth): number => items.reduce((total, item) => total + item[of], 0)
    const cylinders = items.map(({ i }) => i + 1).sort((a, b) => a - b)
    list.push({ tests: [{ ...test, ...(named ? { cylinders } : {}) }], bits: sum('bits'), saved: sum('saved'), settles: Math.min(1, sum('settles')), minutes: time.once + items.length * time.each })
  }
  // oil in the cylinder spoils a dry reading
  const dry = each('dry', dryOutcomes(inference), whenRead).filter(({ i }) => !done.has(`wet ${i + 1}`))
  round(dry, { test: 'compression' }, minutes.dry.value)
  if (given.engine.fuel === 'petrol') {
    const plugs = each('plug', plugOutcomes(inference)).sort((a, b) => b.bits - a.bits)
    for (let count = 1; count <= plugs.length; count++) round(plugs.slice(0, count), { test: 'plug' }, minutes.plug.value)
  }
  if (dry.length > 1) round(each('weak-by-hand', signOutcomes(inference, 'weak-by-hand')), { test: 'observation', code: 'weak-by-hand' }, { once: minutes.byHand.value.once, each: 0 })
  if (all.length >= 3) {
    const running = each('running', runningOutcomes(inference))
    if (running.length === all.length) round(running, { test: 'compression', running: true }, minutes.running.value)
  }
  if (all.length >= 2 && !done.has('power-balance 1')) round(each('power-balance', balanceOutcomes(inference)), { test: 'power-balance' }, { once: minutes.powerBalance.value.once, each: 0 }, false)
  if (all.length >= 2 && !done.has('cranking-current')) round(each('cranking-current', currentOutcomes(inference)), { test: 'cranking-current' }, { once: minutes.current.value.once, each: 0 }, false)
  return list
}

/** From this probability of an ignition fault on it is worth a swap. */
const LEAST_IGNITION = 0.15

/**
 * Swapping plug and lead, where running signs may come from ignition: it saves no mechanical repair by itself, but settles that question. Of a cylinder
 * that was found not to pull its weight it is the answer itself: if it helps, nothing more need be looked for there.
 */
function swaps(given: Case, inference: Inference, done: ReadonlyMap<string, number>): Candidate[] {
  const { minutes, ignition } = inference.space.knowledge
  if (given.engine.fuel !== 'petrol') return []
  return numbers(given.engine.cylinders).flatMap((i): Candidate[] => {
    const p = done.has(`better-with-other-plug-and-lead ${i + 1}`) ? null : ignitionOf(inference, i)
    if (p === null || p < LEAST_IGNITION) return []
    const lame = inference.evidence.cylinders[i]!.sights.some(({ kind }) => kind === 'power-balance')
    return [{
      tests: [{ test: 'observation', code: 'better-with-other-plug-and-lead', cylinders: [i + 1] }],
      bits: bitsOfSign(p, ignition.swapHelps.value, ignition.swapHelpsAnyway.value), saved: 0, settles: lame ? p * ignition.swapHelps.value : 0, minutes: minutes.swapPlugAndLead.value.each,
    }]
  })
}

/**
 * A neighbour (0-based) at which the hiss of this cylinder's air was heard while one of its own valves stood open: with its rockers slack the hiss
 * comes through the gasket or not at all. Null where there is none, or it was done.
 */
function throughValve({ evidence: { cylinders, openValves } }: Inference, i: number, done: ReadonlyMap<string, number>): number | null {
  const heard = cylinders[i]!.leakage.find(({ neighbour, heard: at, neighbourSlack: slack }) => neighbour !== null && !slack && (at.neighbour ?? 0) > 0)
  const neighbour = heard?.neighbour ?? null
  if (neighbour === null || openValves === null || done.has(`slack ${neighbour + 1} for ${i + 1}`)) return null
  return openValves.intake[i]?.[neighbour] === true || openValves.exhaust[i]?.[neighbour] === true ? neighbour : null
}
