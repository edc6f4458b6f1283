import { z } from 'zod'
import { basisPointsSchema, currencySchema, idSchema, instantSchema, lineSchema, minorSchema, personRefSchema, textSchema, versionSchema } from './basics.ts'
import { operationSchema } from './diagnosis-words.ts'

/** A line as written: quantity x rate, rounded half-even to the minor unit. Labour counts hours, parts and others pieces. */
export const quoteLineInputSchema = z
  .strictObject({
    kind: z.enum(['labour', 'part', 'other']),
    operation: operationSchema.nullable().default(null),
    cylinders: z.array(z.int().min(1).max(16)).max(16).default([]),
    text: lineSchema,
    quantity: z.number().positive().max(10_000).multipleOf(0.001),
    rateMinor: minorSchema,
    taxBasisPoints: basisPointsSchema,
  })
  .meta({ id: 'NewQuoteLine' })
export type QuoteLineInput = z.infer<typeof quoteLineInputSchema>
export const quoteLineSchema = z
  .strictObject({
    kind: z.enum(['labour', 'part', 'other']), operation: operationSchema.nullable(), cylinders: z.array(z.int()), text: z.string(), quantity: z.number(), unit: z.enum(['hour', 'piece']), rateMinor: z.int(), taxBasisPoints: z.int(), amountMinor: z.int(),
  })
  .meta({ id: 'QuoteLine' })
/** Tax is computed for each rate on the sum of its lines. */
export const totalsSchema = z
  .strictObject({ currency: currencySchema, pricesIncludeTax: z.boolean(), netMinor: z.int(), taxMinor: z.int(), totalMinor: z.int(), taxes: z.array(z.strictObject({ basisPoints: z.int(), onMinor: z.int(), taxMinor: z.int() })) })
  .meta({ id: 'Totals' })
export type Totals = z.infer<typeof totalsSchema>

/** The draft that its author works on. Edit with If-Match. */
export const quoteDraftSchema = z.strictObject({ lines: z.array(quoteLineSchema), note: z.string().nullable(), author: personRefSchema, totals: totalsSchema, updatedAt: instantSchema, version: versionSchema }).meta({ id: 'QuoteDraft' })
export const quoteDraftPutSchema = z.strictObject({ lines: z.array(quoteLineInputSchema).max(100), note: textSchema.nullable().default(null) }).meta({ id: 'QuoteDraftPut' })

export const approvalSchema = z
  .strictObject({ id: idSchema, kind: z.enum(['approved', 'sent-back', 'refused', 'withdrawn']), by: personRefSchema, deputyFor: personRefSchema.nullable(), ownQuote: z.boolean(), reason: z.string().nullable(), at: instantSchema })
  .meta({ id: 'Approval' })
/** `reason` is needed when a lone owner approves his own quote. */
export const approveSchema = z.strictObject({ reason: lineSchema.optional() }).meta({ id: 'Approve' })
export const sendBackSchema = z.strictObject({ question: textSchema }).meta({ id: 'SendBack' })
export const refuseSchema = z.strictObject({ reason: textSchema }).meta({ id: 'Refuse' })

const method = z.enum(['in-person', 'phone', 'message', 'written'])
export const authorisationSchema = z
  .strictObject({
    id: idSchema, quoteVersion: idSchema, kind: z.enum(['given', 'declined']), personName: z.string(), method, numberCalled: z.string().nullable(), amountMinor: minorSchema, currency: currencySchema, partsBack: z.boolean(), note: z.string().nullable(), givenAt: instantSchema, recordedBy: personRefSchema.nullable(), at: instantSchema,
  })
  .meta({ id: 'Authorisation' })
/** The customer's permission or refusal. By phone the number called is needed. `amountMinor` is with tax; absent: the version's total. */
export const newAuthorisationSchema = z
  .strictObject({ kind: z.enum(['given', 'declined']), personName: lineSchema, method, numberCalled: z.string().trim().min(3).max(40).optional(), amountMinor: minorSchema.optional(), partsBack: z.boolean().default(false), note: textSchema.optional(), givenAt: instantSchema })
  .superRefine((given, context) => {
    if (given.method === 'phone' && !given.numberCalled) context.addIssue({ code: 'custom', path: ['numberCalled'], message: 'the number called, since permission was given by phone' })
  })
  .meta({ id: 'NewAuthorisation' })

/** A version as sent to the manager: never edited. */
export const quoteVersionSchema = z
  .strictObject({ id: idSchema, job: idSchema, number: z.int(), author: personRefSchema, note: z.string().nullable(), evaluation: idSchema.nullable(), lines: z.array(quoteLineSchema), totals: totalsSchema, sentAt: instantSchema, approvals: z.array(approvalSchema), authorisations: z.array(authorisationSchema) })
  .meta({ id: 'QuoteVersion' })
export type QuoteVersion = z.infer<typeof quoteVersionSchema>
export const quoteSchema = z.strictObject({ job: idSchema, draft: quoteDraftSchema.nullable(), versions: z.array(quoteVersionSchema), permittedMinor: minorSchema, currency: currencySchema }).meta({ id: 'Quote' })
export type Quote = z.infer<typeof quoteSchema>

/** A line the evidence carries, priced from the garage's catalogue: what a draft can start from. */
export const suggestedLineSchema = quoteLineInputSchema.extend({ says: z.string(), cures: z.number().nullable() }).meta({ id: 'SuggestedLine' })
/** What waits for a manager's answer. */
export const decisionSchema = z
  .strictObject({ job: idSchema, code: z.string(), plate: z.string(), vehicle: z.string(), quoteVersion: idSchema, number: z.int(), author: personRefSchema, sentAt: instantSchema, totals: totalsSchema, mayApprove: z.boolean(), why: z.string().nullable() })
  .meta({ id: 'Decision' })

export type QuoteLine = z.infer<typeof quoteLineSchema>
export type QuoteDraft = z.infer<typeof quoteDraftSchema>
export type QuoteDraftPut = z.infer<typeof quoteDraftPutSchema>
export type Approval = z.infer<typeof approvalSchema>
export type Approve = z.infer<typeof approveSchema>
export type SendBack = z.infer<typeof sendBackSchema>
export type Refuse = z.infer<typeof refuseSchema>
export type Authorisation = z.infer<typeof authorisationSchema>
export type NewAuthorisation = z.infer<typeof newAuthorisationSchema>
export type SuggestedLine = z.infer<typeof suggestedLineSchema>
export type Decision = z.infer<typeof decisionSchema>
