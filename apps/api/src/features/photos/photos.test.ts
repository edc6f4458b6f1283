import type { Photo } from '@evenbore/contract'
import { newId, onTablet, testChain, testJob, testService, testTablet, type TestChain, type TestJob, type TestService } from '@evenbore/tests/support'
import request from 'supertest'
import sharp from 'sharp'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'

const WHEN = '2026-05-06T10:20:00.000Z'
const NOISE = { type: 'gaussian', mean: 128, sigma: 40 } as const

let service: TestService
let chain: TestChain
let job: TestJob
let reading: string

beforeAll(async () => {
  service = await testService()
  chain = await testChain(service)
  job = await testJob(service, chain.mill)
  reading = await makeReading()
})
afterAll(() => service.close())

async function makeReading(): Promise<string> {
  const { prisma } = service.database
  const session = newId()
  await prisma.session.create({ data: { id: session, jobId: job.id, engineId: job.engine, conditions: { engine: 'hot' } } })
  const id = newId()
  await prisma.reading.create({ data: { id, sessionId: session, engineId: job.engine, test: 'plug', cylinder: 2, body: { test: 'plug', cylinder: 2, appearance: 'wet-oil' }, state: 'placed', takenAt: WHEN, requestHash: 'x' } })
  return id
}

const put = (picture: Buffer | string, { id = newId(), token = chain.mill.technician.token, of = reading, more = {} }: { id?: string; token?: string; of?: string; more?: object } = {}) =>
  request(service.server).put(`/v1/readings/${of}/photos/${id}`).auth(token, { type: 'bearer' }).send({ takenAt: WHEN, picture: typeof picture === 'string' ? picture : picture.toString('base64'), ...more })
const get = (path: string, token: string) => request(service.server).get(path).auth(token, { type: 'bearer' }).buffer(true).parse((answer, done) => {
  const pieces: Buffer[] = []
  answer.on('data', (piece: Buffer) => pieces.push(piece))
  answer.on('end', () => done(null, Buffer.concat(pieces)))
})
const grey = (width: number, height: number) => sharp({ create: { width, height, channels: 3, background: '#8a7f70' } })
const noise = (width: number, height: number) => sharp({ create: { width, height, channels: 3, background: '#000', noise: NOISE } })
const refusal = (answer: request.Response) => ({ status: answer.status, errors: (answer.body as { errors?: { path: string; expected: string; got?: string }[] }).errors })
const kept = (answer: request.Response) => answer.body as Photo

describe('a photo of a reading', () => {
  test('is kept, listed with its reading, told in the trail and to live screens', async () => {
    const id = newId()
    const answer = await put(await noise(900, 600).jpeg().toBuffer(), { id })
    expect(answer.status).toBe(201)
    expect(kept(answer)).toMatchObject({ id, reading, job: job.id, width: 900, height: 600, takenAt: WHEN, takenBy: { name: chain.mill.technician.name }, withdrawn: null })
    const list = await request(service.server).get(`/v1/jobs/${job.id}/photos`).auth(chain.mill.frontDesk.token, { type: 'bearer' })
    expect((list.body as { items: Photo[] }).items).toContainEqual(kept(answer))
    const trail = await service.database.prisma.trailEntry.findFirst({ where: { engineId: job.engine, kind: 'photo' } })
    expect(JSON.parse(trail!.body)).toMatchObject({ photo: id, reading, sha256: kept(answer).sha256 })
    expect(await service.database.prisma.outboxEvent.count({ where: { kind: 'photo.changed', jobId: job.id } })).toBe(1)
    const small = await get(`/v1/photos/${id}/picture?size=small`, chain.mill.frontDesk.token)
    expect([small.headers['content-type'], small.headers['cache-control'], small.headers['x-content-type-options']]).toEqual(['image/jpeg', 'no-store', 'nosniff'])
    expect(await sharp(small.body as Buffer).metadata()).toMatchObject({ format: 'jpeg', width: 320 })
  })

  test('keeps nothing of the file but the picture: no place, no device, no text, and it stands upright', async () => {
    const secret = 'FlatFourWorkshopCamera'
    const sent = await noise(400, 200).withExif({ IFD0: { Make: secret, ImageDescription: secret }, IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '38/1 43/1 0/1', GPSLongitudeRef: 'W', GPSLongitude: '9/1 8/1 0/1' } }).withXmp(`<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description>${secret}</rdf:Description></rdf:RDF></x:xmpmeta>`).withMetadata({ orientation: 6 }).jpeg().toBuffer()
    // What was sent does hold it, else the test would prove nothing.
    const before = await sharp(sent).metadata()
    expect([before.exif !== undefined, sent.includes('GPS') || sent.includes(secret), before.orientation]).toEqual([true, true, 6])
    const hidden = Buffer.concat([sent, Buffer.from(`<script>${secret}</script>`)])
    const answer = await put(hidden)
    expect(kept(answer)).toMatchObject({ width: 200, height: 400 })
    for (const size of ['full', 'small']) {
      const picture = (await get(`/v1/photos/${kept(answer).id}/picture?size=${size}`, chain.mill.technician.token)).body as Buffer
      const after = await sharp(picture).metadata()
      expect([after.exif, after.xmp, after.iptc, after.icc, after.comments, after.orientation]).toEqual([undefined, undefined, undefined, undefined, undefined, undefined])
      expect(picture.includes('Exif') || picture.includes(secret)).toBe(false)
      expect(markersOf(picture).filter((marker) => (marker >= 0xe1 && marker <= 0xef) || marker === 0xfe)).toEqual([])
    }
  })

  test('of 36 million pixels is made smaller', async () => {
    const answer = await put(await grey(9000, 4000).jpeg().toBuffer())
    expect(kept(answer)).toMatchObject({ width: 2048, height: 910 })
  })

  test('is told by its content: a PNG under any name is taken, text under any name is not', async () => {
    expect((await put(await grey(30, 30).png().withExif({ IFD0: { Make: 'x' } }).toBuffer())).status).toBe(201)
    for (const file of [Buffer.from('not a picture, though named plug.jpg'), Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>'), await grey(30, 30).webp().toBuffer(), Buffer.from('%PDF-1.7')]) {
      expect(refusal(await put(file))).toEqual({ status: 400, errors: [{ path: '/picture', expected: 'a JPEG or PNG picture in base64', got: expect.any(String) as string }] })
    }
  })

  test('that is cut short, damaged, too large to unpack, or no base64 is refused by its field', async () => {
    const whole = await noise(600, 600).jpeg().toBuffer()
    const bad: [string, Buffer | string, RegExp][] = [
      ['cut short', whole.subarray(0, whole.length / 2), /cut short/],
      ['only its first bytes', whole.subarray(0, 3), /cut short/],
      ['a PNG cut short', (await noise(300, 300).png().toBuffer()).subarray(0, 2000), /cut short/],
      ['billions of pixels in a few bytes', pngClaiming(60_000, 60_000), /more|x 60000/],
      ['no base64', 'a plug!', /base64/],
    ]
    for (const [what, picture, got] of bad) {
      const { status, errors } = refusal(await put(picture))
      expect([what, status, errors?.[0]?.path], what).toEqual([what, 400, '/picture'])
      expect(errors?.[0]?.got).toMatch(got)
    }
  })

  test('of 20 MB is refused with the limit, before it is read', async () => {
    const answer = await put('A'.repeat(20_000_000))
    expect([answer.status, (answer.body as { type: string }).type]).toEqual([413, '/docs/problems/too-large'])
  })

  test('sent again is kept once; another body under its id is refused', async () => {
    const [id, picture] = [newId(), await noise(60, 60).jpeg().toBuffer()]
    const [first, second] = await Promise.all([put(picture, { id }), put(picture, { id })])
    expect([first.status, second.status].sort()).toEqual([200, 201])
    const third = await put(picture, { id })
    expect([third.status, third.body]).toEqual([200, first.body])
    expect((await put(await grey(60, 60).jpeg().toBuffer(), { id })).body).toMatchObject({ status: 409, type: '/docs/problems/id-reused' })
    expect(await service.database.prisma.trailEntry.count({ where: { engineId: job.engine, kind: 'photo', body: { contains: id } } })).toBe(1)
  })

  test('is withdrawn with a reason and stays; the record refuses to be changed', async () => {
    const { id } = kept(await put(await grey(40, 40).jpeg().toBuffer()))
    const withdraw = (body: object, token = chain.mill.technician.token) => request(service.server).post(`/v1/photos/${id}/withdrawal`).auth(token, { type: 'bearer' }).send(body)
    expect(refusal(await withdraw({}))).toMatchObject({ status: 400, errors: [{ path: '/reason' }] })
    const answer = await withdraw({ reason: 'of the wrong plug' })
    expect(kept(answer).withdrawn).toMatchObject({ reason: 'of the wrong plug', by: { name: chain.mill.technician.name } })
    expect(kept(await withdraw({ reason: 'another word' })).withdrawn).toEqual(kept(answer).withdrawn)
    expect((await get(`/v1/photos/${id}/picture`, chain.mill.manager.token)).status).toBe(200)
    await expect(service.database.pool.query('DELETE FROM photo')).rejects.toThrow('append only')
    await expect(service.database.pool.query('UPDATE photo_withdrawal SET reason = $1', ['x'])).rejects.toThrow('append only')
  })

  test('does not exist for another garage, by any way', async () => {
    const { id } = kept(await put(await grey(50, 50).jpeg().toBuffer()))
    const theirs = [chain.harbour.technician.token, chain.harbour.manager.token, await onTablet(service, await testTablet(service, chain.harbour), chain.harbour.technician)]
    for (const token of theirs) {
      expect((await get(`/v1/photos/${id}/picture`, token)).status).toBe(404)
      expect((await get(`/v1/jobs/${job.id}/photos`, token)).status).toBe(404)
      expect((await put(await grey(50, 50).jpeg().toBuffer(), { token })).status).toBe(404)
      expect((await request(service.server).post(`/v1/photos/${id}/withdrawal`).auth(token, { type: 'bearer' }).send({ reason: 'x' })).status).toBe(404)
    }
    expect((await put(await grey(50, 50).jpeg().toBuffer(), { token: chain.mill.frontDesk.token })).status).toBe(403)
  })

  test('comes late from a tablet, when the job is over; a live one does not. A reading has twelve at most', async () => {
    const of = await makeReading()
    const picture = await grey(20, 20).jpeg().toBuffer()
    for (let count = 0; count < 12; count++) expect((await put(picture, { of })).status).toBe(201)
    expect((await put(picture, { of })).body).toMatchObject({ status: 409, type: '/docs/problems/conflict' })
    const late = await makeReading()
    await service.database.prisma.job.update({ where: { id: job.id }, data: { cancelledAt: new Date(), cancelReason: 'sold' } })
    expect((await put(picture, { of: late })).body).toMatchObject({ status: 409, type: '/docs/problems/wrong-state' })
    expect(kept(await put(picture, { of: late, more: { offline: true } }))).toMatchObject({ offline: true })
  })

  test('of a reading that is not there, by a person who is not there', async () => {
    expect((await put(await grey(20, 20).jpeg().toBuffer(), { of: newId() })).status).toBe(404)
    expect(refusal(await put(await grey(20, 20).jpeg().toBuffer(), { more: { takenBy: newId(), offline: true } }))).toMatchObject({ status: 400, errors: [{ path: '/takenBy' }] })
  })
})

/** A PNG whose head claims a size, with next to nothing in it (PNG specification, third edition, 11.2.1: IHDR). */
function pngClaiming(width: number, height: number): Buffer {
  const png = Buffer.from('iVBORw0KGgoAAAANSUhEUgAAAAgAAAAICAMAAADz0U65AAAAA1BMVEV3d3dY20ihAAAACXBIWXMAAAPoAAAD6AG1e1JrAAAADElEQVQImWNgoA4AAABIAAF7pRHIAAAAAElFTkSuQmCC', 'base64')
  png.writeUInt32BE(width, 16)
  png.writeUInt32BE(height, 20)
  png.writeUInt32BE(crc32(png.subarray(12, 29)), 29)
  return png
}

/** CRC of PNG chunks (the same specification, annex D). */
function crc32(bytes: Buffer): number {
  let crc = 0xffffffff
  for (const byte of bytes) {
    crc ^= byte
    for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1
  }
  return (crc ^ 0xffffffff) >>> 0
}

/** Markers of a JPEG's segments up to its first scan (ITU-T T.81, B.1.1.3). */
function markersOf(jpeg: Buffer): number[] {
  const markers: number[] = []
  for (let at = 2; jpeg[at] === 0xff && jpeg[at + 1] !== 0xda; at += 2 + jpeg.readUInt16BE(at + 2)) markers.push(jpeg[at + 1]!)
  return markers
}
