import type { Photo, PhotoPut, PictureSize } from '@evenbore/contract'
import { answer } from './answer.ts'
import { client } from './client.ts'
import type { Page } from './page.ts'

export const listPhotos = (job: string) => answer<Page<Photo>>(client.GET('/v1/jobs/{job}/photos', { params: { path: { job } } }))
/** Attaches a picture to a reading; sent again under the same id it is kept once. */
export const attachPhoto = (reading: string, photo: string, body: PhotoPut) => answer<Photo>(client.PUT('/v1/readings/{reading}/photos/{photo}', { params: { path: { reading, photo } }, body }))
export const withdrawPhoto = (photo: string, reason: string) => answer<Photo>(client.POST('/v1/photos/{photo}/withdrawal', { params: { path: { photo } }, body: { reason } }))

/** The picture of a photo; undefined where it cannot be had just now. An image element could not say who asks. */
export async function fetchPicture(photo: string, size: PictureSize): Promise<Blob | undefined> {
  try {
    const response = await client.send(new Request(new URL(`/v1/photos/${photo}/picture?size=${size}`, location.origin), { credentials: 'same-origin' }))
    return response.ok ? await response.blob() : undefined
  } catch {
    return undefined
  }
}
