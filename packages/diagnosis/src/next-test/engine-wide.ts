import type { Case, SuggestedTest } from '@evenbore/contract'
import { CAUSES, type Cause } from '../knowledge/causes.ts'
import { FAULTS } from '../knowledge/faults.ts'
import { GROUPS, type Group } from '../knowledge/signs.ts'
import { modesOf, signatures, signShown, vacuumKind } from '../model/flags.ts'
import type { Inference } from '../model/posterior.ts'
import { somewhere } from '../model/somewhere.ts'
import type { Candidate } from './candidates.ts'
import { nothingCommon } from './questions.ts'
import { runningShareOutcomes } from './running-share.ts'
import { WEARS, worthOfJoint, worthOfLists, type Question, type Worth } from './information.ts'
import { LABELS } from './stakes.ts'

/** Chance of each outcome for the groups of faults that are somewhere in the engine (bits), under a cause. */
type PatternChances = (pattern: number, cause: Cause) => readonly number[]

/**
 * Tests that speak of any cylinder. What one outcome says of each cylinder is summed exactly over the groups that the others bring in;
 * cylinders are taken one by one, so the sum of their worth is the least that the test teaches.
 */
export function engineWide(given: Case, inference: Inference, questions: readonly Question[], done: ReadonlyMap<string, number>): Candidate[] {
  const { knowledge } = inference.space
  const { minutes } = knowledge
  const groups = groupsOf(inference, questions), modes = modesOf(knowledge)
  const list: Candidate[] = []
  const add = (test: SuggestedTest, time: number, asked: readonly Group[], chances: PatternChances): void => {
    const overall = worthOverall(inference, questions, groups, asked, chances)
    const anywhere = asked.length === 1 && asked[0] === 'coolant' ? worthAnywhere(inference, questions[0]!, asked[0], chances) : NOTHING
    const ofCause = worthOfLists(inference.causes, causeOutcomes(groups, asked, chances), questions[0]!.settled)
    // what it says of each cylinder, of any of them and of what they have in common overlaps: the greatest is the least that it teaches
    // what asks for nothing but a cause is worth no time where none is in sight: even readings near what was expected are good enough
    const settles = asked.length === 0 && nothingCommon(inference) ? 0 : Math.max(overall.settles, ofCause.settles)
    list.push({ tests: [test], bits: Math.max(overall.bits, ofCause.bits, anywhere.bits), saved: Math.max(overall.saved, anywhere.saved), settles, minutes: time })
  }
  const addSign = (code: string, test: SuggestedTest, time: number): void => {
    if (done.has(code)) return
    const sign = knowledge.engineSigns[code]!.value
    const asked = GROUPS.filter((group) => (sign.groups[group] ?? 0) > 0)
    add(test, time, asked, (pattern, cause) => {
      const shown = signShown(sign, pattern, cause, modes)
      return [shown, 1 - shown]
    })
  }
  const observation = (code: SuggestedTest['code']): SuggestedTest => ({ test: 'observation', ...(code === undefined ? {} : { code }) })
  if (given.engine.cooling !== 'air') {
    addSign('coolant-gas', { test: 'coolant-gas' }, minutes.coolantGas.value.once)
    addSign('cooling-pressure', { test: 'cooling-pressure' }, minutes.coolingPressure.value.once)
    addSign('smoke-white', observation('smoke-white'), minutes.smoke.value.once)
    addSign('water-in-oil', observation('water-in-oil'), minutes.oilAndWater.value.once / 2)
  }
  if (given.engine.fuel === 'petrol') {
    addSign('petrol-in-oil', observation('petrol-in-oil'), minutes.oilAndWater.value.once / 2)
    addSign('smoke-black', observation('smoke-black'), minutes.smoke.value.once)
  }
  addSign('breather-smoke', observation('breather-smoke'), minutes.breather.value.once)
  addSign('smoke-blue-throttle', observation('smoke-blue-throttle'), minutes.smoke.value.once)
  addSign('oil-use-high', observation('oil-use-high'), minutes.askOil.value.once)
  if (!done.has('vacuum') && given.engine.fuel === 'petrol') {
    const patterns = Object.keys(knowledge.vacuum.nothing.value) as (keyof typeof knowledge.vacuum.nothing.value)[]
    add({ test: 'vacuum' }, minutes.vacuum.value.once, ['valve', 'sticking'], (pattern, cause) => patterns.map((p) => knowledge.vacuum[vacuumKind(pattern, cause)].value[p]))
  }
  const read = questions.findIndex((_, i) => done.has(`dry ${i + 1}`)) + 1
  if (read > 0 && (done.get('other-gauge') ?? 0) < OTHER_GAUGES) {
    const { differs, differsAnyway } = knowledge.otherGauge
    add({ test: 'compression', repeat: true, first: 'swap-gauge', cylinders: [read] }, minutes.swapGauge.value.once + minutes.swapGauge.value.each, [], (_, cause) => {
      const shown = cause === 'gauge-error' ? differs.value : differsAnyway.value
      return [shown, 1 - shown]
    })
  }
  if (questions.length >= 2 && !done.has('cranking-current') && !inference.evidence.speedKnown) {
    const { shown, slow, other } = knowledge.stopping.slowInTrace.value
    add({ test: 'cranking-current' }, minutes.current.value.once, [], (_, cause) => {
      const found = shown * (cause === 'slow-cranking' ? slow : other)
      return [found, shown - found, 1 - shown]
    })
  }
  const running = runningShareOutcomes(given, inference)
  if (running !== null) add(running.test, minutes.running.value.once + minutes.running.value.each, [], (_, cause) => running.chances[CAUSES.indexOf(cause)]!)
  return list
}

/** Where two gauges differ a third says which is wrong; nobody looks for a fourth. */
const OTHER_GAUGES = 2

const bitOf = (group: Group): number => 1 << GROUPS.indexOf(group)

/** By cylinder, wear and label: probability of each pattern of groups: [cylinder][(worn * LABELS + label) * patterns + pattern]. */
type Groups = readonly Float64Array[]
const PATTERNS = 1 << GROUPS.length

function groupsOf(inference: Inference, questions: readonly Question[]): Groups {
  const bits = signatures(inference.space.states, inference.space.knowledge)
  return questions.map(({ belief: { state, worn, label, probability } }) => {
    const out = new Float64Array(2 * LABELS * PATTERNS)
    for (let i = 0; i < state.length; i++) out[(worn[i]! * LABELS + label[i]!) * PATTERNS + bits[state[i]!]!]! += probability[i]!
    return out
  })
}

function worthOverall(inference: Inference, questions: readonly Question[], groups: Groups, asked: readonly Group[], chances: PatternChances): Worth {
  const mask = asked.reduce((bits, group) => bits | bitOf(group), 0)
  const table = WEAR_CAUSES.map((causes) => {
    const weights = causes.map((cause) => inference.causes[CAUSES.indexOf(cause)]! + 1e-12)
    const sum = weights.reduce((total, w) => total + w, 0)
    return Array.from({ length: PATTERNS }, (_, pattern) => {
      if ((pattern & ~mask) !== 0) return []
      const lists = causes.map((cause) => chances(pattern, cause))
      return lists[0]!.map((_x, o) => lists.reduce((total, list, c) => total + list[o]! * weights[c]! / sum, 0))
    })
  })
  const count = table[0]![0]!.length
  // patterns of each cylinder given wear, and of the others together by union
  const given = groups.map((joint) => [0, 1].map((worn) => patternsOf(joint, worn, mask)))
  const inQuestion = Array.from({ length: PATTERNS }, (_, pattern) => pattern).filter((pattern) => (pattern & ~mask) === 0)
  const mine = new Float64Array(PATTERNS)
  let bits = 0, saved = 0, settles = 0
  questions.forEach((question, i) => {
    const others = [0, 1].map((worn) => given.reduce((union, each, j) => (j === i ? union : unite(union, each[worn]!)), none()))
    const joint = new Float64Array(count * WEARS * LABELS)
    for (let wear = 0; wear < WEARS; wear++) {
      const worn = wear === 1 ? 1 : 0
      const part = wear === 1 ? 1 : wear === 0 ? 1 - question.otherCause : question.otherCause
      for (let label = 0; label < LABELS; label++) {
        mine.fill(0)
        for (let own = 0, at = (worn * LABELS + label) * PATTERNS; own < PATTERNS; own++) mine[own & mask]! += part * groups[i]![at + own]!
        for (const own of inQuestion) {
          const p = mine[own]!
          if (p < 1e-7) continue
          for (const rest of inQuestion) {
            const q = others[worn]![rest]!
            if (q === 0) continue
            const outcome = table[wear]![own | rest]!
            for (let o = 0; o < count; o++) joint[o * WEARS * LABELS + wear * LABELS + label]! += p * q * outcome[o]!
          }
        }
      }
    }
    const worth = worthOfJoint(joint, question)
    bits = Math.max(bits, worth.bits)
    saved += worth.saved
    settles = Math.max(settles, worth.settles)
  })
  return { bits, saved, settles }
}

/** A cylinder that is likelier sound than this is passed. */
const PASSED = 0.5

const NOTHING: Worth = { bits: 0, saved: 0, settles: 0 }

/**
 * What a test says of a group of faults being in any cylinder, for a group that one repair of the head reaches wherever it is: the engine as one cylinder.
 * Asked of the cylinders that would be passed: one that is suspected is looked into in any case.
 */
function worthAnywhere({ own: all, space }: Inference, question: Question, group: Group, chances: PatternChances): Worth {
  const own = all.filter((p) => p[0]! > PASSED)
  const { any } = somewhere(own, group, space.knowledge)
  const faults = space.knowledge.groups[group].value.map((fault) => FAULTS.indexOf(fault) + 1)
  const sums = faults.map((f) => own.reduce((sum, p) => sum + p[f]!, 0)), sum = sums.reduce((total, p) => total + p, 0)
  if (sum <= 0) return NOTHING
  const absent = chances(0, 'none'), present = chances(bitOf(group), 'none')
  const joint = new Float64Array(absent.length * WEARS * LABELS)
  absent.forEach((chance, o) => {
    joint[o * WEARS * LABELS] = (1 - any) * chance
    faults.forEach((f, k) => { joint[o * WEARS * LABELS + f] = any * sums[k]! / sum * present[o]! })
  })
  return worthOfJoint(joint, { ...question, settled: null })
}

/** Chance of each outcome under each cause, in the order of `CAUSES`, whatever groups of faults the cylinders bring in. */
function causeOutcomes(groups: Groups, asked: readonly Group[], chances: PatternChances): number[][] {
  const mask = asked.reduce((bits, group) => bits | bitOf(group), 0)
  const patterns = [0, 1].map((worn) => groups.reduce((union, joint) => unite(union, patternsOf(joint, worn, mask)), none()))
  return CAUSES.map((cause) => {
    const sum: number[] = []
    patterns[cause === 'worn-evenly' ? 1 : 0]!.forEach((p, pattern) => {
      if (p > 0) chances(pattern, cause).forEach((chance, o) => { sum[o] = (sum[o] ?? 0) + p * chance })
    })
    return sum
  })
}

/** The causes behind each kind of wear. */
const WEAR_CAUSES: readonly (readonly Cause[])[] = [['none'], ['worn-evenly'], CAUSES.filter((cause) => cause !== 'none' && cause !== 'worn-evenly')]

function none(): Float64Array {
  const out = new Float64Array(PATTERNS)
  out[0] = 1
  return out
}

/** Distribution of a cylinder's pattern of groups in question, given wear. */
function patternsOf(joint: Float64Array, worn: number, mask: number): Float64Array {
  const out = new Float64Array(PATTERNS)
  let sum = 0
  for (let label = 0; label < LABELS; label++) {
    for (let pattern = 0; pattern < PATTERNS; pattern++) {
      const p = joint[(worn * LABELS + label) * PATTERNS + pattern]!
      out[pattern & mask]! += p
      sum += p
    }
  }
  if (sum <= 0) return none()
  for (let pattern = 0; pattern < PATTERNS; pattern++) out[pattern]! /= sum
  return out
}

function unite(a: Float64Array, b: Float64Array): Float64Array {
  const out = new Float64Array(PATTERNS)
  for (let i = 0; i < PATTERNS; i++) {
    if (a[i] === 0) continue
    for (let j = 0; j < PATTERNS; j++) out[i | j]! += a[i]! * b[j]!
  }
  return out
}

