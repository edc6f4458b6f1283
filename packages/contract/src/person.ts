import { z } from 'zod'
import { emailSchema, passwordSchema, pinSchema, roleHeldSchema } from './access.ts'
import { idSchema, instantSchema, lineSchema, localeSchema, personRefSchema, versionSchema } from './basics.ts'
import { pressureUnitSchema } from './diagnosis-words.ts'

export const personSchema = z
  .strictObject({
    id: idSchema,
    name: z.string(),
    email: z.string().nullable(),
    hasPin: z.boolean(),
    roles: z.array(roleHeldSchema),
    locale: localeSchema.nullable(),
    pressureUnit: pressureUnitSchema.nullable(),
    leftAt: instantSchema.nullable(),
    version: versionSchema,
  })
  .meta({ id: 'Person' })
export type Person = z.infer<typeof personSchema>
export const newPersonSchema = z
  .strictObject({ name: lineSchema, email: emailSchema.optional(), password: passwordSchema.optional(), pin: pinSchema.optional(), roles: z.array(roleHeldSchema).min(1), locale: localeSchema.optional(), pressureUnit: pressureUnitSchema.optional() })
  .meta({ id: 'NewPerson' })
/** Edit with If-Match. `left: true` ends every sign-in of the person. */
export const personEditSchema = z
  .strictObject({ name: lineSchema, email: emailSchema.nullable(), password: passwordSchema, pin: pinSchema, roles: z.array(roleHeldSchema).min(1), locale: localeSchema.nullable(), pressureUnit: pressureUnitSchema.nullable(), left: z.boolean() })
  .partial()
  .meta({ id: 'PersonEdit' })
/** What a person may change of himself. */
export const myPreferencesSchema = z.strictObject({ locale: localeSchema.nullable(), pressureUnit: pressureUnitSchema.nullable() }).partial().meta({ id: 'MyPreferences' })

/** Somebody who may approve in a manager's place for a time, within the manager's limit. */
export const deputySchema = z
  .strictObject({ id: idSchema, garage: idSchema, manager: personRefSchema, deputy: personRefSchema, from: instantSchema, until: instantSchema, revokedAt: instantSchema.nullable() })
  .meta({ id: 'Deputy' })
/** `manager` absent: oneself. */
export const newDeputySchema = z.strictObject({ manager: idSchema.optional(), deputy: idSchema, from: instantSchema.optional(), until: instantSchema }).meta({ id: 'NewDeputy' })

export const auditEntrySchema = z
  .strictObject({ id: idSchema, at: instantSchema, garage: idSchema.nullable(), actor: z.strictObject({ kind: z.string(), id: z.string(), name: z.string().nullable() }), action: z.string(), subject: z.unknown() })
  .meta({ id: 'AuditEntry' })

export type NewPerson = z.infer<typeof newPersonSchema>
export type PersonEdit = z.infer<typeof personEditSchema>
export type MyPreferences = z.infer<typeof myPreferencesSchema>
export type Deputy = z.infer<typeof deputySchema>
export type NewDeputy = z.infer<typeof newDeputySchema>
export type AuditEntry = z.infer<typeof auditEntrySchema>
