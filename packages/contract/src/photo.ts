import { z } from 'zod'
import { clientIdSchema, idSchema, instantSchema, lineSchema, personRefSchema } from './basics.ts'
import { PHOTO_LIMITS } from './photo-limits.ts'

const PICTURE = `a JPEG or PNG picture in base64, at most ${PHOTO_LIMITS.characters} characters`

/** Body of `PUT /v1/readings/{reading}/photos/{photo}`. What else the file holds (place, device, comments) is not kept. */
export const photoPutSchema = z
  .strictObject({
    picture: z.string({ error: PICTURE }).min(1, { error: PICTURE }).max(PHOTO_LIMITS.characters, { error: PICTURE }).meta({ description: PICTURE }),
    takenAt: instantSchema.meta({ description: "the tablet's clock" }),
    takenBy: idSchema.optional().meta({ description: 'person who took it, where that is not who sends it' }),
    offline: z.literal(true).optional(),
  })
  .meta({ id: 'PhotoPut' })
export type PhotoPut = z.infer<typeof photoPutSchema>

/** A photo of what a reading says; the picture is fetched by itself. `sha256` is that of the picture as kept. */
export const photoSchema = z
  .strictObject({
    id: clientIdSchema,
    job: idSchema,
    reading: idSchema,
    sha256: z.string(),
    bytes: z.int(),
    width: z.int(),
    height: z.int(),
    takenAt: instantSchema,
    receivedAt: instantSchema,
    takenBy: personRefSchema.nullable(),
    offline: z.boolean(),
    withdrawn: z.strictObject({ at: instantSchema, by: personRefSchema.nullable(), reason: z.string() }).nullable(),
  })
  .meta({ id: 'Photo' })
export type Photo = z.infer<typeof photoSchema>

/** Body of `POST /v1/photos/{photo}/withdrawal`. */
export const photoWithdrawalSchema = z.strictObject({ reason: lineSchema }).meta({ id: 'PhotoWithdrawal' })
export type PhotoWithdrawal = z.infer<typeof photoWithdrawalSchema>

export const pictureSizeSchema = z.enum(['full', 'small'], { error: 'full or small' })
export type PictureSize = z.infer<typeof pictureSizeSchema>
