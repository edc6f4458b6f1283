import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { newId, testApp, testChain, testService, type TestChain, type TestService } from '@evenbore/tests/support'
import request from 'supertest'
import { extractText, getDocumentProxy } from 'unpdf'
import { de } from '@evenbore/words/de.ts'
import { es } from '@evenbore/words/es.ts'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { jobAt, signInCrew } from '../../../../../tests/e2e/parts/stages.ts'
import { preferredLanguage } from './reader.ts'

const NAME_OF_300 = 'Llanfairpwllgwyngyll'.repeat(15)
const STRANGE = 'Zoë 🚗👩🏽‍🔧 שלום עולם محمد 你好 \u202Ereversed ﷽'

let service: TestService
let chain: TestChain
let ready: string
let strange: string
let testing: string

beforeAll(async () => {
  service = await testService()
  chain = await testChain(service)
  const crew = await signInCrew(await service.listen(), chain)
  const { data } = await crew.owner.POST('/v1/garages/{garage}/gauges', { params: { path: { garage: chain.mill.id } }, body: { kind: 'compression', name: 'Gauge 4', specification: { span: { value: 300, unit: 'psi' }, accuracyClass: 1.6, resolution: { value: 1, unit: 'psi' } } } })
  const job = (stage: 'ready' | 'testing', customer: string, plate: string, vehicle: string) => jobAt(stage, crew, chain.mill.id, data!.id, { plate, vehicle, customer, complaint: 'Down on power, runs on three when cold' })
  ready = await job('ready', 'Rosa Quill', 'WT 11', 'white coupé')
  strange = await job('ready', NAME_OF_300, 'QX 1', STRANGE)
  testing = await job('testing', 'Milo Ondrej', 'FX 2', 'grey estate')
}, 120_000)
afterAll(() => service.close())

/** `SHEETS=folder` keeps what was made, to be looked at. */
async function sheet(job: string, kind: string, { token = chain.mill.manager.token, query = '', headers = {} }: { token?: string; query?: string; headers?: Record<string, string> } = {}) {
  const answer = await request(service.server).get(`/v1/jobs/${job}/${kind}.pdf${query}`).set({ authorization: `Bearer ${token}`, ...headers }).buffer(true).parse((message, done) => {
    const pieces: Buffer[] = []
    message.on('data', (piece: Buffer) => pieces.push(piece))
    message.on('end', () => done(null, Buffer.concat(pieces)))
  })
  if (answer.status !== 200) return { answer, pages: 0, text: '' }
  const bytes = answer.body as Buffer
  if (process.env['SHEETS']) {
    mkdirSync(process.env['SHEETS'], { recursive: true })
    writeFileSync(join(process.env['SHEETS'], `${kind}${query.replaceAll(/\W/g, '-')}-${[ready, strange, testing].indexOf(job)}.pdf`), bytes)
  }
  const { totalPages, text } = await extractText(await getDocumentProxy(new Uint8Array(bytes)), { mergePages: true })
  return { answer, pages: totalPages, text: text.replaceAll(/\s+/g, ' ') }
}

describe('a sheet', () => {
  test('of the test record says who, what was read, under which conditions, and what it means, on one page', async () => {
    const { answer, pages, text } = await sheet(testing, 'test-record')
    expect([pages, answer.headers['content-type'], answer.headers['content-language'], answer.headers['cache-control']]).toEqual([1, 'application/pdf', 'en', 'no-store'])
    expect(answer.headers['content-disposition']).toMatch(/^inline; filename="test-record-M-\d+\.pdf"$/)
    for (const part of ['Mill Lane', 'Test record', 'FX 2, grey estate', 'Milo Ondrej', 'Down on power', 'Cylinder 3: 129 psi, 10 strokes', 'hot, throttle open, all plugs out, 10 strokes, Gauge 4 (class 1.6)', 'Cylinder 3 stands 17 percent below cylinder 2.', 'Tess of Mill Lane', 'Reckoned by model', 'the technician decides', 'Page 1 of 1']) expect(text).toContain(part)
  })

  test('of the quote holds lines, tax, total and the customer’s word, on one page', async () => {
    const { pages, text } = await sheet(ready, 'quote')
    expect(pages).toBe(1)
    for (const part of ['Head off and on, valve ground in', '4.5 h', '€360.00', 'Gasket set', '€118.40', 'Tax, 20 percent', '€574.08', 'Rosa Quill permitted €574.08 by phone 0100 204 204']) expect(text).toContain(part)
    // What was said to the manager is not the customer's.
    expect(text).not.toContain('Seat of 3 looks burnt')
  })

  test('of the release holds finding, comparison and promise, on one page', async () => {
    const { pages, text } = await sheet(ready, 'release')
    expect(pages).toBe(1)
    for (const part of ['exhaust valve leaks, cylinder 3: Seat of the exhaust valve pitted', 'Cylinder 3 129 psi 151 psi', 'release retest', 'passed, by Tess of Mill Lane']) expect(text).toContain(part)
  })

  test.each([['de', '574,08 €'], ['es', '574,08 €']] as const)('comes in %s, asked for either way', async (language, total) => {
    for (const asked of [{ query: `?language=${language}` }, { headers: { 'accept-language': `fr;q=0.9, ${language}-XX;q=0.8, en;q=0.1` } }]) {
      const { answer, text } = await sheet(ready, 'quote', asked)
      expect([answer.headers['content-language'], text.includes({ de, es }[language].job.sheets.quote), text.includes(total)]).toEqual([language, true, true])
    }
  })

  test('is in the unit of whoever reads it, with the digits that were entered', async () => {
    await service.database.prisma.person.update({ where: { id: chain.mill.frontDesk.id }, data: { pressureUnit: 'bar', locale: 'de' } })
    const { text } = await sheet(testing, 'test-record', { token: chain.mill.frontDesk.token })
    // 129 psi = 8.894 bar (NIST SP 811 (2008), appendix B.8: 1 psi = 6.894 757 kPa).
    expect(text).toContain('Zylinder 3: 8,89 bar, 10 Hübe')
    // and the reasons, which the model itself gives in English
    const reasons = text.slice(text.indexOf(de.diagnosis.because))
    expect(reasons).toMatch(/spricht/)
    expect(text).not.toMatch(/ speaks | compared with its sisters/)
  })

  test('bears names of 300 letters, emoji, and scripts from right to left', async () => {
    for (const kind of ['test-record', 'quote', 'release']) {
      const { pages, text } = await sheet(strange, kind)
      expect([kind, pages]).toEqual([kind, 1])
      expect(text).toContain('Zoë')
    }
  })

  test('of many readings is set tighter, so that it stays one', async () => {
    const { prisma } = service.database
    const session = await prisma.session.findFirstOrThrow({ where: { jobId: testing } })
    const looks = Array.from({ length: 22 }, (_, at) => ({ id: newId(), sessionId: session.id, engineId: session.engineId, test: 'plug', cylinder: (at % 4) + 1, body: { test: 'plug', cylinder: (at % 4) + 1, appearance: 'tan' }, state: 'placed', takenAt: new Date(), requestHash: 'x' }))
    await prisma.reading.createMany({ data: looks })
    const { pages, text } = await sheet(testing, 'test-record')
    expect([pages, text.match(/grey to tan/g)?.length]).toEqual([1, 22])
  })

  test('shows nobody more than the screens do', async () => {
    const app = await testApp(service, ['jobs:read', 'engines:read'])
    for (const kind of ['test-record', 'quote', 'release']) {
      expect((await sheet(ready, kind, { token: chain.harbour.manager.token })).answer.status).toBe(404)
      expect((await sheet(ready, kind, { token: app.token })).answer.status).toBe(403)
    }
    const unsent = await sheet(testing, 'quote')
    expect([unsent.answer.status, JSON.parse((unsent.answer.body as Buffer).toString())]).toMatchObject([409, { type: '/docs/problems/wrong-state' }])
    const wrong = await sheet(ready, 'quote', { query: '?language=xx' })
    expect([wrong.answer.status, JSON.parse((wrong.answer.body as Buffer).toString())]).toMatchObject([400, { errors: [{ path: '/query/language' }] }])
  })
})

test('the language that is asked for first among ours', () => {
  expect(['de-AT,de;q=0.9', 'fr, es;q=0.5, en;q=0.4', '', 'fr', 'en;q=0, es;q=0.1', ';;,q=,*', undefined].map(preferredLanguage)).toEqual(['de', 'es', undefined, undefined, 'es', undefined, undefined])
})
