import { CASE_LIMITS } from './case-codes.ts'
import type { Case } from './case-shape.ts'
import type { EngineDescription } from './engine-description.ts'
import type { CompressionReading, LeakageReading, Reading } from './reading.ts'
import { PASCALS_PER_UNIT, type Pressure } from './pressure.ts'

/** Something in a well-formed case that cannot be so, with the path of the field and what was expected there. */
export interface CaseFault {
  readonly path: (string | number)[]
  readonly expected: string
  readonly got: unknown
}

type Report = (path: (string | number)[], expected: string, got: unknown) => void

const pa = (pressure: Pressure): number => pressure.value * PASCALS_PER_UNIT[pressure.unit]
const same = (a: Pressure, b: Pressure): boolean => Math.abs(pa(a) - pa(b)) <= 1e-9 * Math.max(pa(a), pa(b))

/** Every contradiction between the fields of one case. An empty list means the case is sound. */
export function caseFaults(value: Case): CaseFault[] {
  const faults: CaseFault[] = []
  const report: Report = (path, expected, got) => faults.push({ path, expected, got })
  engineFaults(value.engine, report)
  let samples = 0
  const sessionIds = Object.keys(value.sessions ?? {})
  if (sessionIds.length > CASE_LIMITS.sessions) report(['sessions'], `at most ${CASE_LIMITS.sessions} sessions`, sessionIds.length)
  value.readings.forEach((reading, index) => {
    const path = ['readings', index]
    const at: Report = (rest, expected, got) => report([...path, ...rest], expected, got)
    if (reading.session !== undefined && !Object.hasOwn(value.sessions ?? {}, reading.session)) {
      at(['session'], sessionIds.length > 0 ? 'the id of one of the sessions of this case' : 'no session: this case declares none', reading.session)
      return
    }
    readingFaults(reading, value, at)
    if (reading.test === 'cranking-current') {
      samples += reading.samples.seconds.length
      if (samples > CASE_LIMITS.samples) at(['samples'], `at most ${CASE_LIMITS.samples} samples in the whole case`, samples)
    }
  })
  return faults
}

function engineFaults(engine: EngineDescription, report: Report): void {
  const { cylinders } = engine
  const inEngine = (list: readonly number[], path: (string | number)[]): void => {
    list.forEach((cylinder, index) => {
      if (cylinder > cylinders) report(['engine', ...path, index], `a cylinder of this engine, 1 to ${cylinders}`, cylinder)
    })
  }
  const onceEach = (lists: readonly (readonly number[])[], path: string, nested: boolean): Set<number> => {
    const seen = new Set<number>()
    lists.forEach((list, outer) => {
      inEngine(list, nested ? [path, outer] : [path])
      list.forEach((cylinder, index) => {
        if (seen.has(cylinder)) report(['engine', path, ...(nested ? [outer] : []), index], 'each cylinder once', cylinder)
        seen.add(cylinder)
      })
    })
    return seen
  }
  if (engine.firingOrder) {
    const seen = onceEach([engine.firingOrder], 'firingOrder', false)
    if (seen.size < cylinders) report(['engine', 'firingOrder'], `every cylinder from 1 to ${cylinders}, once each`, engine.firingOrder)
  }
  if (engine.banks) {
    const seen = onceEach(engine.banks, 'banks', true)
    if (seen.size < cylinders) report(['engine', 'banks'], `every cylinder from 1 to ${cylinders}, once each`, engine.banks)
  } else if (engine.layout !== 'inline') {
    report(['engine', 'banks'], `the banks of a ${engine.layout} engine, each front to rear`, undefined)
  }
  if (engine.gaskets) onceEach(engine.gaskets, 'gaskets', true)
  if (engine.hotExhaustCylinders) inEngine(engine.hotExhaustCylinders, ['hotExhaustCylinders'])
  if (engine.rodLengthMm !== undefined && engine.strokeMm !== undefined && engine.rodLengthMm <= engine.strokeMm / 2) {
    report(['engine', 'rodLengthMm'], 'a rod longer than half the stroke', engine.rodLengthMm)
  }
  const { minimum, maximum } = engine.limits ?? {}
  if (minimum && maximum && pa(minimum) > pa(maximum)) {
    report(['engine', 'limits', 'minimum', 'value'], 'a minimum that is not above the maximum', minimum.value)
  }
}

function readingFaults(reading: Reading, value: Case, at: Report): void {
  const { cylinders } = value.engine
  if ('cylinder' in reading && reading.cylinder !== undefined && reading.cylinder > cylinders) {
    at(['cylinder'], `a cylinder of this engine, 1 to ${cylinders}`, reading.cylinder)
  }
  if (reading.test === 'compression') compressionFaults(reading, at)
  if (reading.test === 'leakage') leakageFaults(reading, value, at)
  if (reading.test === 'borescope' && reading.seen.includes('nothing') && new Set(reading.seen).size > 1) {
    at(['seen'], '"nothing" alone, or the things seen', reading.seen)
  }
  if (reading.test === 'cranking-current') {
    const { seconds, amps } = reading.samples
    if (seconds.length !== amps.length) at(['samples', 'amps'], `as many currents as times, ${seconds.length}`, amps.length)
    const back = seconds.findIndex((time, index) => index > 0 && time <= seconds[index - 1]!)
    if (back >= 0) at(['samples', 'seconds', back], 'a time later than the one before', seconds[back])
  }
}

function compressionFaults(reading: CompressionReading, at: Report): void {
  const { strokes, strokeCount, pressure, firstStroke } = reading
  if (!strokes) return
  if (strokeCount !== undefined && strokeCount !== strokes.length) {
    at(['strokeCount'], `the number of strokes listed, ${strokes.length}`, strokeCount)
  }
  if (!same(strokes.at(-1)!, pressure)) at(['strokes', strokes.length - 1, 'value'], 'the same as pressure, the final reading', strokes.at(-1)!.value)
  if (firstStroke && !same(strokes[0]!, firstStroke)) at(['strokes', 0, 'value'], 'the same as firstStroke', strokes[0]!.value)
}

function leakageFaults(reading: LeakageReading, value: Case, at: Report): void {
  const { cylinders } = value.engine
  if (reading.neighbour !== undefined) {
    if (reading.neighbour > cylinders) at(['neighbour'], `a cylinder of this engine, 1 to ${cylinders}`, reading.neighbour)
    if (reading.neighbour === reading.cylinder) at(['neighbour'], 'a cylinder other than the one under test', reading.neighbour)
  }
  reading.rockersSlack?.forEach((cylinder, index) => {
    if (cylinder > cylinders) at(['rockersSlack', index], `a cylinder of this engine, 1 to ${cylinders}`, cylinder)
  })
  const session = reading.session === undefined ? value : value.sessions?.[reading.session]
  const supply = reading.supply ?? session?.leakageTester?.supply
  if (reading.held && supply && pa(reading.held) > pa(supply) * (1 + 1e-9)) {
    at(['held', 'value'], 'at most the pressure supplied', reading.held.value)
  }
}
