import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { asTechnician, askedFor, atTheBench, digits, halfEntered, keep, openSignedIn, quietLine, readingsOnServer, type BayScene } from './parts/bay.ts'
import { soon } from './parts/soon.ts'

let scene: BayScene
let browser: Browser
let context: BrowserContext
let page: Page
const testPage = () => `${scene.base}/jobs/${scene.job.id}/test`
const quiet = () => quietLine(page)

beforeAll(async () => {
  ;({ scene, browser, context, page } = await atTheBench())
  // the worker has the whole app before the network goes
  await page.evaluate(async () => void (await navigator.serviceWorker.ready))
})
afterAll(async () => {
  await browser?.close()
  await scene?.service.close()
})

const values: Record<number, string> = { 1: '155', 2: '160', 3: '129', 4: '145' }
async function read(): Promise<void> {
  const cylinder = await askedFor(page)
  await digits(page, values[cylinder]!)
  await keep(page).click()
}

test('with the network cut and the tab killed in mid-entry, everything arrives once and in order, with both clocks', async () => {
  await context.setOffline(true)
  const cutAt = Date.now()
  await read()
  await soon(quiet).toContain('no network, 1 entry kept here')
  await soon(() => askedFor(page)).toBe(3)
  await read()
  await soon(() => askedFor(page)).toBe(4)
  await digits(page, '14')
  await soon(() => halfEntered(page)).toContain('14')
  await page.close()

  page = await context.newPage()
  await page.goto(testPage()) // no network: the app opens, the job opens, the digits are there
  await soon(() => page.locator('.entry input').inputValue()).toBe('14')
  await digits(page, '5')
  await keep(page).click()
  await soon(() => askedFor(page)).toBe(2)
  await read()
  await page.waitForURL('**/verdict')
  await page.locator('.verdict b').waitFor()
  // The verdict on the reading before may still stand there.
  await soon(() => page.locator('.verdict').textContent()).toContain('Cylinder 3 stands 19 percent below cylinder 2.')
  await page.getByRole('button', { name: 'Do this' }).click()
  await soon(quiet).toContain('5 entries kept here')
  expect(await readingsOnServer(scene)).toEqual([])

  await context.setOffline(false)
  await soon(quiet).toBe('all sent')
  const arrived = await readingsOnServer(scene)
  expect(arrived.map(({ reading }) => reading && 'cylinder' in reading && reading.cylinder)).toEqual([1, 3, 4, 2])
  for (const reading of arrived) {
    expect(reading).toMatchObject({ offline: true, state: 'placed', takenBy: { id: scene.chain.mill.technician.id } })
    expect(Date.parse(reading.takenAt)).toBeGreaterThanOrEqual(cutAt - 1000)
    expect(Date.parse(reading.takenAt)).toBeLessThan(Date.parse(reading.receivedAt))
  }
  const decisions = await asTechnician<{ items: unknown[] }>(scene, 'GET', `/v1/jobs/${scene.job.id}/suggestions`)
  expect(decisions.items).toHaveLength(1)
})

test('a reading whose answer got lost is sent again and counts once', async () => {
  await openSignedIn(page, testPage())
  await page.getByRole('button', { name: /^Cylinder 1/ }).click()
  let lost = 0
  await page.route('**/readings/*', async (route) => {
    if (route.request().method() !== 'PUT' || lost > 0) return route.continue()
    lost += 1
    await route.fetch() // it arrives, and the answer does not
    await route.abort('connectionreset')
  })
  const before = (await readingsOnServer(scene)).length
  await digits(page, '154')
  await keep(page).click()
  await soon(() => lost).toBe(1)
  await soon(quiet).toBe('all sent')
  await page.unroute('**/readings/*')
  expect((await readingsOnServer(scene)).length).toBe(before + 1)
})

test('a session closed meanwhile: the late reading is kept by the server, shown, and placed by the technician', async () => {
  await openSignedIn(page, testPage())
  await page.locator('.entry').waitFor()
  await context.setOffline(true)
  await page.getByRole('button', { name: /^Cylinder 4/ }).click()
  await digits(page, '146')
  await keep(page).click()
  await soon(quiet).toContain('1 entry kept here')
  const { items } = await asTechnician<{ items: { id: string; conditions: object }[] }>(scene, 'GET', `/v1/jobs/${scene.job.id}/sessions`)
  await asTechnician(scene, 'POST', `/v1/sessions/${items[0]!.id}/close`, {})
  await asTechnician(scene, 'POST', `/v1/jobs/${scene.job.id}/sessions`, { conditions: items[0]!.conditions })
  await context.setOffline(false)
  await soon(quiet).toContain('1 entry needs your word')

  await page.goto(`${scene.base}/bay/waiting`)
  await page.getByText('It arrived late').waitFor()
  await page.getByLabel('Into the session of').selectOption({ index: 1 })
  await page.getByLabel('Reason').fill('read before the session was closed')
  await page.getByRole('button', { name: 'Place it' }).click()
  await soon(quiet).toBe('all sent')
  const placed = (await readingsOnServer(scene)).find(({ reason }) => reason === 'read before the session was closed')
  expect(placed).toMatchObject({ state: 'placed', current: true, reading: { cylinder: 4, pressure: { value: 146, unit: 'psi' } } })
})

test('without network somebody of the last day takes over by PIN, a wrong PIN does not', async () => {
  // handed over while the server is still asked who is here: its late answer must not bring that person back
  const held = new Promise<{ answer: () => Promise<void> }>((hold) => {
    void page.route('**/v1/me', async (route) => {
      const response = await route.fetch()
      hold({ answer: () => route.fulfill({ response }) })
    }, { times: 1 })
  })
  // a server that is busy just then is asked again: the list of the last day must not stay
  const busy = page.waitForResponse((response) => response.url().endsWith('/v1/tablets/people') && response.status() === 503)
  await page.route('**/v1/tablets/people', (route) => route.fulfill({ status: 503 }), { times: 1 })
  await page.goto(`${scene.base}/bay`)
  await page.getByRole('button', { name: 'Hand over the tablet' }).click()
  await page.getByRole('heading', { name: 'Who is working here?' }).waitFor()
  const { answer } = await held
  // it stands until the list is asked for again
  const said = page.getByText('only those can take over who signed in here').waitFor()
  const late = page.waitForResponse('**/v1/me')
  await answer()
  await (await late).finished()
  await busy
  await said
  await page.getByRole('button', { name: scene.chain.mill.manager.name }).waitFor()
  expect(await page.getByText('only those can take over who signed in here').count()).toBe(0)
  expect(await page.getByRole('button', { name: 'Hand over the tablet' }).count()).toBe(0)
  await context.setOffline(true)
  await page.reload()
  const name = scene.chain.mill.technician.name
  await page.getByRole('button', { name }).click()
  expect(await page.getByRole('button', { name: scene.chain.mill.manager.name }).count()).toBe(0)
  await page.getByLabel(`PIN of ${name}`).fill('9999')
  await page.getByRole('button', { name: 'Take over' }).click()
  await page.getByText('This PIN does not fit.').waitFor()
  await page.getByLabel(`PIN of ${name}`).fill('48213')
  await page.getByRole('button', { name: 'Take over' }).click()
  await page.getByRole('button', { name: 'Hand over the tablet' }).waitFor()
  await context.setOffline(false)
})
