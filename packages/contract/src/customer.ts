import { z } from 'zod'
import { idSchema, instantSchema, lineSchema, textSchema, versionSchema } from './basics.ts'
import { emailSchema } from './access.ts'

const phoneSchema = z.string().trim().min(3).max(40).regex(/^[+()\d\s/.-]+$/).meta({ description: 'digits, spaces and + ( ) / . -' })
const fields = { name: lineSchema, phone: phoneSchema.nullable(), email: emailSchema.nullable(), address: textSchema.nullable(), note: textSchema.nullable() }
/** Belongs to one garage. After erasure the name reads "erased" and the rest is null; the records stay whole. */
export const customerSchema = z.strictObject({ id: idSchema, garage: idSchema, ...fields, name: z.string(), email: z.string().nullable(), phone: z.string().nullable(), erasedAt: instantSchema.nullable(), version: versionSchema }).meta({ id: 'Customer' })
export type Customer = z.infer<typeof customerSchema>
export const newCustomerSchema = z.strictObject({ name: lineSchema, phone: phoneSchema.nullable().default(null), email: emailSchema.nullable().default(null), address: textSchema.nullable().default(null), note: textSchema.nullable().default(null) }).meta({ id: 'NewCustomer' })
export const customerEditSchema = z.strictObject(fields).partial().meta({ id: 'CustomerEdit' })

const plateSchema = z.string().trim().min(1).max(20).meta({ description: 'registration plate as written', examples: ['FX 204 B'] })
const vehicleFields = { plate: plateSchema, description: lineSchema.meta({ examples: ['grey estate'] }), year: z.int().min(1885).max(2100).nullable(), note: textSchema.nullable() }
export const vehicleSchema = z.strictObject({ id: idSchema, garage: idSchema, customer: idSchema, ...vehicleFields, engine: idSchema.nullable(), version: versionSchema }).meta({ id: 'Vehicle' })
export type Vehicle = z.infer<typeof vehicleSchema>
export const newVehicleSchema = z.strictObject({ customer: idSchema, plate: plateSchema, description: vehicleFields.description, year: vehicleFields.year.default(null), note: textSchema.nullable().default(null) }).meta({ id: 'NewVehicle' })
export const vehicleEditSchema = z.strictObject({ customer: idSchema, ...vehicleFields }).partial().meta({ id: 'VehicleEdit' })

export type NewCustomer = z.infer<typeof newCustomerSchema>
export type CustomerEdit = z.infer<typeof customerEditSchema>
export type NewVehicle = z.infer<typeof newVehicleSchema>
export type VehicleEdit = z.infer<typeof vehicleEditSchema>
