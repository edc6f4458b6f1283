import { FAULTS, PLACES, type Fault, type FaultTraits, type Place } from '../knowledge/faults.ts'
import type { Knowledge } from '../knowledge/knowledge.ts'
import { bridgeGrid, leakGrid, lossGrid, sizeWeights } from './severity.ts'

/** Where the pressure of a state goes: total area and area at each listening point, mm2. */
export interface LeakRow {
  readonly total: number
  readonly at: Float64Array
  /** Area that slackening the rockers stops, and area that oil closes. */
  readonly stopsWithSlackRockers: number
  readonly sealedByOil: number
  /** Chance that it shows in any one test: less than 1 where it comes and goes. */
  readonly shows: number
}

/** A mean with its standard deviation. */
export interface Spread {
  readonly mean: number
  readonly sd: number
}

/**
 * All states a cylinder may be in, as parallel arrays: own fault (0 sound, else 1 + index in `FAULTS`), second fault,
 * bridge level on either side (0 none), weight given the own fault and the bridge, loss of logarithmic pressure and its
 * scatter, the part that oil gives back and its scatter, and the row of `leaks` that belongs to it.
 */
export interface StateSpace {
  readonly count: number
  readonly own: Uint8Array
  readonly second: Uint8Array
  readonly valve: Int8Array
  readonly bridgeLevel: Uint8Array
  readonly weight: Float64Array
  readonly loss: Float64Array
  readonly scatter: Float64Array
  readonly sealed: Float64Array
  readonly sealedScatter: Float64Array
  /** Rows shared by states of equal loss and scatter, and by states of equal return with oil. */
  readonly lossRow: Int32Array
  readonly lossRows: readonly Spread[]
  readonly sealRow: Int32Array
  readonly sealRows: readonly Spread[]
  readonly leakRow: Int32Array
  readonly leaks: readonly LeakRow[]
  /** Rows that differ only in what oil or slack rockers stop, or in what comes and goes, are one row while nobody tested that: row of `plainLeaks` by state. */
  readonly plainRowOf: Int32Array
  readonly plainLeaks: readonly LeakRow[]
  /** Chance of each bridge level between a pair of neighbours; [0] is none. */
  readonly bridgePrior: Float64Array
  /** Pairs of faults (second given first), by state: index into `pairs`, or -1. */
  readonly pairs: readonly (readonly [Fault, Fault])[]
  readonly pair: Int16Array
  /** 1 for what was wrong with the dry reading only, not with the cylinder. */
  readonly drySeat: Uint8Array
  /** Leak in mm2 for each unit of loss, and girth against a cylinder of the tables' size. */
  readonly areaPerLoss: number
  readonly girth: number
}

/** Leaks of a cylinder's own fault when a bridge is there too, mm2 on 400 cm3, and loss where nothing leaks. */
const SMALL_LEAK = 0.4
const MIDDLING_LEAK = 1.1
const MIDDLING_LOSS = 0.25
/** Leaks of a kind grow with the girth of bore and seats: with the cube root of displacement. Sizes in the tables are for this one. */
export const TABLE_DISPLACEMENT_CM3 = 400
/** Nothing is left to lose: about a hundredth of the pressure stays whatever leaks. */
const MOST_LOSS = 4.6

/** What a cylinder loses (logarithm) whose leaks alone would cost so much. */
function lossWithin(loss: number): number {
  return -Math.log(Math.exp(-loss) + Math.exp(-MOST_LOSS)) + Math.log1p(Math.exp(-MOST_LOSS))
}

export const SOUND = 0
export const OWN_COUNT = FAULTS.length + 1

interface Part { fault: number; loss: number; place: Place | null }

/** In which tests a fault showed: a sticky valve hangs in one and not in the next. */
interface Showing { readonly dry: boolean; readonly wet: boolean; readonly leakage: boolean }
const ALWAYS: Showing = { dry: true, wet: true, leakage: true }

/** Every way in which a fault that shows with this chance can come and go between the tests, with its chance; never at all is left out. */
function showings(chance: number): [Showing, number][] {
  if (chance >= 1) return [[ALWAYS, 1]]
  const flags = [true, false]
  return flags.flatMap((dry) => flags.flatMap((wet) => flags.filter((leakage) => dry || wet || leakage).map((leakage): [Showing, number] =>
    [dry && wet && leakage ? ALWAYS : { dry, wet, leakage }, [dry, wet, leakage].reduce((p, shows) => p * (shows ? chance : 1 - chance), 1)])))
}

/** How oil reaches leaks in this engine, as parts of what the tables say of rings, and of valves at least. */
export interface OilWay { readonly rings: number; readonly valves: { readonly mean: number; readonly spread: number } }

function sealing(traits: FaultTraits, place: Place, way: OilWay): { mean: number; spread: number } {
  const { mean, spread } = traits.sealedByOil
  if (place === 'crankcase') return { mean: way.rings * mean, spread }
  return place === 'intake' || place === 'exhaust' ? { mean: Math.max(mean, way.valves.mean), spread: Math.max(spread, way.valves.spread) } : { mean, spread }
}

/** Builds the states for an engine: `displacementCm3` null when unknown, `speedRatio` = cranking speed over 200 rpm. */
export function buildStates(knowledge: Knowledge, displacementCm3: number | null, speedRatio: number, oil: OilWay, refine = 1): StateSpace {
  const { noise, pairs, bridge } = knowledge
  const size = displacementCm3 ?? noise.unknownDisplacementCm3.value
  const areaPerLoss = size * speedRatio / noise.crankingLossPerLeak.value
  const dispersion = displacementCm3 === null ? noise.lossDispersionUnknownSize.value : noise.lossDispersion.value
  const girth = Math.cbrt(size / TABLE_DISPLACEMENT_CM3)
  const leakSizes = leakGrid(refine)
  const losses = lossGrid(refine)
  /** Losses at which a fault is summed, by the logarithm of pressure, and their weights. */
  const sizesOf = (fault: Fault): { grid: Float64Array; weights: Float64Array } => {
    const { leaks, size: given } = knowledge.faults[fault].value
    return leaks
      ? { grid: leakSizes.map((a) => a * girth / areaPerLoss), weights: sizeWeights(leakSizes, given) }
      : { grid: losses, weights: sizeWeights(losses, given) }
  }
  const bridgeSizes = bridgeGrid(refine)
  const bridgeLosses = bridgeSizes.map((a) => a * girth / areaPerLoss)
  const bridgeWeights = sizeWeights(bridgeSizes, bridge.leak.value)
  const bridgePrior = Float64Array.of(1 - bridge.prior.value, ...bridgeWeights.map((w) => w * bridge.prior.value))

  const build = builder(knowledge, areaPerLoss, girth, dispersion, oil)
  const shares = FAULTS.map((f) => knowledge.faults[f].value.share)
  const partners = partnersOf(pairs.together.value)

  addSound(build, knowledge, girth / areaPerLoss)
  FAULTS.forEach((fault, f) => {
    const traits = knowledge.faults[fault].value
    const { grid, weights } = sizesOf(fault)
    const seconds = partners.get(fault) ?? []
    const paired = seconds.length > 0 ? pairs.chance.value : 0
    const never = traits.silent + (1 - traits.silent) * (1 - traits.shows) ** 3
    if (never > 0) build.add(f + 1, 0, 0, never, [], 0)
    const shows = 1 - traits.silent
    const partnerShare = seconds.reduce((sum, g) => sum + shares[FAULTS.indexOf(g)]!, 0)
    for (const [place, part] of placesOf(traits.leaks ? traits.escapes : {})) {
      for (let k = 0; k < grid.length; k++) {
        if (weights[k]! * part < 1e-5) continue
        for (const [showing, chance] of showings(traits.shows)) {
          build.add(f + 1, 0, 0, weights[k]! * part * shows * chance * (1 - paired), [{ fault: f, loss: traits.size.sign * grid[k]!, place }], 0, -1, showing)
        }
      }
    }
    for (const other of seconds) {
      const g = FAULTS.indexOf(other)
      const second = knowledge.faults[other].value
      const mainPlace = placesOf(traits.leaks ? traits.escapes : {})[0]![0]
      const secondPlace = placesOf(second.leaks ? second.escapes : {})[0]![0]
      for (let k = 0; k < grid.length; k++) {
        const weight = weights[k]! * shows * paired * shares[g]! / partnerShare
        if (weight < 1e-7) continue
        const secondLoss = second.size.sign === -1 ? -second.size.median : grid[k]! * pairs.secondPart.value
        build.add(f + 1, g + 1, 0, weight, [
          { fault: f, loss: traits.size.sign * grid[k]!, place: mainPlace }, { fault: g, loss: secondLoss, place: secondPlace },
        ], 0, build.pairIndex(fault, other))
      }
    }
  })
  // under a bridge the own faults matter little: one middling severity lets both be true, and a small one or none at all where the same gasket leaks into the water
  for (let b = 1; b <= bridgeLosses.length; b++) {
    build.add(SOUND, 0, b, 1, [], bridgeLosses[b - 1]!)
    FAULTS.forEach((fault, f) => {
      const traits = knowledge.faults[fault].value
      for (const [place, part] of placesOf(traits.leaks ? traits.escapes : {})) {
        for (const [loss, chance] of underBridge(traits, place, girth / areaPerLoss)) {
          build.add(f + 1, 0, b, part * chance, loss === 0 ? [] : [{ fault: f, loss, place }], bridgeLosses[b - 1]!)
        }
      }
    })
  }
  return build.finish(bridgePrior)
}

/** Sound: as its sisters, leaking a little more in one place, or read low with a leaking adaptor before the oil went in. */
function addSound(build: ReturnType<typeof builder>, knowledge: Knowledge, lossPerTableLeak: number): void {
  const { leakageTest, noise } = knowledge
  let plain = 1
  for (const [place, sizes] of Object.entries(leakageTest.seepage.value)) {
    for (const [leak, chance] of sizes) {
      plain -= chance
      build.add(SOUND, 0, 0, chance, [{ fault: FAULTS.indexOf(SEEPS_LIKE[place] ?? 'exhaust-valve-leak'), loss: leak * lossPerTableLeak, place: place as Place }], 0)
    }
  }
  build.add(SOUND, 0, 0, plain, [], 0)
  for (const [loss, chance] of noise.drySeat.value) build.add(SOUND, 0, 0, chance, [{ fault: 0, loss, place: null }], 0, -1, DRY_SEAT)
}

/** What oil does to the seepage of a sound cylinder it does to this fault. */
const SEEPS_LIKE: Readonly<Record<string, Fault>> = { crankcase: 'ring-wear' }
const DRY_SEAT: Showing = { dry: true, wet: false, leakage: false }

/** Losses of a cylinder's own fault where a bridge is there too, with their chances. */
function underBridge({ leaks, size, silent }: FaultTraits, place: Place | null, lossPerTableLeak: number): [number, number][] {
  if (place === 'coolant') return [[0, silent], [SMALL_LEAK * lossPerTableLeak, (1 - silent) / 2], [MIDDLING_LEAK * lossPerTableLeak, (1 - silent) / 2]]
  return [[size.sign < 0 ? -size.median : leaks ? MIDDLING_LEAK * lossPerTableLeak : MIDDLING_LOSS, 1]]
}

function placesOf(escapes: Readonly<Partial<Record<Place, number>>>): Array<[Place | null, number]> {
  const list = PLACES.filter((p) => (escapes[p] ?? 0) > 0).map((p): [Place | null, number] => [p, escapes[p]!])
  return list.length === 0 ? [[null, 1]] : list.sort((a, b) => b[1] - a[1])
}

function partnersOf(together: ReadonlyArray<readonly [Fault, Fault]>): Map<Fault, Fault[]> {
  const map = new Map<Fault, Fault[]>()
  for (const [first, second] of together) map.set(first, [...(map.get(first) ?? []), second])
  return map
}

function builder(knowledge: Knowledge, areaPerLoss: number, girth: number, dispersion: number, oil: OilWay) {
  const own: number[] = [], second: number[] = [], valve: number[] = [], bridgeLevel: number[] = [], weight: number[] = []
  const loss: number[] = [], scatter: number[] = [], sealed: number[] = [], sealedScatter: number[] = []
  const leakRow: number[] = [], pair: number[] = [], drySeat: number[] = []
  const leaks: LeakRow[] = []
  const rows = new Map<string, number>()
  const pairList: Array<readonly [Fault, Fault]> = []

  function rowOf(parts: readonly Part[], bridgeLoss: number): number {
    const at = new Float64Array(PLACES.length)
    let total = 0, slack = 0, oilStops = 0, shows = 1
    for (const { fault, loss: partLoss, place } of parts) {
      if (place === null) continue
      const traits = knowledge.faults[FAULTS[fault]!].value
      const area = partLoss * areaPerLoss
      at[PLACES.indexOf(place)]! += area
      total += area
      slack += area * traits.stopsWithSlackRockers
      oilStops += area * sealing(traits, place, oil).mean
      if (parts.length === 1) shows = traits.shows
    }
    if (bridgeLoss > 0) {
      shows = 1
      at[PLACES.indexOf('neighbour')]! += bridgeLoss * areaPerLoss
      total += bridgeLoss * areaPerLoss
    }
    const key = `${at.join()};${slack};${oilStops};${shows}`
    let row = rows.get(key)
    if (row === undefined) {
      row = leaks.length
      rows.set(key, row)
      leaks.push({ total, at, stopsWithSlackRockers: slack, sealedByOil: oilStops, shows })
    }
    return row
  }

  return {
    pairIndex(first: Fault, other: Fault): number {
      const found = pairList.findIndex(([a, b]) => a === first && b === other)
      return found >= 0 ? found : pairList.push([first, other]) - 1
    },
    add(ownFault: number, secondFault: number, level: number, share: number, parts: readonly Part[], bridgeLoss: number, pairAt = -1, showing = ALWAYS): void {
      let sum = bridgeLoss, variance = (dispersion * bridgeLoss) ** 2, seal = 0, sealVariance = 0
      for (const { fault, loss: partLoss, place } of parts) {
        const traits = knowledge.faults[FAULTS[fault]!].value
        sum += partLoss
        variance += (dispersion * partLoss) ** 2
        if (place !== null) {
          const { mean, spread } = sealing(traits, place, oil)
          seal += mean * partLoss
          sealVariance += (spread * partLoss) ** 2 + (dispersion * mean * partLoss) ** 2 / 2
        }
      }
      const whole = sum, wet = lossWithin(sum - seal)
      sum = lossWithin(sum)
      if (whole > 0) variance *= (sum / whole) ** 2
      // of a hole that leaves nothing oil must close much before anything is read
      if (seal > 0) sealVariance *= Math.max(0.1, (sum - wet) / seal) ** 2
      seal = sum - wet
      if (!showing.wet) [seal, sealVariance] = [showing.dry ? sum : 0, variance]
      else if (!showing.dry) [seal, sealVariance] = [-wet, variance]
      if (!showing.dry) [sum, variance] = [0, 0]
      own.push(ownFault); second.push(secondFault); bridgeLevel.push(level); weight.push(share)
      valve.push(parts.length > 0 ? (parts[0]!.place === null ? -1 : PLACES.indexOf(parts[0]!.place)) : -1)
      loss.push(sum); scatter.push(Math.sqrt(variance)); sealed.push(seal); sealedScatter.push(Math.sqrt(sealVariance))
      leakRow.push(rowOf(showing.leakage ? parts : [], bridgeLoss)); pair.push(pairAt); drySeat.push(showing === DRY_SEAT ? 1 : 0)
    },
    finish(bridgePrior: Float64Array): StateSpace {
      const losses = shareRows(loss, scatter, 0)
      const seals = shareRows(sealed, sealedScatter, SEAL_STEP)
      const plain = plainRows(leaks)
      return {
        lossRow: losses.row, lossRows: losses.rows, sealRow: seals.row, sealRows: seals.rows,
        count: own.length, own: Uint8Array.from(own), second: Uint8Array.from(second), valve: Int8Array.from(valve),
        bridgeLevel: Uint8Array.from(bridgeLevel), weight: Float64Array.from(weight), loss: Float64Array.from(loss),
        scatter: Float64Array.from(scatter), sealed: Float64Array.from(sealed), sealedScatter: Float64Array.from(sealedScatter),
        leakRow: Int32Array.from(leakRow), leaks, plainRowOf: Int32Array.from(leakRow, (r) => plain.of[r]!), plainLeaks: plain.rows, bridgePrior, pairs: pairList, pair: Int16Array.from(pair), drySeat: Uint8Array.from(drySeat), areaPerLoss, girth,
      }
    },
  }
}

/** Returns with oil closer than this are the same: a thirtieth of the scatter of a wet reading. Three times as much moved probabilities by .003. */
const SEAL_STEP = 0.001

function shareRows(means: readonly number[], sds: readonly number[], step: number): { row: Int32Array; rows: Spread[] } {
  const at = new Map<string, number>()
  const rows: Spread[] = []
  const round = (x: number): number => (step === 0 ? x : Math.round(x / step) * step)
  const row = Int32Array.from(means, (mean, i) => {
    const spread = { mean: round(mean), sd: round(sds[i]!) }
    const key = `${spread.mean.toPrecision(12)};${spread.sd.toPrecision(12)}`
    const found = at.get(key)
    if (found !== undefined) return found
    at.set(key, rows.length)
    return rows.push(spread) - 1
  })
  return { row, rows }
}

function plainRows(leaks: readonly LeakRow[]): { of: Int32Array; rows: LeakRow[] } {
  const at = new Map<string, number>()
  const rows: LeakRow[] = []
  const of = Int32Array.from(leaks, (leak) => {
    const key = leak.at.join()
    const found = at.get(key)
    if (found !== undefined) return found
    at.set(key, rows.length)
    return rows.push(leak) - 1
  })
  return { of, rows }
}
