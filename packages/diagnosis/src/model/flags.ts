import { CAUSES, type Cause } from '../knowledge/causes.ts'
import { FAULTS } from '../knowledge/faults.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { GROUPS, type EngineSign, type Group } from '../knowledge/signs.ts'
import type { EngineEvidence, Evidence, VacuumEvidence } from './evidence.ts'
import type { Grid } from './grid.ts'
import { weighOtherGauges } from './other-gauge.ts'
import { levelOfColumn, weighSpeed } from './common-level.ts'
import { weighRunning } from './running-share.ts'
import type { StateSpace } from './states.ts'

/**
 * Tests that speak of any cylinder ask whether a group of faults is present anywhere. Sums with a group forbidden
 * ("subset" of forbidden groups) are easy for a chain; what a pattern of present groups weighs follows by inclusion and exclusion.
 */
export interface Flags {
  /** Forbidden sets of groups to sum for, as bits. The empty set comes first. */
  readonly subsets: readonly number[]
  /** Weight of each subset's sum for each cause: [cause][subset]. */
  readonly weights: readonly Float64Array[]
  /** Factor on the prior of each cause by column of the grid, where another gauge or running compression says something of it; null where nothing does. */
  readonly byColumn: readonly (Float64Array | null)[]
}

const known = new WeakMap<StateSpace, Uint8Array>()

/** Bits of the groups a state belongs to, made once for each state space; a bridge shows in the manifold like a valve. */
export function signatures(states: StateSpace, knowledge: Knowledge): Uint8Array {
  let found = known.get(states)
  if (found === undefined) known.set(states, (found = makeSignatures(states, knowledge)))
  return found
}

function makeSignatures(states: StateSpace, knowledge: Knowledge): Uint8Array {
  const ofOwn = new Uint8Array(FAULTS.length + 1)
  FAULTS.forEach((fault, f) => {
    GROUPS.forEach((group, g) => {
      if (knowledge.groups[group].value.includes(fault)) ofOwn[f + 1]! |= 1 << g
    })
  })
  const bridge = 1 << GROUPS.indexOf('valve')
  return Uint8Array.from({ length: states.count }, (_, s) =>
    ofOwn[states.own[s]!]! | ofOwn[states.second[s]!]! | (states.bridgeLevel[s]! > 0 ? bridge : 0))
}

/** However much speaks against a pattern: not less than this many nats below the best, so that hundreds of signs leave something to believe. */
const MOST_AGAINST = 60

/** Weighs the engine-wide evidence for each cause and each pattern of groups, turned into weights of subset sums. `asking` decides which groups are told apart. */
export function weighFlags(evidence: readonly EngineEvidence[], known: Pick<Evidence, 'expected' | 'speedKnown'>, grid: Grid, knowledge: Knowledge, asking = evidence): Flags {
  const asked = GROUPS.map((group, g) => ({ group, bit: 1 << g })).filter(({ group }) => asking.some((e) => asksFor(e, group, knowledge)))
  const all = asked.reduce((bits, { bit }) => bits | bit, 0)
  const subsets = allSubsets(asked.map(({ bit }) => bit))
  const gain = weighOtherGauges(evidence.filter((e) => e.kind === 'other-gauge'), known.expected, knowledge)
  const modes = modesOf(knowledge)
  const logs = CAUSES.map((cause) => {
    const gauge = gain === null || cause === 'gauge-error' ? 0 : Math.log(gain.right)
    return subsets.map((pattern) => modes.map((mode) =>
      evidence.reduce((sum, e) => sum + Math.log(likelihood(e, pattern, cause, mode, knowledge)), gauge + Math.log(mode.chance))))
  })
  const best = Math.max(...logs.flat(2))
  const weights = logs.map((ofCause) => {
    const out = new Float64Array(subsets.length)
    subsets.forEach((pattern, p) => {
      const chance = ofCause[p]!.reduce((sum, log) => sum + Math.exp(Math.max(-MOST_AGAINST, log - best)), 0)
      const absent = all & ~pattern
      // exactly this pattern = sum over T within it of (-1)^|T| of the sum that forbids what is absent and T
      subsets.forEach((forbidden, k) => {
        if ((absent & ~forbidden) !== 0) return
        out[k]! += (bitCount(forbidden & pattern) % 2 === 0 ? 1 : -1) * chance
      })
    })
    return out
  })
  const running = evidence.filter((e) => e.kind === 'running-share'), speeds = evidence.filter((e) => e.kind === 'cranking-speed')
  const byColumn = CAUSES.map((cause) => {
    const gauges = cause === 'gauge-error' ? gain : null
    if (gauges === null && running.length + speeds.length === 0) return null
    return grid.level.map((level, q) => {
      const at = levelOfColumn(q, grid, known)
      return (gauges === null ? 1 : gauges.wrongAt(level)) *
        (running.length === 0 ? 1 : weighRunning(cause, at, running, knowledge)) *
        (speeds.length === 0 ? 1 : weighSpeed(cause, at, speeds, knowledge))
    })
  })
  return { subsets, weights, byColumn }
}

function allSubsets(bits: readonly number[]): number[] {
  let sets = [0]
  for (const bit of bits) sets = [...sets, ...sets.map((s) => s | bit)]
  return sets
}

function bitCount(x: number): number {
  let count = 0
  for (let rest = x; rest > 0; rest >>= 1) count += rest & 1
  return count
}

function asksFor(e: EngineEvidence, group: Group, knowledge: Knowledge): boolean {
  if (e.kind === 'vacuum') return group === 'valve' || group === 'sticking'
  if (e.kind !== 'engine-sign') return false
  return (knowledge.engineSigns[e.code]?.value.groups[group] ?? 0) > 0
}

function likelihood(e: EngineEvidence, pattern: number, cause: Cause, mode: Mode, knowledge: Knowledge): number {
  if (e.kind === 'vacuum') {
    return vacuumChance(e, knowledge.vacuum[vacuumKind(pattern, cause)].value, knowledge)
  }
  if (e.kind !== 'engine-sign') return 1
  const sign = knowledge.engineSigns[e.code]?.value
  if (sign === undefined) return 1
  const shown = signChance(sign, pattern, cause, mode)
  return e.present ? shown : 1 - shown
}

/** What several signs of an engine have in common: whether it burns oil for another reason, and how far its faults show. */
interface Mode {
  readonly chance: number
  readonly otherOil: boolean
  /** What the chances of signs by groups of faults are multiplied by. */
  readonly shows: number
}

/** No sign is surer than this. */
const SUREST = 0.98

/** The four of them. */
export function modesOf({ otherOil, quiet }: Knowledge): Mode[] {
  const mean = 1 - quiet.chance.value * (1 - quiet.part.value)
  return [{ other: true, p: otherOil.chance.value }, { other: false, p: 1 - otherOil.chance.value }].flatMap(({ other, p }) => [
    { chance: p * quiet.chance.value, otherOil: other, shows: quiet.part.value / mean },
    { chance: p * (1 - quiet.chance.value), otherOil: other, shows: 1 / mean },
  ])
}

function signChance({ alone, otherOil, causes, groups }: EngineSign, pattern: number, cause: Cause, mode: Mode): number {
  return noisyOr(alone, [causes[cause] ?? 0, mode.otherOil ? otherOil ?? 0 : 0, ...GROUPS.map((group) => (has(pattern, group) ? Math.min(SUREST, mode.shows * (groups[group] ?? 0)) : 0))])
}

/** Chance of a sign that any cylinder may give, whatever it has in common with others. */
export function signShown(sign: EngineSign, pattern: number, cause: Cause, modes: readonly Mode[]): number {
  return modes.reduce((sum, mode) => sum + mode.chance * signChance(sign, pattern, cause, mode), 0)
}

/** What the vacuum gauge answers to, where these groups of faults are present. */
export function vacuumKind(pattern: number, cause: Cause): keyof Knowledge['vacuum'] {
  if (has(pattern, 'valve')) return 'valve'
  if (has(pattern, 'sticking')) return 'sticking'
  return cause === 'valve-timing' || cause === 'worn-evenly' ? 'low' : 'nothing'
}

/**
 * Chance of a vacuum gauge's pattern. Whether a steady needle is low its depth says better than a word: what is low at the sea is as it should be
 * in the hills.
 */
function vacuumChance({ pattern, depth }: VacuumEvidence, chances: Knowledge['vacuum']['nothing']['value'], { vacuumDepth }: Knowledge): number {
  if (depth === null || (pattern !== 'steady' && pattern !== 'low-steady')) return (chances as Readonly<Record<string, number>>)[pattern] ?? 0.01
  const { steady, low, wordRight, anything } = vacuumDepth
  const at = ({ mean, spread }: { readonly mean: number; readonly spread: number }, word: string): number =>
    (anything.value + Math.exp(-0.5 * ((depth - mean) / spread) ** 2) / spread) * (word === pattern ? wordRight.value : 1 - wordRight.value)
  return chances.steady * at(steady.value, 'steady') + chances['low-steady'] * at(low.value, 'low-steady')
}

/** Chance that at least one of several independent reasons makes a sign appear, `alone` being that of no reason at all. */
export function noisyOr(alone: number, chances: readonly number[]): number {
  return 1 - chances.reduce((quiet, chance) => quiet * (1 - chance), 1 - alone)
}

function has(pattern: number, group: Group): boolean {
  return (pattern & (1 << GROUPS.indexOf(group))) !== 0
}
