import type { Browser, Page } from 'playwright-core'
import sharp from 'sharp'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { startBrowser } from '../support/browser.ts'
import { testChain, testService, type TestChain, type TestService } from '../support/index.ts'
import { jobAt, need, signInCrew, type Crew } from './parts/stages.ts'
import { soon } from './parts/soon.ts'
import { demandBuild, openDevice, signIn } from './parts/walk.ts'

/** What the desk corrects and adds between visits: bookings, engines and where they sit, vehicles. */
let service: TestService
let chain: TestChain
let crew: Crew
let browser: Browser
let page: Page
let job: string
let engine: string
const errors: string[] = []
const ask = (id: string) => need(crew.frontDesk.GET('/v1/engines/{engine}', { params: { path: { engine: id } } }))
const read = () => need(crew.frontDesk.GET('/v1/jobs/{job}', { params: { path: { job } } }))

beforeAll(async () => {
  demandBuild()
  service = await testService()
  chain = await testChain(service)
  const baseUrl = await service.listen()
  crew = await signInCrew(baseUrl, chain)
  const garage = { params: { path: { garage: chain.mill.id } } }
  const gauge = await need(crew.owner.POST('/v1/garages/{garage}/gauges', { ...garage, body: { kind: 'compression', name: 'Gauge 4', specification: { span: { value: 300, unit: 'psi' }, accuracyClass: 1.6 } } }))
  job = await jobAt('booked', crew, chain.mill.id, gauge.id, { plate: 'FX 204 B', vehicle: 'grey estate', customer: 'Milo Ondrej', complaint: 'Down on power' })
  engine = (await read()).engine
  await need(crew.frontDesk.POST('/v1/engines', { body: { description: '1.6 litre, a second card', stampedNumber: 'LR 204', ownValues: { fuel: 'petrol', layout: 'inline', cylinders: 4 } } }))
  browser = await startBrowser()
  page = await openDevice(browser, baseUrl, 'desk', errors)
  await signIn(page, chain.mill.frontDesk)
})
afterAll(async () => {
  await browser?.close()
  await service?.close()
})

test('a booking is corrected: what was typed survives a reload, and nobody else’s change is written over', async () => {
  await page.goto(`/jobs/${job}`)
  const dialog = page.getByRole('dialog', { name: 'Correct the booking' })
  const open = () => page.getByRole('button', { name: 'Correct the booking' }).click()
  await open()
  await dialog.getByLabel('Complaint, in the customer’s words').fill('Down on power, runs on three')
  await dialog.getByLabel('Odometer, km').fill('84.100 km')
  await dialog.getByText('A number is expected').waitFor()
  await page.reload()
  await open()
  expect(await dialog.getByLabel('Complaint, in the customer’s words').inputValue()).toBe('Down on power, runs on three')
  await dialog.getByLabel('Odometer, km').fill('84200')
  const now = await read()
  await need(crew.manager.PATCH('/v1/jobs/{job}', { params: { path: { job } }, headers: { 'if-match': `"${now.version}"` }, body: { priorWork: { headTorqued: true } } }))
  // a live event may have brought the change before the press, or the press is refused once: both end the same way
  await soon(async () => {
    // the press before may just close it
    if (await dialog.isVisible()) await dialog.getByRole('button', { name: 'Save' }).click({ timeout: 1_000 }).catch(() => undefined)
    return dialog.isVisible()
  }).toBe(false)
  expect(await read()).toMatchObject({ complaint: 'Down on power, runs on three', odometerKm: 84_200, priorWork: { headTorqued: true } })
})

test('an engine is taken out, fitted into another vehicle of the customer, and corrected', async () => {
  const { customerRecord } = await read()
  await page.goto(`/customers/${customerRecord!.id}`)
  await page.getByText('Add a vehicle…').click()
  await page.getByLabel('Registration plate').fill('HN 31')
  await page.getByLabel('What it is, in a few words').fill('مرسيليا 🚗 saloon')
  await page.getByRole('button', { name: 'Keep' }).click()
  await page.waitForURL('**/vehicles/*')

  await page.goto(`/engines/${engine}`)
  await page.getByText('Take it out…').click()
  await page.getByRole('button', { name: 'Take it out' }).click()
  await soon(async () => (await ask(engine)).fittedIn).toBeNull()
  await page.getByText('Fit it into a vehicle…').click()
  await page.getByRole('button', { name: 'Fit it', exact: true }).click()
  await page.getByText('Pick the vehicle first.').waitFor()
  await page.getByLabel('Vehicle, by plate or description').fill('hn31')
  await page.getByRole('button', { name: /HN 31/ }).click()
  await page.getByRole('button', { name: 'Fit it', exact: true }).click()
  await soon(async () => (await ask(engine)).fittedIn?.plate).toBe('HN 31')

  await page.getByText('Correct the record…').click()
  const order = page.getByLabel('Firing order')
  await order.fill('1-2-2-4')
  await page.getByText('Each cylinder once').waitFor()
  await order.fill('1 2 4 3')
  await page.getByRole('button', { name: 'Save' }).click()
  await soon(async () => (await ask(engine)).specification.firingOrder).toEqual([1, 2, 4, 3])
})

test('two records of one engine are told so in both trails', async () => {
  await page.goto(`/engines/${engine}`)
  await page.getByText('The same engine under two records?').click()
  await page.getByLabel('The other record').fill('LR 204')
  await page.getByRole('button', { name: /a second card/ }).click()
  await page.getByRole('button', { name: 'They are one engine' }).click()
  await page.getByText('A reason is needed').waitFor()
  await page.getByLabel('How it is known').fill('same stamped number, read anew')
  await page.getByRole('button', { name: 'They are one engine' }).click()
  await page.getByText('Noted in both trails.').waitFor()
  const { items } = await need(crew.frontDesk.GET('/v1/engines/{engine}/trail', { params: { path: { engine } } }))
  expect(items.map(({ kind }) => kind)).toContain('same-engine')
})

test('no screen threw an error', () => {
  expect(errors).toEqual([])
})

test('a picture brought to the desk is attached to a reading, and withdrawn with a reason', async () => {
  const garage = { params: { path: { garage: chain.mill.id } } }
  const { items } = await need(crew.owner.GET('/v1/garages/{garage}/gauges', garage))
  const tested = await jobAt('testing', crew, chain.mill.id, items[0]!.id, { plate: 'PH 7', vehicle: 'red van', customer: 'Ivo Lind', complaint: 'Coughs' })
  const office = await openDevice(browser, new URL(page.url()).origin, 'desk', errors)
  await signIn(office, chain.mill.manager)
  await office.goto(`/jobs/${tested}`)
  await office.locator('input[data-photo=file]').setInputFiles({ name: 'plug.txt', mimeType: 'image/png', buffer: Buffer.from('no picture') })
  await office.getByRole('alert').getByText('This is no picture that can be read here.').waitFor()
  const photos = async () => (await need(crew.manager.GET('/v1/jobs/{job}/photos', { params: { path: { job: tested } } }))).items
  await office.locator('input[data-photo=file]').setInputFiles({ name: 'plug.png', mimeType: 'image/png', buffer: await sharp({ create: { width: 320, height: 200, channels: 3, background: '#a65' } }).png().toBuffer() })
  await office.locator('.strip img').waitFor()
  expect(await photos()).toMatchObject([{ width: 320, withdrawn: null }])
  await office.getByRole('button', { name: /^Enlarge: .*photo 1$/ }).click()
  const dialog = office.locator('dialog[open]')
  await dialog.getByText('Withdraw this photo').first().click()
  await dialog.getByLabel('Reason').fill('shows the wrong plug')
  await dialog.getByRole('button', { name: 'Withdraw this photo' }).click()
  await office.getByText('Photo withdrawn: “shows the wrong plug”').waitFor()
  expect(await photos()).toMatchObject([{ withdrawn: { reason: 'shows the wrong plug' } }])
  // who only answers the phone looks at photos and attaches none
  await page.goto(`/jobs/${tested}`)
  await page.getByText('Photo withdrawn: “shows the wrong plug”').waitFor()
  expect(await page.locator('input[data-photo]').count()).toBe(0)
  await office.context().close()
})
