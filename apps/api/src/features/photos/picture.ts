import { PHOTO_LIMITS } from '@evenbore/contract'
import type { Metadata, Sharp, SharpOptions } from 'sharp'
import { badField } from '../../platform/problems/problem.ts'

/** A picture as it is kept: JPEG, upright, no larger than needed, nothing in it but the picture. And a small one for lists. */
export type CleanPicture = { readonly full: Buffer; readonly small: Buffer; readonly width: number; readonly height: number }

const EXPECTED = 'a JPEG or PNG picture in base64'
const OPTIONS: SharpOptions = { failOn: 'truncated', limitInputPixels: PHOTO_LIMITS.pixels, animated: false }
const SECONDS = 20

/** What the first bytes of a picture say it is; names and types that came with it count for nothing. */
const BEGINNINGS: readonly { readonly format: 'jpeg' | 'png'; readonly bytes: readonly number[] }[] = [
  { format: 'jpeg', bytes: [0xff, 0xd8, 0xff] },
  { format: 'png', bytes: [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a] },
]

/**
 * Decodes a picture and encodes it anew, so that nothing of the file but the picture is kept: no place, device, comment, thumbnail, nor
 * what was hidden behind its end. Turned upright first, since how the camera was held is told by what is dropped.
 * @throws problem `invalid-request` at `/picture`: not base64, neither JPEG nor PNG, cut short, damaged, or too many pixels
 */
export async function cleanPicture(base64: string): Promise<CleanPicture> {
  const sent = Buffer.from(base64, 'base64')
  if (sent.toString('base64') !== base64) throw badPicture('what is no base64')
  if (!BEGINNINGS.some(({ bytes }) => bytes.every((byte, at) => sent[at] === byte))) throw badPicture('something else')
  const { default: sharp } = await import('sharp')
  await demandSize(sharp(sent, OPTIONS))
  try {
    const upright = sharp(sent, OPTIONS).timeout({ seconds: SECONDS }).autoOrient().flatten({ background: '#ffffff' }).toColourspace('srgb')
    const within = (side: number, quality: number) => upright.clone().resize({ width: side, height: side, fit: 'inside', withoutEnlargement: true }).jpeg({ quality }).toBuffer({ resolveWithObject: true })
    const full = await within(PHOTO_LIMITS.sidePx, 86)
    const small = await within(PHOTO_LIMITS.smallSidePx, 76)
    return { full: full.data, small: small.data, width: full.info.width, height: full.info.height }
  } catch {
    throw badPicture('one that is cut short or damaged')
  }
}

/** By the file's own head, before anything is decoded: a few bytes can claim more pixels than there is memory. */
async function demandSize(picture: Sharp): Promise<void> {
  let head: Metadata
  try {
    head = await picture.metadata()
  } catch (error) {
    const tooMany = /pixel limit/i.test((error as Error).message)
    throw tooMany ? tooLarge('more') : badPicture('one that is cut short or damaged')
  }
  if (head.width * head.height > PHOTO_LIMITS.pixels) throw tooLarge(`${head.width} x ${head.height}`)
}

const tooLarge = (got: string) => badField('/picture', `a picture of at most ${PHOTO_LIMITS.pixels / 1_000_000} million pixels`, got)
const badPicture = (got: string) => badField('/picture', EXPECTED, got)
