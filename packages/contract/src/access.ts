import { z } from 'zod'
import { idSchema, instantSchema, lineSchema, localeSchema, personRefSchema } from './basics.ts'
import { pressureUnitSchema } from './diagnosis-words.ts'

export const roleSchema = z.enum(['technician', 'front-desk', 'manager', 'owner']).meta({ id: 'Role' })
export type Role = z.infer<typeof roleSchema>

/** What an outside app may be allowed to do. */
export const scopeSchema = z
  .enum(['jobs:read', 'jobs:write', 'engines:read', 'readings:write', 'retests:write', 'evaluate', 'events:read'])
  .meta({ id: 'Scope' })
export type Scope = z.infer<typeof scopeSchema>

export const passwordSchema = z.string().min(12).max(200).meta({ description: 'at least 12 characters' })
export const pinSchema = z.string().regex(/^\d{4,8}$/).meta({ description: 'four to eight digits' })
export const emailSchema = z.email().max(254)

/** A role in one garage; owners hold theirs in every garage (`garage` null). */
export const roleHeldSchema = z
  .strictObject({ garage: idSchema.nullable(), role: roleSchema, approvalLimitMinor: z.int().min(0).nullable().optional() })
  .meta({ id: 'RoleHeld' })
export type RoleHeld = z.infer<typeof roleHeldSchema>

export const signInSchema = z.strictObject({ email: emailSchema, password: z.string().min(1).max(200), oneTimeCode: z.string().regex(/^\d{6}$/).optional() }).meta({ id: 'SignIn' })
/** `refreshToken` is answered only where asked for (`?refresh=body`); browsers get it as a cookie. */
export const tokensSchema = z
  .strictObject({ accessToken: z.string(), tokenType: z.literal('Bearer'), expiresInSeconds: z.int(), refreshToken: z.string().optional() })
  .meta({ id: 'Tokens' })
export const refreshSchema = z.strictObject({ refreshToken: z.string().optional() }).meta({ id: 'Refresh' })
export const enrolSchema = z.strictObject({ enrolmentCode: z.string().min(1).max(100) }).meta({ id: 'Enrol' })
/** The tablet keeps `tabletToken`; it is shown once and is what makes the tablet a tablet. */
export const enrolledSchema = z.strictObject({ tablet: idSchema, name: z.string(), garage: idSchema, bay: idSchema, tabletToken: z.string() }).meta({ id: 'Enrolled' })
/** Sent with `Authorization: Bearer <tabletToken>`. */
export const takeOverSchema = z.strictObject({ person: idSchema, pin: pinSchema }).meta({ id: 'TakeOver' })
export const tokenRequestSchema = z
  .strictObject({ grant_type: z.literal('client_credentials'), scope: z.string().max(500).optional(), client_id: z.string().max(100).optional(), client_secret: z.string().max(200).optional() })
  .meta({ id: 'TokenRequest' })
/** RFC 6749 section 5.1. */
export const tokenAnswerSchema = z.strictObject({ access_token: z.string(), token_type: z.literal('Bearer'), expires_in: z.int(), scope: z.string() }).meta({ id: 'TokenAnswer' })
/** The first owner, made through the one-time link printed on the server's console. */
export const ownerSetupSchema = z.strictObject({ link: z.string().min(1).max(200), name: lineSchema, email: emailSchema, password: passwordSchema }).meta({ id: 'OwnerSetup' })

/** Who the caller is, and what it may do, so that screens hide what cannot be done. */
export const meSchema = z
  .strictObject({
    kind: z.enum(['person', 'tablet', 'app']),
    person: personRefSchema.nullable(),
    roles: z.array(roleHeldSchema),
    garages: z.array(z.strictObject({ id: idSchema, name: z.string(), timeZone: z.string(), currency: z.string(), pressureUnit: pressureUnitSchema, locale: localeSchema })),
    tablet: z.strictObject({ id: idSchema, name: z.string(), garage: idSchema, bay: idSchema }).nullable(),
    scopes: z.array(scopeSchema),
    locale: localeSchema,
    pressureUnit: pressureUnitSchema.nullable(),
    /** Whom this person stands in for just now. */
    deputyFor: z.array(z.strictObject({ manager: personRefSchema, garage: idSchema, until: instantSchema, approvalLimitMinor: z.int().nullable() })),
  })
  .meta({ id: 'Me' })
export type Me = z.infer<typeof meSchema>

export const tabletSchema = z
  .strictObject({ id: idSchema, garage: idSchema, bay: idSchema, name: z.string(), enrolledAt: instantSchema.nullable(), revokedAt: instantSchema.nullable() })
  .meta({ id: 'Tablet' })
export const newTabletSchema = z.strictObject({ bay: idSchema, name: lineSchema }).meta({ id: 'NewTablet' })
/** The code is shown once and works once. */
export const tabletMadeSchema = tabletSchema.extend({ enrolmentCode: z.string(), expiresAt: instantSchema }).meta({ id: 'TabletMade' })

export const outsideAppSchema = z
  .strictObject({ id: idSchema, name: z.string(), clientId: z.string(), scopes: z.array(scopeSchema), garages: z.array(idSchema), createdAt: instantSchema, revokedAt: instantSchema.nullable() })
  .meta({ id: 'OutsideApp' })
/** No garages named: every garage of the chain. */
export const newOutsideAppSchema = z.strictObject({ name: lineSchema, scopes: z.array(scopeSchema).min(1), garages: z.array(idSchema).default([]) }).meta({ id: 'NewOutsideApp' })
/** The secret is shown once. */
export const outsideAppMadeSchema = outsideAppSchema.extend({ clientSecret: z.string() }).meta({ id: 'OutsideAppMade' })

export type Password = z.infer<typeof passwordSchema>
export type Pin = z.infer<typeof pinSchema>
export type Email = z.infer<typeof emailSchema>
export type SignIn = z.infer<typeof signInSchema>
export type Tokens = z.infer<typeof tokensSchema>
export type Refresh = z.infer<typeof refreshSchema>
export type Enrol = z.infer<typeof enrolSchema>
export type Enrolled = z.infer<typeof enrolledSchema>
export type TakeOver = z.infer<typeof takeOverSchema>
export type TokenRequest = z.infer<typeof tokenRequestSchema>
export type TokenAnswer = z.infer<typeof tokenAnswerSchema>
export type OwnerSetup = z.infer<typeof ownerSetupSchema>
export type Tablet = z.infer<typeof tabletSchema>
export type NewTablet = z.infer<typeof newTabletSchema>
export type TabletMade = z.infer<typeof tabletMadeSchema>
export type OutsideApp = z.infer<typeof outsideAppSchema>
export type NewOutsideApp = z.infer<typeof newOutsideAppSchema>
export type OutsideAppMade = z.infer<typeof outsideAppMadeSchema>
