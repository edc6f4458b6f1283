import { z } from 'zod'
import {
  BORESCOPE_SIGHTS, CASE_LIMITS, CLEARANCE_STATES, OBSERVATION_CODES, PLUG_APPEARANCES, VACUUM_PATTERNS, VALVES,
} from './case-codes.ts'
import { flag, list, positive, quantity, whole, word } from './fields.ts'
import { positivePressureSchema, pressureSchema, vacuumPressureSchema } from './pressure.ts'

const { cylinders, strokes, samples } = CASE_LIMITS

/** A cylinder by its number; that the engine has it is checked with the case. */
export const cylinderNumberSchema = whole(1, cylinders)
const loudness = whole(0, 3)
const heardSchema = z
  .strictObject({
    intake: loudness.optional(),
    exhaust: loudness.optional(),
    crankcase: loudness.optional(),
    coolant: loudness.optional(),
    neighbour: loudness.optional(),
    outside: loudness.optional(),
  })
  .meta({ id: 'Heard', description: 'How loud at each listening point: 0 none, 1 faint, 2 clear, 3 loud; absent = not listened.' })

const finite = z.number({ error: 'a number' })

/** What each test records, by the test's name, without the session it belongs to. */
const shapes = {
  compression: {
    test: z.literal('compression'),
    cylinder: cylinderNumberSchema,
    wet: flag().optional(),
    pressure: pressureSchema,
    firstStroke: pressureSchema.optional(),
    strokes: list(pressureSchema, strokes, 'pressures, the peaks after each stroke', 1).optional(),
    strokeCount: whole(1, strokes).optional(),
    running: flag().optional(),
    snap: flag().optional(),
    oilMl: quantity(0, 1000, 'ml').optional(),
    heldTenSeconds: flag().optional(),
    seq: whole(0, 1_000_000).optional(),
  },
  leakage: {
    test: z.literal('leakage'),
    cylinder: cylinderNumberSchema,
    percent: quantity(0, 100, 'percent').optional(),
    supply: positivePressureSchema.optional(),
    held: pressureSchema.optional(),
    heard: heardSchema.optional(),
    neighbour: cylinderNumberSchema.optional(),
    rockersSlack: list(cylinderNumberSchema, cylinders, 'cylinder numbers').optional(),
    wet: flag().optional(),
    offTopDeg: quantity(-180, 180, 'degrees').optional(),
  },
  plug: {
    test: z.literal('plug'),
    cylinder: cylinderNumberSchema,
    appearance: word(PLUG_APPEARANCES),
    afterRunAtSpeed: flag().optional(),
  },
  'power-balance': { test: z.literal('power-balance'), cylinder: cylinderNumberSchema, rpmDrop: quantity(-1000, 5000, 'rpm') },
  vacuum: { test: z.literal('vacuum'), pattern: word(VACUUM_PATTERNS), reading: vacuumPressureSchema.optional() },
  'coolant-gas': { test: z.literal('coolant-gas'), present: flag() },
  borescope: {
    test: z.literal('borescope'),
    cylinder: cylinderNumberSchema,
    seen: list(word(BORESCOPE_SIGHTS), BORESCOPE_SIGHTS.length, 'things seen', 1),
  },
  clearance: { test: z.literal('clearance'), cylinder: cylinderNumberSchema, valve: word(VALVES), state: word(CLEARANCE_STATES) },
  'valve-lift': { test: z.literal('valve-lift'), cylinder: cylinderNumberSchema, valve: word(VALVES), mm: quantity(0, 50, 'mm') },
  'cooling-pressure': { test: z.literal('cooling-pressure'), lostPressure: pressureSchema, minutes: positive(600, 'minutes') },
  observation: {
    test: z.literal('observation'),
    cylinder: cylinderNumberSchema.optional(),
    present: flag().optional(),
    code: word(OBSERVATION_CODES),
  },
  'cranking-current': {
    test: z.literal('cranking-current'),
    samples: z.strictObject({ seconds: list(finite, samples, 'times in seconds'), amps: list(finite, samples, 'currents in ampere') }),
    cylinderOneAt: finite.optional(),
  },
}

const entered = [
  z.strictObject(shapes.compression).meta({ id: 'CompressionReading' }),
  z.strictObject(shapes.leakage).meta({ id: 'LeakageReading' }),
  z.strictObject(shapes.plug).meta({ id: 'PlugReading' }),
  z.strictObject(shapes['power-balance']).meta({ id: 'PowerBalanceReading' }),
  z.strictObject(shapes.vacuum).meta({ id: 'VacuumReading' }),
  z.strictObject(shapes['coolant-gas']).meta({ id: 'CoolantGasReading' }),
  z.strictObject(shapes.borescope).meta({ id: 'BorescopeReading' }),
  z.strictObject(shapes.clearance).meta({ id: 'ClearanceReading' }),
  z.strictObject(shapes['valve-lift']).meta({ id: 'ValveLiftReading' }),
  z.strictObject(shapes['cooling-pressure']).meta({ id: 'CoolingPressureReading' }),
  z.strictObject(shapes.observation).meta({ id: 'Observation' }),
  z.strictObject(shapes['cranking-current']).meta({ id: 'CrankingCurrentReading' }),
] as const

/** A reading as a technician enters it into a session (which it therefore does not name). */
export const enteredReadingSchema = z.discriminatedUnion('test', entered).meta({ id: 'EnteredReading' })
export type EnteredReading = z.infer<typeof enteredReadingSchema>

const session = z.string({ error: 'the id of one of the sessions' }).optional()

/** A reading of a case: the same, and the session whose conditions hold for it (absent: those at the top level). */
export const readingSchema = z
  .discriminatedUnion('test', [
    z.strictObject({ ...shapes.compression, session }),
    z.strictObject({ ...shapes.leakage, session }),
    z.strictObject({ ...shapes.plug, session }),
    z.strictObject({ ...shapes['power-balance'], session }),
    z.strictObject({ ...shapes.vacuum, session }),
    z.strictObject({ ...shapes['coolant-gas'], session }),
    z.strictObject({ ...shapes.borescope, session }),
    z.strictObject({ ...shapes.clearance, session }),
    z.strictObject({ ...shapes['valve-lift'], session }),
    z.strictObject({ ...shapes['cooling-pressure'], session }),
    z.strictObject({ ...shapes.observation, session }),
    z.strictObject({ ...shapes['cranking-current'], session }),
  ])
  .meta({ id: 'Reading' })
export type Reading = z.infer<typeof readingSchema>
export type CompressionReading = Extract<Reading, { test: 'compression' }>
export type LeakageReading = Extract<Reading, { test: 'leakage' }>
export type CrankingCurrentReading = Extract<Reading, { test: 'cranking-current' }>
