import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { startBrowser } from '../support/browser.ts'
import { TEST_PASSWORD } from '../support/index.ts'
import { askedFor, asTechnician, bayScene, digits, gaugeName, keep, openSignedIn, readingsOnServer, stateConditions, tabletBrowser, takeOver, type BayScene } from './parts/bay.ts'
import { soon } from './parts/soon.ts'

/** What hurried, gloved and distracted people do to a tablet, and what networks and clocks do: each as a careful person would take it. */
let scene: BayScene
let browser: Browser
let context: BrowserContext
let page: Page
const testPage = (test = '') => `${scene.base}/jobs/${scene.job.id}/test${test && `?test=${test}`}`
const quiet = (of: Page = page) => of.locator('header small').last().textContent()
const line = (of: Page = page) => of.locator('.entry input')

beforeAll(async () => {
  ;[scene, browser] = await Promise.all([bayScene(), startBrowser()])
  context = await tabletBrowser(browser, scene)
  page = await context.newPage()
  await takeOver(page, scene.base, scene.chain.mill.technician.name)
})
afterAll(async () => {
  await browser?.close()
  await scene?.service.close()
})

test('conditions that cannot be are said at once, not when the server gets them', async () => {
  await openSignedIn(page, testPage())
  await page.locator('summary').click()
  const volts = page.getByLabel('Battery while cranking, volts')
  for (const [typed, said] of [['124', 'From 0 to 60'], ['eleven', 'A number is expected'], ['11,4 🔋', 'A number is expected']] as const) {
    await volts.fill(typed)
    await page.getByText(said).waitFor()
    expect(await page.getByRole('button', { name: 'So it is, begin' }).isDisabled()).toBe(true)
  }
  await volts.fill('11,4 V')
  await page.getByLabel('Height above the sea, m').fill('-3')
  await stateConditions(page, await gaugeName(scene))
  await soon(async () => (await sessions())[0]?.conditions).toMatchObject({ batteryVolts: 11.4, altitudeM: -3 })
})

test('the back button in mid-entry costs no digit', async () => {
  await page.goto(`${scene.base}/bay`)
  await page.getByRole('link', { name: 'Dry compression' }).click()
  await digits(page, '15')
  await page.goBack()
  await page.waitForURL('**/bay')
  await page.getByRole('link', { name: 'Dry compression' }).click()
  await soon(() => line().inputValue()).toBe('15')
  await digits(page, '5')
  await keep(page).click()
  await soon(async () => (await readingsOnServer(scene)).length).toBe(1)
})

test('two tabs on one job: each sees what the other kept, and nothing is sent twice', async () => {
  const other = await context.newPage()
  await other.goto(testPage())
  await line(other).waitFor()
  expect(await askedFor(other)).toBe(3)
  await digits(page, '129')
  await keep(page).click()
  await soon(() => other.getByRole('button', { name: /^Cylinder 3.*129/ }).count()).toBe(1)
  await other.getByRole('button', { name: /^Cylinder 4/ }).click()
  await line(other).fill('145')
  await keep(other).click()
  await soon(() => page.getByRole('button', { name: /^Cylinder 4.*145/ }).count()).toBe(1)
  await soon(async () => (await readingsOnServer(scene)).map(({ reading }) => reading && 'cylinder' in reading && reading.cylinder)).toEqual([1, 3, 4])
  // closed before it has noted the answer, it leaves its reading to be sent again by the first tab, in the next test
  await soon(() => quiet(other)).toBe('all sent')
  await other.close()
})

test('a request that a proxy sends twice counts once', async () => {
  let twice = 0
  await page.route('**/readings/*', async (route) => {
    if (route.request().method() !== 'PUT') return route.continue()
    twice += 1
    const [first] = await Promise.all([route.fetch(), route.fetch()])
    await route.fulfill({ response: first })
  })
  await page.getByRole('button', { name: /^Cylinder 2/ }).click()
  await line().fill('160')
  await keep(page).click()
  await soon(() => twice).toBe(1)
  await soon(() => quiet()).toBe('all sent')
  await page.unroute('**/readings/*')
  expect(await readingsOnServer(scene)).toHaveLength(4)
})

test('the network goes and comes at every step of other tests; all of it arrives, in order', async () => {
  await page.evaluate(async () => void (await navigator.serviceWorker.ready))
  await openSignedIn(page, `${testPage('leakage')}&cylinder=3&oil=yes&slack=2`)
  await page.getByRole('button', { name: 'Percent' }).or(page.getByText('Percent', { exact: true })).first().click()
  await context.setOffline(true)
  const oil = page.getByLabel('With oil in the cylinder'), slack = page.getByLabel(/Rockers of \d slack/).first()
  await page.getByText('Cylinder 3: Lost, percent').waitFor()
  await soon(() => oil.isChecked()).toBe(true)
  await page.getByText('Petrol engines only').waitFor()
  // a neighbour's rockers, as suggested; this cylinder's own are another box
  const neighbours = page.getByLabel('Rockers of 2 slack')
  await soon(async () => [await neighbours.isChecked(), await slack.isChecked()]).toEqual([true, false])
  await neighbours.uncheck()
  await slack.check()
  await line().fill('25 %')
  await keep(page).click()
  await soon(() => quiet()).toContain('1 entry kept here')
  // the next cylinder is tested as usual again
  await soon(async () => [await oil.isChecked(), await slack.isChecked()]).toEqual([false, false])
  await context.setOffline(false)
  await openSignedIn(page, testPage('plug'))
  await context.setOffline(true)
  await page.getByRole('button', { name: 'wet with oil' }).click()
  await soon(() => quiet()).toContain('kept here')
  await context.setOffline(false)
  await openSignedIn(page, testPage('cranking-current'))
  await context.setOffline(true)
  await page.getByLabel('Or paste the lines').fill(trace())
  await page.getByRole('heading', { name: 'Compression humps found' }).waitFor()
  await page.getByText('Cylinder 3', { exact: true }).waitFor({ state: 'detached' }) // nobody is named without the time of cylinder 1
  await page.getByLabel('Cylinder 1 compresses at, s').fill('0,137')
  await soon(async () => (await page.getByRole('listitem').allTextContents()).filter((text) => text.includes('weak')).map((text) => /Cylinder \d/.exec(text)?.[0])).toEqual(['Cylinder 3'])
  await page.getByRole('button', { name: 'Keep it' }).click()
  await soon(() => quiet()).toContain('kept here')
  await context.setOffline(false)
  await soon(() => quiet()).toBe('all sent')
  const taken = (await readingsOnServer(scene)).slice(4).map(({ reading }) => reading)
  expect(taken.map((reading) => reading?.test)).toEqual(['leakage', 'plug', 'cranking-current'])
  expect(taken[0]).toMatchObject({ cylinder: 3, wet: true, rockersSlack: [3] })
})

test('a file that is no trace is refused with what is wrong', async () => {
  await page.goto(testPage('cranking-current'))
  const file = page.locator('input[type=file]')
  await file.setInputFiles({ name: 'trace.csv', mimeType: 'text/csv', buffer: Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 1, 2]) })
  await page.getByText('This file is no text.').waitFor()
  await file.setInputFiles({ name: 'trace.csv', mimeType: 'text/csv', buffer: Buffer.from('s;A\n0;100\n0,001;oops\n') })
  await page.getByText('Line 3 is no time and current').waitFor()
  expect(await page.getByRole('button', { name: 'Keep it' }).isDisabled()).toBe(true)
})

test('a clock wrong by a day is said, and both times are kept', async () => {
  const wrong = await tabletBrowser(browser, scene)
  await wrong.addInitScript(() => {
    const day = 86_400_000
    const Right = Date
    // as a device whose clock is a day ahead would have it
    class Ahead extends Right {
      constructor(...given: unknown[]) {
        if (given.length === 0) super(Right.now() + day)
        else super(...(given as [number]))
      }
      static override now() {
        return Right.now() + day
      }
    }
    globalThis.Date = Ahead as DateConstructor
  })
  const tablet = await wrong.newPage()
  await takeOver(tablet, scene.base, scene.chain.mill.technician.name)
  await tablet.goto(testPage())
  await tablet.getByText(/clock is 1[34]\d\d minutes off/).waitFor()
  await tablet.getByRole('button', { name: /^Cylinder 1/ }).click()
  await line(tablet).fill('154')
  await keep(tablet).click()
  // the quiet line may still say so of what came before
  const sent = async () => (await readingsOnServer(scene)).find(({ reading }) => reading?.test === 'compression' && reading.pressure.value === 154)
  await soon(sent).toBeDefined()
  await soon(() => quiet(tablet)).toBe('all sent')
  const last = (await sent())!
  expect(Date.parse(last.takenAt) - Date.parse(last.receivedAt)).toBeGreaterThan(23 * 3_600_000)
  await wrong.close()
})

test('over a line of 3G the next cylinder is asked for at once, and the value arrives', async () => {
  await openSignedIn(page, testPage())
  await line().waitFor()
  const line3G = await context.newCDPSession(page)
  await line3G.send('Network.enable')
  await line3G.send('Network.emulateNetworkConditions', { offline: false, latency: 400, downloadThroughput: 400e3 / 8, uploadThroughput: 400e3 / 8 })
  const before = (await readingsOnServer(scene)).length
  await page.getByRole('button', { name: /^Cylinder 3/ }).click()
  await line().fill('131')
  await keep(page).click()
  await soon(async () => (await readingsOnServer(scene)).length).toBe(before + 1)
  await line3G.detach()
})

test('names from right to left, of 300 characters or with pictures neither break the floor nor each other', async () => {
  const long = `${'Bartholomew Featherstonehaugh '.repeat(10).trim().slice(0, 299)}x`
  const desk = scene.chain.mill.frontDesk
  const bays = scene.chain.mill.bays
  const office = await browser.newContext({ baseURL: scene.base, viewport: { width: 820, height: 1180 } })
  const sheet = await office.newPage()
  await sheet.goto('/sign-in')
  await sheet.getByLabel('E-mail').fill(desk.email)
  await sheet.getByLabel('Password').fill(TEST_PASSWORD)
  await sheet.getByRole('button', { name: 'Sign in' }).click()
  await sheet.getByRole('heading', { name: 'The floor' }).waitFor()
  for (const [i, customer] of [long, 'شركة النقل السريع', 'Ana 🚗🔧 Castel'].entries()) {
    const headers = { authorization: `Bearer ${desk.token}`, 'content-type': 'application/json' }
    const body = { customer: { name: customer }, vehicle: { plate: `LN ${i}`, description: i === 0 ? long : customer }, engine: { description: customer.slice(0, 200), ownValues: { fuel: 'petrol', layout: 'inline', cylinders: 4 } }, complaint: `${customer}: runs on three`, bay: bays[i + 1] ?? null }
    const booked = await fetch(`${scene.base}/v1/garages/${scene.chain.mill.id}/jobs`, { method: 'POST', headers, body: JSON.stringify(body) })
    expect(booked.status).toBe(201)
    for (const path of ['/', `/jobs/${((await booked.json()) as { id: string }).id}`, '/customers', '/vehicles', '/engines']) {
      await sheet.goto(path)
      await sheet.getByText(path === '/vehicles' ? `LN ${i}` : customer.slice(0, 20)).filter({ visible: true }).first().waitFor()
      expect(await sheet.evaluate(() => document.documentElement.scrollWidth - innerWidth), `${path} with ${customer.slice(0, 12)}`).toBeLessThanOrEqual(0)
    }
  }
  await office.close()
})

const sessions = async () => (await asTechnician<{ items: { conditions: object }[] }>(scene, 'GET', `/v1/jobs/${scene.job.id}/sessions`)).items

/** A starter's current on a four of 1-3-4-2 at 200 rpm, cylinder 3 weak; cylinder 1 compresses at .137 s. Raised cosines on a level. */
function trace(): string {
  const heights = [1, 0.5, 1, 1]
  return Array.from({ length: 2000 }, (_, i) => {
    const t = i / 500
    const hump = (200 / 30) * (t - 0.137)
    const current = [0, 1].reduce((sum, next) => {
      const k = Math.floor(hump) + next
      const away = (hump - k) / 0.5
      return Math.abs(away) < 1 ? sum + 30 * heights[((k % 4) + 4) % 4]! * (1 + Math.cos(Math.PI * away)) : sum
    }, 120)
    return `${t.toFixed(3)};${current.toFixed(2)}`.replaceAll('.', ',')
  }).join('\n')
}
