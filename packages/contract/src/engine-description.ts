import { z } from 'zod'
import {
  CAMSHAFTS, CASE_LIMITS, COOLINGS, ENGINE_TEMPERATURES, FUELS, GAUGE_CONNECTIONS, INJECTIONS, LAYOUTS, PLUGS_OUT, THROTTLES, VALVE_GEARS,
} from './case-codes.ts'
import { flag, list, positive, quantity, whole, word } from './fields.ts'
import { airPressureSchema, positivePressureSchema, pressureSchema } from './pressure.ts'
import { cylinderNumberSchema } from './reading.ts'

const cylinderList = list(cylinderNumberSchema, CASE_LIMITS.cylinders, 'cylinder numbers', 1)

/** The maker's own limits; the rules of the trade stand in where there are none. */
export const limitsSchema = z
  .strictObject({
    minimum: pressureSchema.optional(),
    maximum: pressureSchema.optional(),
    spreadPercent: quantity(0, 100, 'percent').optional(),
    spreadPressure: pressureSchema.optional(),
  })
  .meta({ id: 'EngineLimits' })
export type EngineLimits = z.infer<typeof limitsSchema>

/** What was done to the engine, and how it was kept. */
export const historySchema = z
  .strictObject({
    kmSinceRings: quantity(0, 2_000_000, 'km').optional(),
    monthsStored: quantity(0, 1200, 'months').optional(),
    minutesRunBeforeTest: quantity(0, 100_000, 'minutes').optional(),
    overheated: flag().optional(),
    headSkimmed: flag().optional(),
  })
  .meta({ id: 'EngineHistory' })

/** The engine as the diagnosis needs to know it: lengths in mm, angles in crank degrees after bottom dead centre. */
export const engineDescriptionSchema = z
  .strictObject({
    fuel: word(FUELS),
    cycle: z.union([z.literal(4), z.literal(2)], { error: '4 or 2' }).optional(),
    injection: word(INJECTIONS).optional(),
    layout: word(LAYOUTS),
    cylinders: whole(1, CASE_LIMITS.cylinders),
    firingOrder: cylinderList.optional(),
    banks: list(cylinderList, CASE_LIMITS.cylinders, 'banks', 1).optional(),
    gaskets: list(cylinderList, CASE_LIMITS.cylinders, 'gasket pieces').optional(),
    boreMm: quantity(10, 1000, 'mm').optional(),
    strokeMm: quantity(10, 1000, 'mm').optional(),
    rodLengthMm: quantity(10, 3000, 'mm').optional(),
    compressionRatio: quantity(2, 40).optional(),
    intakeClosesDegAbdc: quantity(-90, 150, 'degrees').optional(),
    decompressor: flag().optional(),
    valveGear: word(VALVE_GEARS).optional(),
    cooling: word(COOLINGS).optional(),
    camshaft: word(CAMSHAFTS).optional(),
    limits: limitsSchema.optional(),
    hotExhaustCylinders: list(cylinderNumberSchema, CASE_LIMITS.cylinders, 'cylinder numbers').optional(),
    history: historySchema.optional(),
  })
  .meta({ id: 'EngineDescription' })
export type EngineDescription = z.infer<typeof engineDescriptionSchema>

/** The conditions under which readings were taken: they decide which numbers may be compared. */
export const conditionsSchema = z
  .strictObject({
    engine: word(ENGINE_TEMPERATURES),
    throttle: word(THROTTLES),
    plugsOut: word(PLUGS_OUT),
    strokes: whole(1, CASE_LIMITS.strokes).optional(),
    crankingRpm: positive(10_000, 'rpm').optional(),
    batteryVolts: quantity(0, 60, 'V').optional(),
    altitudeM: quantity(-500, 9000, 'm').optional(),
    airPressure: airPressureSchema.optional(),
    airTempC: quantity(-60, 60, 'degrees Celsius').optional(),
    clearancesSet: flag().optional(),
    headTorqued: flag().optional(),
  })
  .meta({ id: 'Conditions' })
export type Conditions = z.infer<typeof conditionsSchema>

/** The gauge: its span, its accuracy class after EN 837-1 (percent of span) and its finest mark. */
export const gaugeSchema = z
  .strictObject({
    span: positivePressureSchema,
    accuracyClass: quantity(0, 25, 'percent of span'),
    resolution: pressureSchema.optional(),
    volumeBeforeValveMl: quantity(0, 500, 'ml').optional(),
    connection: word(GAUGE_CONNECTIONS).optional(),
  })
  .meta({ id: 'CaseGauge' })
export type Gauge = z.infer<typeof gaugeSchema>

/** The leakage tester: regulated supply and the bore of its restrictor in mm. */
export const leakageTesterSchema = z
  .strictObject({ supply: positivePressureSchema, restrictorMm: positive(20, 'mm') })
  .meta({ id: 'LeakageTester' })
export type LeakageTester = z.infer<typeof leakageTesterSchema>
