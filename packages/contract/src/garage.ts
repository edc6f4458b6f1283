import { z } from 'zod'
import { basisPointsSchema, currencySchema, daySchema, idSchema, instantSchema, lineSchema, localeSchema, minorSchema, versionSchema } from './basics.ts'
import { gaugeSchema, leakageTesterSchema } from './engine-description.ts'
import { pressureUnitSchema } from './diagnosis-words.ts'
import { operationSchema } from './diagnosis-words.ts'

const timeZoneSchema = z.string().max(64).refine((zone) => Intl.supportedValuesOf('timeZone').includes(zone) || zone === 'UTC', { error: 'an IANA time zone such as Europe/Lisbon' })

const garageFields = {
  name: lineSchema,
  codeLetter: z.string().regex(/^[A-Z]$/).meta({ description: 'first part of the job codes: "K" gives K 27' }),
  timeZone: timeZoneSchema,
  currency: currencySchema,
  pressureUnit: pressureUnitSchema,
  elevationM: z.number().min(-430).max(5000).nullable(),
  locale: localeSchema,
  labourRateMinor: minorSchema,
  taxBasisPoints: basisPointsSchema,
  pricesIncludeTax: z.boolean(),
  toleranceBasisPoints: basisPointsSchema,
}
/** One garage of the chain with what its numbers and its prices depend on. */
export const garageSchema = z.strictObject({ id: idSchema, ...garageFields, version: versionSchema }).meta({ id: 'Garage' })
export type Garage = z.infer<typeof garageSchema>
export const newGarageSchema = z
  .strictObject({ ...garageFields, elevationM: garageFields.elevationM.default(null), locale: localeSchema.default('en'), pricesIncludeTax: z.boolean().default(false), toleranceBasisPoints: basisPointsSchema.default(0) })
  .meta({ id: 'NewGarage' })
export const garageEditSchema = z.strictObject(garageFields).partial().meta({ id: 'GarageEdit' })

export const baySchema = z.strictObject({ id: idSchema, garage: idSchema, name: z.string(), position: z.int(), closedAt: instantSchema.nullable(), version: versionSchema }).meta({ id: 'Bay' })
export const newBaySchema = z.strictObject({ name: lineSchema, position: z.int().min(0).max(1000) }).meta({ id: 'NewBay' })
export const bayEditSchema = z.strictObject({ name: lineSchema, position: z.int().min(0).max(1000), closed: z.boolean() }).partial().meta({ id: 'BayEdit' })

export const gaugeKindSchema = z.enum(['compression', 'leakage', 'vacuum'])
/** An instrument: `specification` is what a case says of it (a gauge, or a leakage tester). */
export const garageGaugeSchema = z
  .strictObject({ id: idSchema, garage: idSchema, name: z.string(), kind: gaugeKindSchema, specification: z.union([gaugeSchema, leakageTesterSchema]), checkDue: daySchema.nullable(), retiredAt: instantSchema.nullable(), version: versionSchema })
  .meta({ id: 'Gauge' })
export const newGaugeSchema = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.enum(['compression', 'vacuum']), name: lineSchema, specification: gaugeSchema, checkDue: daySchema.nullable().default(null) }),
    z.strictObject({ kind: z.literal('leakage'), name: lineSchema, specification: leakageTesterSchema, checkDue: daySchema.nullable().default(null) }),
  ])
  .meta({ id: 'NewGauge' })
export const gaugeEditSchema = z.strictObject({ name: lineSchema, specification: z.union([gaugeSchema, leakageTesterSchema]), checkDue: daySchema.nullable(), retired: z.boolean() }).partial().meta({ id: 'GaugeEdit' })

const catalogueFields = {
  kind: z.enum(['labour', 'part']),
  operation: operationSchema.nullable(),
  text: lineSchema,
  minutes: z.int().min(0).max(60_000).nullable(),
  unitPriceMinor: minorSchema.nullable(),
  taxBasisPoints: basisPointsSchema,
}
/** What the garage charges: labour by minutes at its rate, parts by piece. */
export const catalogueItemSchema = z.strictObject({ id: idSchema, garage: idSchema, ...catalogueFields, retiredAt: instantSchema.nullable(), version: versionSchema }).meta({ id: 'CatalogueItem' })
export const newCatalogueItemSchema = z.strictObject(catalogueFields).meta({ id: 'NewCatalogueItem' })
export const catalogueItemEditSchema = z.strictObject({ ...catalogueFields, retired: z.boolean() }).partial().meta({ id: 'CatalogueItemEdit' })

export type NewGarage = z.infer<typeof newGarageSchema>
export type GarageEdit = z.infer<typeof garageEditSchema>
export type Bay = z.infer<typeof baySchema>
export type NewBay = z.infer<typeof newBaySchema>
export type BayEdit = z.infer<typeof bayEditSchema>
export type GaugeKind = z.infer<typeof gaugeKindSchema>
export type GarageGauge = z.infer<typeof garageGaugeSchema>
export type NewGauge = z.infer<typeof newGaugeSchema>
export type GaugeEdit = z.infer<typeof gaugeEditSchema>
export type CatalogueItem = z.infer<typeof catalogueItemSchema>
export type NewCatalogueItem = z.infer<typeof newCatalogueItemSchema>
export type CatalogueItemEdit = z.infer<typeof catalogueItemEditSchema>
