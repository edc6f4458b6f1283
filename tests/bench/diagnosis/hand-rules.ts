import type { Case, Fault, Reading } from '@evenbore/contract'
import { FAULTS, PASCALS_PER_UNIT } from '@evenbore/contract'
import type { Judge, Opinion } from './opinion.ts'

type Weights = Partial<Record<Fault, number>>
type Leakage = Extract<Reading, { test: 'leakage' }>
type Heard = NonNullable<Leakage['heard']>

/** The usual suspects when nothing tells them apart. */
const ANY: Weights = {
  'exhaust-valve-leak': 35,
  'ring-wear': 20,
  'intake-valve-leak': 12,
  'ring-broken-or-stuck': 10,
  'clearance-tight': 8,
  'valve-sticking': 7,
  'gasket-to-coolant': 5,
  'piston-damage': 3,
}
const RINGS: Weights = { 'ring-wear': 55, 'ring-broken-or-stuck': 25, 'fuel-wash': 8, 'piston-damage': 7, 'exhaust-valve-leak': 5 }
const VALVES: Weights = {
  'exhaust-valve-leak': 50,
  'intake-valve-leak': 18,
  'clearance-tight': 11,
  'valve-sticking': 8,
  'gasket-to-coolant': 8,
  'piston-damage': 5,
}
const HISS: Readonly<Record<string, Weights>> = {
  exhaust: { 'exhaust-valve-leak': 75, 'clearance-tight': 13, 'valve-sticking': 12 },
  intake: { 'intake-valve-leak': 75, 'clearance-tight': 10, 'valve-sticking': 15 },
  crankcase: { 'ring-wear': 52, 'ring-broken-or-stuck': 25, 'piston-damage': 13, 'fuel-wash': 10 },
  coolant: { 'gasket-to-coolant': 75, 'cracked-head': 25 },
  outside: { 'gasket-to-outside': 55, 'plug-thread-leak': 45 },
}
const LOW = 0.9
const VERY_LOW = 0.75
const OIL_RAISES = 1.15
const NEIGHBOURS_ALIKE = 0.15
const LEAK_LIMIT_PERCENT = 25

/** The trade's rules of thumb: ten percent; oil raises it = rings; two low neighbours = gasket; where the hiss is. The baseline. */
export const HAND_RULES: Judge = { name: 'hand rules', judge }

function judge(value: Case): Opinion {
  const numbers = Array.from({ length: value.engine.cylinders }, (_, i) => i + 1)
  const dry = pressures(value, false)
  const wet = pressures(value, true)
  const highest = Math.max(...dry.values(), 1)
  const median = [...dry.values()].sort((a, b) => a - b)[Math.floor(dry.size / 2)] ?? 0
  const leakage = new Map<number, Leakage>()
  for (const reading of value.readings) if (reading.test === 'leakage') leakage.set(reading.cylinder, reading)
  const isLow = (cylinder: number): boolean => (dry.get(cylinder) ?? highest) < LOW * highest
  const pairs = (value.engine.gaskets ?? value.engine.banks ?? [numbers]).flatMap((piece) =>
    piece.slice(1).map((to, i): [number, number] => [piece[i] as number, to]),
  )
  const gasket = pairs.filter(([a, b]) => {
    const [pa, pb] = [dry.get(a) ?? 0, dry.get(b) ?? 0]
    const listened = leakage.get(a)?.heard?.neighbour ?? leakage.get(b)?.heard?.neighbour
    return (
      Math.max(pa, pb) < VERY_LOW * highest && Math.abs(pa - pb) < NEIGHBOURS_ALIKE * highest && (listened === undefined || listened >= 2)
    )
  })
  return {
    cylinders: numbers.map((cylinder) => {
      const bridged = gasket.some((pair) => pair.includes(cylinder))
      const lost = percentLost(value, leakage.get(cylinder))
      const low = isLow(cylinder)
      const leaky = lost !== undefined && lost > LEAK_LIMIT_PERCENT
      const high = (dry.get(cylinder) ?? 0) > 1.12 * median
      if (bridged) return belief(cylinder, 0.7, ANY)
      if (lost !== undefined && low && !leaky)
        return belief(cylinder, 0.35, { 'valve-not-opening': 60, 'rod-bent': 10, 'valve-sticking': 30 })
      if (leaky) return belief(cylinder, 0.06, suspects(leakage.get(cylinder)?.heard, cylinder, dry, wet))
      if (low) return belief(cylinder, 0.2, suspects(undefined, cylinder, dry, wet))
      if (high) return belief(cylinder, 0.5, { 'carbon-build-up': 1 })
      return belief(cylinder, lost === undefined ? 0.93 : 0.96, ANY)
    }),
    neighbours: pairs.map((cylinders) => ({
      cylinders,
      fault: 'gasket-between' as const,
      probability: gasket.includes(cylinders) ? 0.7 : 0.02,
    })),
    engine: (['none', 'throttle-closed', 'slow-cranking', 'valve-timing', 'worn-evenly', 'gauge-error'] as const).map((cause) => ({
      cause,
      probability: cause === 'none' ? 0.75 : 0.05,
    })),
    probabilityInside: dry.size < 2 ? null : insideAsRead(value, [...dry.values()]) ? 1 : 0,
  }
}

function suspects(heard: Heard | undefined, cylinder: number, dry: ReadonlyMap<number, number>, wet: ReadonlyMap<number, number>): Weights {
  const places = Object.entries(heard ?? {})
    .filter(([place]) => HISS[place] !== undefined)
    .sort((a, b) => b[1] - a[1])
  const [loudest] = places
  if (loudest !== undefined && loudest[1] >= 2) return HISS[loudest[0]] as Weights
  const [before, after] = [dry.get(cylinder), wet.get(cylinder)]
  if (before === undefined || after === undefined) return ANY
  // A control sister shows what oil does to a sound cylinder: the rule asks for more than that.
  const control = Math.max(
    1,
    Math.min(...[...wet].filter(([other]) => other !== cylinder).map(([other, pressure]) => pressure / (dry.get(other) ?? pressure)), 1.3),
  )
  return after / Math.max(before, 1) > Math.max(OIL_RAISES, control * 1.08) ? RINGS : VALVES
}

function belief(cylinder: number, sound: number, weights: Weights): Opinion['cylinders'][number] {
  const trace = 0.1
  const total = FAULTS.reduce((sum, fault) => sum + (weights[fault] ?? 0), 0)
  return {
    cylinder,
    sound,
    faults: FAULTS.map((fault) => ({
      fault,
      probability: (1 - sound) * ((1 - trace) * ((weights[fault] ?? 0) / total) + trace / FAULTS.length),
    })),
  }
}

/** Median reading in Pa for each cylinder. */
function pressures(value: Case, wet: boolean): Map<number, number> {
  const lists = new Map<number, number[]>()
  for (const reading of value.readings) {
    if (reading.test !== 'compression' || reading.running === true || (reading.wet === true) !== wet) continue
    lists.set(reading.cylinder, [...(lists.get(reading.cylinder) ?? []), reading.pressure.value * PASCALS_PER_UNIT[reading.pressure.unit]])
  }
  return new Map([...lists].map(([cylinder, list]) => [cylinder, list.reduce((a, b) => a + b, 0) / list.length]))
}

function percentLost(value: Case, reading: Leakage | undefined): number | undefined {
  if (reading === undefined) return undefined
  if (reading.percent !== undefined) return reading.percent
  const supply = reading.supply ?? value.leakageTester?.supply
  if (reading.held === undefined || supply === undefined) return undefined
  return 100 * (1 - (reading.held.value * PASCALS_PER_UNIT[reading.held.unit]) / (supply.value * PASCALS_PER_UNIT[supply.unit]))
}

function insideAsRead(value: Case, readings: readonly number[]): boolean {
  const [high, low] = [Math.max(...readings), Math.min(...readings)]
  const { spreadPercent, spreadPressure } = value.engine.limits ?? {}
  if (spreadPercent === undefined && spreadPressure === undefined) return (high - low) / high <= 0.1
  return (
    (spreadPercent === undefined || (100 * (high - low)) / high <= spreadPercent) &&
    (spreadPressure === undefined || high - low <= spreadPressure.value * PASCALS_PER_UNIT[spreadPressure.unit])
  )
}
