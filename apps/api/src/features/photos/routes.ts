import { clientIdSchema, idSchema, PHOTO_LIMITS, photoPutSchema, photoSchema, photoWithdrawalSchema, pictureSizeSchema } from '@evenbore/contract'
import { z } from 'zod'
import type { Routes } from '../../platform/http/app.ts'
import { keepPhoto, listPhotos, readPicture, withdrawPhoto } from './service.ts'

const tags = ['photos']
const ofPhoto = z.strictObject({ photo: idSchema })

/** Photos of plugs, bores and gauges, attached to readings. */
export const photoRoutes: Routes = async (app) => {
  app.get(
    '/v1/jobs/:job/photos',
    {
      config: { action: 'photos.read' },
      schema: { tags, summary: 'Photos of a job, each with the reading it belongs to', params: z.strictObject({ job: idSchema }), response: { 200: z.strictObject({ items: z.array(photoSchema), next: z.null() }) } },
    },
    async (request) => ({ items: await listPhotos(app.database, request.actor, request.params.job), next: null }),
  )

  app.put(
    '/v1/readings/:reading/photos/:photo',
    {
      config: { action: 'photos.write' },
      // The picture, and room for what stands beside it.
      bodyLimit: PHOTO_LIMITS.characters + 10_000,
      schema: {
        tags,
        summary: 'Attach a photo to a reading',
        description:
          'The id is made by the client (UUID version 7). The same body again answers 200 as the first time, another body 409. The picture is told by its content, turned upright, made no larger than ' +
          `${PHOTO_LIMITS.sidePx} pixels on its longest side and kept as JPEG with nothing in it but the picture. At most ${PHOTO_LIMITS.pixels / 1_000_000} million pixels; at most ${PHOTO_LIMITS.ofOneReading} photos a reading. On a job that is over: 409, unless \`offline\`.`,
        params: z.strictObject({ reading: idSchema, photo: clientIdSchema }),
        body: photoPutSchema,
        response: { 200: photoSchema, 201: photoSchema },
      },
    },
    async (request, reply) => {
      const { reading, photo } = request.params
      const kept = await keepPhoto(app.database, app.files, request.actor, reading, photo, request.body)
      return reply.code(kept.isNew ? 201 : 200).send(kept.photo)
    },
  )

  app.get(
    '/v1/photos/:photo/picture',
    {
      config: { action: 'photos.read' },
      schema: {
        tags, summary: 'The picture of a photo, JPEG', params: ofPhoto, produces: ['image/jpeg'],
        querystring: z.strictObject({ size: pictureSizeSchema.default('full').meta({ description: `small: at most ${PHOTO_LIMITS.smallSidePx} pixels on its longest side` }) }),
        response: { 200: z.string().meta({ description: 'the picture', format: 'binary' }) },
      },
    },
    async (request, reply) => {
      const picture = await readPicture(app.database, app.files, request.actor, request.params.photo, request.query.size)
      return reply.type('image/jpeg').header('content-disposition', `inline; filename="${request.params.photo}.jpg"`).send(picture as never)
    },
  )

  app.post(
    '/v1/photos/:photo/withdrawal',
    {
      config: { action: 'photos.write' },
      schema: { tags, summary: 'Withdraw a photo', description: 'It stays, marked as withdrawn. Withdrawn again, the first reason stands.', params: ofPhoto, body: photoWithdrawalSchema, response: { 200: photoSchema } },
    },
    (request) => withdrawPhoto(app.database, request.actor, request.params.photo, request.body.reason),
  )
}
