import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { AxeBuilder } from '@axe-core/playwright'
import type { Photo } from '@evenbore/contract'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import sharp from 'sharp'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { startBrowser } from '../support/browser.ts'
import { asTechnician, bayScene, gaugeName, openSignedIn, readingsOnServer, stateConditions, tabletBrowser, takeOver, type BayScene } from './parts/bay.ts'
import { soon } from './parts/soon.ts'
import { openDevice, signIn } from './parts/walk.ts'

const folder = mkdtempSync(join(tmpdir(), 'evenbore-photo-'))
let scene: BayScene
let browser: Browser
let context: BrowserContext
let page: Page
const quiet = () => page.locator('header small').last().textContent()
const photos = async () => (await asTechnician<{ items: Photo[] }>(scene, 'GET', `/v1/jobs/${scene.job.id}/photos`)).items
const thumbs = (on = page) => on.locator('.strip img')
const choose = (file: { name: string; mimeType: string; buffer: Buffer }) => page.locator('input[data-photo=file]').setInputFiles(file)
const picture = (width: number, height: number, background: string) => sharp({ create: { width, height, channels: 3, background } })

beforeAll(async () => {
  ;[scene, browser] = await Promise.all([bayScene(), startBrowser()])
  context = await tabletBrowser(browser, scene)
  page = await context.newPage()
  await takeOver(page, scene.base, scene.chain.mill.technician.name)
  await openSignedIn(page, `${scene.base}/jobs/${scene.job.id}/test`)
  await stateConditions(page, await gaugeName(scene))
  await openSignedIn(page, `${scene.base}/jobs/${scene.job.id}/test?test=plug`)
  await page.evaluate(async () => void (await navigator.serviceWorker.ready))
})
afterAll(async () => {
  await browser?.close()
  await scene?.service.close()
  rmSync(folder, { recursive: true })
})

test('a photo of 20 MB that says where it was taken becomes a small one that says nothing, at the reading it belongs to', async () => {
  await page.getByText('A photo belongs to a reading: keep one first.').waitFor()
  await page.getByRole('button', { name: 'wet with oil', exact: true }).click()
  await page.getByText('Photo of: Cylinder 1').waitFor()
  expect(await page.locator('input[data-photo=camera]').getAttribute('capture')).toBe('environment')
  const sent = await sharp({ create: { width: 2900, height: 2400, channels: 3, background: '#000', noise: { type: 'gaussian', mean: 120, sigma: 60 } } })
    .withExif({ IFD0: { Make: 'BoxCamera' }, IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '38/1 43/1 0/1' } }).png({ compressionLevel: 0 }).toBuffer()
  expect([sent.length > 20_000_000, sent.includes('BoxCamera')]).toEqual([true, true])
  // By its path: 20 MB through the browser's protocol take longer than all the rest.
  const path = join(folder, 'plug.png')
  writeFileSync(path, sent)
  await page.locator('input[data-photo=file]').setInputFiles(path)
  await thumbs().waitFor()
  expect(await thumbs().getAttribute('alt')).toMatch(/^Cylinder 1, .*wet with oil, photo 1$/)
  await soon(quiet).toBe('all sent')
  const [kept] = await photos()
  expect(kept).toMatchObject({ width: 1600, height: 1324, reading: (await readingsOnServer(scene))[0]!.id })
  const file = await scene.service.app.files.read(kept!.sha256)
  expect([file!.includes('BoxCamera'), file!.includes('Exif'), file!.length < 2_000_000]).toEqual([false, false, true])
})

test('what is no picture is refused in words, whatever its name; a picture is taken, whatever its name', async () => {
  await choose({ name: 'plug.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('text that is named like a picture') })
  await page.getByRole('alert').getByText('This is no picture that can be read here.').waitFor()
  const half = await picture(900, 900, '#345').png().toBuffer()
  await choose({ name: 'half.png', mimeType: 'image/png', buffer: half.subarray(0, 40) })
  await page.getByRole('alert').getByText('This is no picture that can be read here.').waitFor()
  await choose({ name: 'named.jpg', mimeType: 'image/jpeg', buffer: await picture(300, 200, '#a65').png().toBuffer() })
  await soon(() => thumbs().count()).toBe(2)
  await soon(async () => (await photos()).length).toBe(2)
})

test('without network a photo waits behind its reading, outlives the tab, and arrives once although its answer gets lost', async () => {
  await context.setOffline(true)
  await page.getByRole('button', { name: 'dry, black', exact: true }).click()
  await page.getByLabel('Photo of').waitFor()
  await choose({ name: 'sooty.jpg', mimeType: 'image/jpeg', buffer: await picture(640, 480, '#222').jpeg().toBuffer() })
  await soon(() => thumbs().count()).toBe(3)
  await soon(quiet).toContain('2 entries kept here')
  await page.close()
  page = await context.newPage()
  await page.goto(`${scene.base}/jobs/${scene.job.id}/test?test=plug`)
  await page.getByText('not sent yet').waitFor()
  let lost = 0
  await context.route('**/photos/*', async (route) => {
    if (route.request().method() !== 'PUT' || lost > 0) return route.continue()
    lost += 1
    await route.fetch() // it arrives, and the answer does not
    await route.abort('connectionreset')
  })
  await context.setOffline(false)
  await soon(quiet).toBe('all sent')
  await context.unroute('**/photos/*')
  expect(lost).toBe(1)
  const [all, readings] = [await photos(), await readingsOnServer(scene)]
  expect(all).toHaveLength(3)
  expect(all[2]).toMatchObject({ offline: true, width: 640, takenBy: { id: scene.chain.mill.technician.id } })
  expect(readings.find(({ id }) => id === all[2]!.reading)?.reading).toMatchObject({ appearance: 'dry-black' })
})

test('enlarged by keyboard, without a fault that axe finds, and withdrawn with a reason', async () => {
  await openSignedIn(page, `${scene.base}/jobs/${scene.job.id}/test?test=plug`)
  await soon(() => thumbs().count()).toBe(3)
  await page.getByRole('button', { name: /^Enlarge: Cylinder 1, .*photo 1$/ }).focus()
  await page.keyboard.press('Enter')
  const dialog = page.locator('dialog[open]')
  await dialog.locator('img').waitFor()
  await page.keyboard.press('ArrowRight')
  await dialog.getByRole('heading', { name: /photo 2$/ }).waitFor()
  await dialog.locator('img').waitFor()
  const { violations } = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']).analyze()
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([])
  await dialog.getByText('Withdraw this photo').first().click()
  await dialog.getByLabel('Reason').fill('shows the wrong plug')
  await dialog.getByRole('button', { name: 'Withdraw this photo' }).click()
  await page.getByText('Photo withdrawn: “shows the wrong plug”').waitFor()
  await soon(async () => (await photos()).filter(({ withdrawn }) => withdrawn?.reason === 'shows the wrong plug').length).toBe(1)
})

test('the page of the job shows them at their readings; another garage sees none', async () => {
  const errors: string[] = []
  const desk = await openDevice(browser, scene.base, 'desk', errors)
  await signIn(desk, scene.chain.mill.frontDesk)
  await desk.goto(`/jobs/${scene.job.id}`)
  await thumbs(desk).nth(1).waitFor()
  await desk.getByRole('button', { name: /^Enlarge: Cylinder \d+: dry, black/ }).click()
  await desk.locator('dialog[open] img').waitFor()
  expect(await desk.locator('dialog[open]').getByText('Withdraw this photo').count()).toBe(0)
  const answer = await fetch(`${scene.base}/v1/photos/${(await photos())[0]!.id}/picture`, { headers: { authorization: `Bearer ${scene.chain.harbour.technician.token}` } })
  expect(answer.status).toBe(404)

  // The sheet that records them is saved as a file.
  await desk.goto(`/jobs/${scene.job.id}/print/test-record`)
  const [download] = await Promise.all([desk.waitForEvent('download'), desk.getByRole('button', { name: 'Save as PDF' }).click()])
  expect([download.suggestedFilename(), readFileSync(await download.path()).subarray(0, 5).toString()]).toEqual([expect.stringMatching(/^test-record-T-\d+\.pdf$/), '%PDF-'])
  expect(errors).toEqual([])
  await desk.context().close()
})
