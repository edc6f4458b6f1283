import type { Case, SuggestedTest } from '@evenbore/contract'
import { FAULTS } from '../knowledge/faults.ts'
import type { GROUPS } from '../knowledge/signs.ts'
import type { Inference } from '../model/posterior.ts'
import { PLACE_INDEX } from '../model/listening.ts'
import { bitsOfSign, expectedBits } from './information.ts'
import {
  OWN_INDEX, byFault, dryOutcomes, leakageOutcomes, repeatOutcomes, wetOutcomes, yesNo, type Outcomes,
} from './outcomes.ts'

/** A test that could be done now, with what it is expected to teach and the minutes it takes. */
export interface Candidate {
  readonly test: SuggestedTest
  readonly bits: number
  readonly minutes: number
}

/** Everything that could be done now on this engine, one test at a time. Diesels get no oil. */
export function candidates(given: Case, inference: Inference): Candidate[] {
  const done = doneTests(given)
  const list: Candidate[] = []
  const { cylinders } = given.engine
  const petrol = given.engine.fuel === 'petrol'
  const { minutes } = inference.space.knowledge
  const bitsOf = (i: number, outcomes: Outcomes | null): number =>
    outcomes === null ? 0 : expectedBits(inference.states[i]!, inference.space.states, outcomes.table, outcomes.count)
  const each = (test: Omit<SuggestedTest, 'cylinders'>, i: number, outcomes: Outcomes | null, time: { once: number; each: number }, first = 0): void => {
    const bits = bitsOf(i, outcomes)
    if (bits > 1e-4) list.push({ test: { ...test, cylinders: [i + 1] }, bits, minutes: time.once + time.each + first })
  }

  const unread = numbers(cylinders).filter((i) => !done.has(`dry ${i + 1}`))
  if (unread.length > 0) {
    const outcomes = dryOutcomes(inference)
    const bits = unread.reduce((sum, i) => sum + bitsOf(i, outcomes), 0)
    list.push({ test: { test: 'compression', cylinders: unread.map((i) => i + 1) }, bits, minutes: unread.length * minutes.dry.value.each })
  }
  const unseen = numbers(cylinders).filter((i) => !done.has(`plug ${i + 1}`))
  if (unseen.length > 0 && petrol) {
    const outcomes = plugOutcomes(inference)
    const bits = unseen.reduce((sum, i) => sum + bitsOf(i, outcomes), 0)
    list.push({ test: { test: 'plug', cylinders: unseen.map((i) => i + 1) }, bits, minutes: unseen.length * minutes.plug.value.each })
  }
  const leakage = leakageOutcomes(inference)
  const wet = petrol ? wetOutcomes(inference) : null
  for (const i of numbers(cylinders)) {
    const n = i + 1
    if (!done.has(`leakage ${n}`)) each({ test: 'leakage' }, i, leakage, minutes.leakage.value)
    else {
      if (!done.has(`slack ${n}`)) each({ test: 'leakage', rockersSlack: [n] }, i, slackOutcomes(inference), minutes.slackRocker.value, 5.5)
      if (!done.has(`retest ${n}`)) each({ test: 'leakage', repeat: true, first: 'run-engine' }, i, runOutcomes(inference), { once: 0, each: 5.5 }, 12)
      if (!done.has(`bubbles-at-plug-thread ${n}`)) each({ test: 'observation', code: 'bubbles-at-plug-thread' }, i, signOutcomes(inference, 'bubbles-at-plug-thread'), minutes.soap.value)
      if (!done.has(`bubbles-at-joint ${n}`)) each({ test: 'observation', code: 'bubbles-at-joint' }, i, signOutcomes(inference, 'bubbles-at-joint'), minutes.soap.value)
    }
    if (done.has(`dry ${n}`)) {
      if (wet !== null && !done.has(`wet ${n}`)) each({ test: 'compression', wet: true }, i, wet, minutes.wet.value)
      // oil in the cylinder spoils a dry repeat
      if (!done.has(`wet ${n}`) && done.get(`dry ${n}`)! < 2) each({ test: 'compression', repeat: true }, i, repeatOutcomes(inference, i), minutes.dry.value)
    }
    if (!done.has(`borescope ${n}`)) each({ test: 'borescope' }, i, borescopeOutcomes(inference), minutes.borescope.value)
    if (!done.has(`clearance ${n}`)) each({ test: 'clearance' }, i, clearanceOutcomes(inference), minutes.clearance.value)
    if (!done.has(`valve-lift ${n}`)) each({ test: 'valve-lift' }, i, liftOutcomes(inference), minutes.valveLift.value)
    if (!done.has(`piston-low-at-top ${n}`)) each({ test: 'observation', code: 'piston-low-at-top' }, i, signOutcomes(inference, 'piston-low-at-top'), minutes.pistonHeight.value)
  }
  list.push(...engineWide(given, inference, done))
  return list
}

const numbers = (count: number): number[] => Array.from({ length: count }, (_, i) => i)

/** What was done, by name and cylinder, with how often. */
function doneTests(given: Case): Map<string, number> {
  const done = new Map<string, number>()
  const mark = (key: string): void => { done.set(key, (done.get(key) ?? 0) + 1) }
  for (const r of given.readings) {
    if (r.test === 'compression') mark(r.running || r.snap ? `running ${r.cylinder}` : `${r.wet ? 'wet' : 'dry'} ${r.cylinder}`)
    else if (r.test === 'leakage') {
      mark(`leakage ${r.cylinder}`)
      if (done.get(`leakage ${r.cylinder}`)! > 1) mark(`retest ${r.cylinder}`)
      if (r.rockersSlack !== undefined) mark(`slack ${r.cylinder}`)
    } else if (r.test === 'observation') mark(r.cylinder === undefined ? r.code : `${r.code} ${r.cylinder}`)
    else if ('cylinder' in r) mark(`${r.test} ${r.cylinder}`)
    else mark(r.test)
  }
  return done
}

function signOutcomes(inference: Inference, code: string): Outcomes {
  const sign = inference.space.knowledge.cylinderSigns[code]!.value
  return byFault(inference, [sign.sound, ...FAULTS.map((f) => Math.max(sign.sound, sign.faults[f] ?? 0))].map((p) => [p, 1 - p]))
}

function plugOutcomes(inference: Inference): Outcomes {
  const { appearance, ignition } = inference.space.knowledge.plugs
  const prior = inference.space.knowledge.ignition.prior.value
  const looks = Object.keys(appearance.value.sound)
  return byFault(inference, [appearance.value.sound, ...FAULTS.map((f) => appearance.value.faults[f] ?? appearance.value.sound)].map((chances) =>
    looks.map((look) => (1 - prior) * chances[look]! + prior * ignition.value[look]!)))
}

function borescopeOutcomes(inference: Inference): Outcomes {
  const { sound, faults } = inference.space.knowledge.borescope
  const sights = Object.keys(sound.value)
  // what leads the picture: the first of the sights, or nothing
  return byFault(inference, [{}, ...FAULTS.map((f) => faults.value[f] ?? {})].map((there: Readonly<Record<string, number>>) => {
    let rest = 1
    const chances = sights.map((sight) => {
      const p = Math.max(sound.value[sight]!, there[sight] ?? 0)
      const out = rest * p
      rest -= out
      return out
    })
    return [...chances, rest]
  }))
}

function clearanceOutcomes(inference: Inference): Outcomes {
  const { states, knowledge } = inference.space
  const { tightFound, looseFound } = knowledge.valveTrain
  return {
    count: 4,
    table: (s, out) => {
      const tightHere = states.own[s] === OWN_INDEX['clearance-tight'] || states.second[s] === OWN_INDEX['clearance-tight']
      const place = states.valve[s]!
      const exhaust = tightHere && place === PLACE_INDEX.exhaust ? tightFound.value.fault : tightFound.value.sound
      const intake = tightHere && place === PLACE_INDEX.intake ? tightFound.value.fault : tightFound.value.sound
      const loose = states.own[s] === OWN_INDEX['valve-not-opening'] ? looseFound.value.fault : 2 * looseFound.value.sound
      out[0] = exhaust
      out[1] = (1 - exhaust) * intake
      out[2] = (1 - exhaust) * (1 - intake) * loose
      out[3] = (1 - exhaust) * (1 - intake) * (1 - loose)
    },
  }
}

function liftOutcomes(inference: Inference): Outcomes {
  const { states, knowledge } = inference.space
  const { fault, sound } = knowledge.valveTrain.liftLow.value
  return yesNo((s) => (states.own[s] === OWN_INDEX['valve-not-opening'] ? fault : 2 * sound))
}

/** Slack rockers: the leak goes when a valve was held open, stays when the seat leaks. */
function slackOutcomes(inference: Inference): Outcomes {
  const { states } = inference.space
  return yesNo((s) => {
    const row = states.leaks[states.leakRow[s]!]!
    return row.total > 0 && row.stopsWithSlackRockers > 0.5 * row.total ? 0.92 : 0.04
  })
}

/** After a run: what sticks may come free. */
function runOutcomes(inference: Inference): Outcomes {
  const passes: Readonly<Record<string, number>> = { 'valve-sticking': 0.6, 'ring-broken-or-stuck': 0.2, 'fuel-wash': 0.5, 'carbon-build-up': 0.15 }
  return byFault(inference, [0.02, ...FAULTS.map((f) => passes[f] ?? 0.03)].map((p) => [p, 1 - p]))
}

/** Tests that speak of any cylinder: the question is whether its group of faults is anywhere in the engine. */
function engineWide(given: Case, inference: Inference, done: Map<string, number>): Candidate[] {
  const { knowledge } = inference.space
  const { minutes } = knowledge
  const somewhere = (group: (typeof GROUPS)[number]): number =>
    1 - inference.own.reduce((none, own) => none * (1 - knowledge.groups[group].value.reduce((sum, f) => sum + own[OWN_INDEX[f]]!, 0)), 1)
  const list: Candidate[] = []
  const add = (test: SuggestedTest, thing: number, withThing: number, without: number, time: number): void => {
    const bits = bitsOfSign(thing, withThing, without)
    if (bits > 1e-4) list.push({ test, bits, minutes: time })
  }
  const coolant = given.engine.cooling === 'air' ? 0 : somewhere('coolant')
  const oily = 1 - (1 - somewhere('oil')) * (1 - inference.causes[3]!)
  const sign = (code: string) => knowledge.engineSigns[code]!.value
  if (coolant > 0) {
    const gas = sign('coolant-gas'), lost = sign('cooling-pressure'), white = sign('smoke-white')
    if (!done.has('coolant-gas')) add({ test: 'coolant-gas' }, coolant, gas.groups.coolant!, gas.alone, minutes.coolantGas.value.once)
    if (!done.has('cooling-pressure')) add({ test: 'cooling-pressure' }, coolant, lost.groups.coolant!, lost.alone, minutes.coolingPressure.value.once)
    if (!done.has('smoke-white')) add({ test: 'observation', code: 'smoke-white' }, coolant, white.groups.coolant!, white.alone, minutes.smoke.value.once)
  }
  const breather = sign('breather-smoke'), use = sign('oil-use-high')
  if (!done.has('breather-smoke')) add({ test: 'observation', code: 'breather-smoke' }, oily, breather.groups.oil!, breather.alone, minutes.breather.value.once)
  if (!done.has('oil-use-high')) add({ test: 'observation', code: 'oil-use-high' }, oily, use.groups.oil!, use.alone, minutes.askOil.value.once)
  if (!done.has('vacuum') && given.engine.fuel === 'petrol') {
    const valve = somewhere('valve')
    add({ test: 'vacuum' }, valve, knowledge.vacuum.valve.value['regular-drop'], knowledge.vacuum.nothing.value['regular-drop'], minutes.vacuum.value.once)
  }
  return list
}
