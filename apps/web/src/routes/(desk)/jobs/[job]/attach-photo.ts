import type { Photo, PhotoPut } from '@evenbore/contract'
import { answer } from '#lib/api/answer.ts'
import { client } from '#lib/api/client.ts'

/** Attaches a picture to a reading; sent again under the same id it is kept once. */
export const attachPhoto = (reading: string, photo: string, body: PhotoPut) => answer<Photo>(client.PUT('/v1/readings/{reading}/photos/{photo}', { params: { path: { reading, photo } }, body }))
