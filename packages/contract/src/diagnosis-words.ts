import { z } from 'zod'
import { CAUSES, FAULTS, OPERATIONS } from './evaluation-codes.ts'
import { PRESSURE_UNITS } from './pressure.ts'

/** Closed lists of the diagnosis as schemas, for the records that use them. */
export const pressureUnitSchema = z.enum(PRESSURE_UNITS).meta({ id: 'PressureUnit' })
export const operationSchema = z.enum(OPERATIONS).meta({ id: 'Operation' })
export const faultSchema = z.enum(FAULTS).meta({ id: 'Fault' })
export const engineCauseSchema = z.enum(CAUSES).meta({ id: 'Cause' })
