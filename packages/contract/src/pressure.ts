import { z } from 'zod'

/** Units in which a garage reads compression and leakage gauges. */
export const PRESSURE_UNITS = ['psi', 'kPa', 'bar', 'kgf/cm2'] as const
export type PressureUnit = (typeof PRESSURE_UNITS)[number]

const unitSchema = z.enum(PRESSURE_UNITS, { error: `one of ${PRESSURE_UNITS.join(', ')}` })

/** Units of vacuum gauges: the pressure units, inches of mercury and millibar. */
export const VACUUM_UNITS = [...PRESSURE_UNITS, 'inHg', 'mbar'] as const
export type VacuumUnit = (typeof VACUUM_UNITS)[number]

/**
 * Pascals in one unit, for checking limits at the edge.
 * psi and inHg: NIST SP 811 (conventional values); kgf/cm2: exact by definition.
 */
export const PASCALS_PER_UNIT: Readonly<Record<VacuumUnit, number>> = {
  psi: 6894.757293168361,
  kPa: 1000,
  bar: 100000,
  'kgf/cm2': 98066.5,
  inHg: 3386.388640341,
  mbar: 100,
}

/** No gauge of the trade reads past this: 10 MPa. */
export const MAX_PRESSURE_PA = 10e6

type AnyPressure = { value: number; unit: VacuumUnit }

function within(lowPa: number, highPa: number, expected: string) {
  return (context: z.core.ParsePayload<AnyPressure>) => {
    const { value, unit } = context.value
    const pa = value * PASCALS_PER_UNIT[unit]
    // one part in 1e9 of slack: a bound typed in another unit must not fail by rounding
    if (pa >= lowPa - Math.abs(lowPa) * 1e-9 && pa <= highPa * (1 + 1e-9)) return
    context.issues.push({ code: 'custom', input: value, path: ['value'], message: expected })
  }
}

const NUMBER = 'a number'
const pressureShape = {
  value: z.number({ error: NUMBER }),
  unit: unitSchema,
}
const RANGE = 'a number from 0 to 10 MPa (0 to 1450 psi, 10000 kPa, 100 bar or 101.9 kgf/cm2)'

/** A gauge pressure as it was read: value and unit, 0 to 10 MPa. */
export const pressureSchema = z
  .strictObject(pressureShape)
  .check(within(0, MAX_PRESSURE_PA, RANGE))
  .meta({ id: 'Pressure', description: 'A pressure as read, with its unit. Gauge pressure unless the field says absolute.' })
export type Pressure = z.infer<typeof pressureSchema>

/** A pressure that cannot be zero, such as a gauge's span or a tester's supply. */
export const positivePressureSchema = z
  .strictObject(pressureShape)
  .check(within(1, MAX_PRESSURE_PA, 'a number above 0 and at most 10 MPa (1450 psi, 10000 kPa, 100 bar or 101.9 kgf/cm2)'))
  .meta({ id: 'PositivePressure', description: 'A pressure above zero, with its unit.' })

/** Absolute pressure of the air at the station: 30 to 120 kPa covers every place with a road. */
export const airPressureSchema = z
  .strictObject(pressureShape)
  .check(within(30e3, 120e3, 'an absolute air pressure from 30 to 120 kPa (4.4 to 17.4 psi)'))
  .meta({ id: 'AirPressure', description: 'Absolute air pressure at the station (not reduced to sea level).' })

/** A vacuum reading as a positive depression below the surrounding air. */
export const vacuumPressureSchema = z
  .strictObject({
    value: z.number({ error: NUMBER }),
    unit: z.enum(VACUUM_UNITS, { error: `one of ${VACUUM_UNITS.join(', ')}` }),
  })
  .check(within(0, 110e3, 'a depression below air from 0 to 110 kPa (0 to 32.5 inHg)'))
  .meta({ id: 'VacuumPressure', description: 'A vacuum reading as a positive depression below the surrounding air.' })
export type VacuumPressure = z.infer<typeof vacuumPressureSchema>
