import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { createClient, type Client } from '@evenbore/client'
import { startBrowser } from '../support/browser.ts'
import { TEST_PASSWORD, testChain, testService, type TestChain, type TestService } from '../support/index.ts'
import { PATIENCE_MS } from './parts/soon.ts'
import { choose, confirmConditions, demandBuild, openDevice, readCylinders, signIn, takeOverTablet } from './parts/walk.ts'

/**
 * The main job in real browsers, each person at a device of their own: book in, dry test on an enrolled tablet, the suggested test,
 * a quote sent back once and then approved, the customer's word, repair and finding, retest, release. One walk: each step stands on the one before.
 */
let service: TestService
let chain: TestChain
let browser: Browser
let baseUrl: string
let api: Client
let enrolmentCode: string
const errors: string[] = []
let desk: Page
let tablet: Page
let bench: Page
let office: Page
let job = ''

beforeAll(async () => {
  demandBuild()
  service = await testService()
  chain = await testChain(service)
  baseUrl = await service.listen()
  api = createClient({ baseUrl })
  expect(await api.session.signIn({ kind: 'person', email: chain.owner.email, password: TEST_PASSWORD })).toEqual({ ok: true })
  const garage = chain.mill.id
  const path = { garage }
  await api.POST('/v1/garages/{garage}/gauges', { params: { path }, body: { kind: 'compression', name: 'Gauge 4', specification: { span: { value: 300, unit: 'psi' }, accuracyClass: 1.6, resolution: { value: 1, unit: 'psi' } } } })
  await api.POST('/v1/garages/{garage}/gauges', { params: { path }, body: { kind: 'leakage', name: 'Tester 1', specification: { supply: { value: 80, unit: 'psi' }, restrictorMm: 1.016 } } })
  await api.POST('/v1/garages/{garage}/catalogue', { params: { path }, body: { kind: 'labour', operation: 'look-borescope', text: 'Look through the plug holes', minutes: 20, unitPriceMinor: null, taxBasisPoints: 2000 } })
  const made = await api.POST('/v1/garages/{garage}/tablets', { params: { path }, body: { bay: chain.mill.bays[0]!, name: 'Tablet of bay 1' } })
  enrolmentCode = made.data!.enrolmentCode
  browser = await startBrowser()
  desk = await openDevice(browser, baseUrl, 'desk', errors)
  tablet = await openDevice(browser, baseUrl, 'tablet', errors)
  bench = await openDevice(browser, baseUrl, 'desk', errors)
  office = await openDevice(browser, baseUrl, 'desk', errors, 'dark')
})

afterAll(async () => {
  await browser?.close()
  await service?.close()
})

test('the front desk books a car in on one page, plate first', async () => {
  await signIn(desk, chain.mill.frontDesk)
  await desk.getByRole('link', { name: 'Book in' }).click()
  await desk.getByLabel('Registration plate').fill('FX 204 B')
  await desk.getByText('This plate is new here.').waitFor()
  await desk.getByLabel('What it is, in a few words').fill('grey estate')
  await desk.getByLabel('Customer: Name').fill('Milo Ondrej')
  await desk.getByLabel('Phone').fill('0100 204 204')
  await desk.getByLabel('Engine family').selectOption({ label: 'None of these: describe it' })
  await desk.getByLabel('Description').fill('1.6 litre, four in line')
  await desk.getByLabel('Bay').selectOption({ label: 'Bay 1' })
  await desk.getByRole('button', { name: 'Book in' }).click()
  await desk.getByText('This is needed.').waitFor()
  expect(await desk.evaluate(() => document.activeElement?.tagName)).toBe('TEXTAREA')
  await desk.getByLabel(/^Complaint/).fill('Down on power, runs on three when cold')
  // what was typed outlives a reload
  await desk.reload()
  await expect.poll(() => desk.getByLabel(/^Complaint/).inputValue(), { timeout: PATIENCE_MS }).toBe('Down on power, runs on three when cold')
  await desk.getByRole('button', { name: 'Book in' }).click()
  await desk.waitForURL(/\/jobs\/[0-9a-f-]{36}/)
  job = /\/jobs\/([0-9a-f-]{36})/.exec(desk.url())![1]!
  await desk.getByText('Booked in as M 1.').waitFor()
  await desk.getByRole('heading', { name: /nothing measured yet/ }).waitFor()
})

test('the technician reads the dry test on the enrolled tablet, and the desk sees each reading', async () => {
  await takeOverTablet(tablet, enrolmentCode, chain.mill.technician)
  await tablet.getByRole('heading', { name: 'grey estate' }).waitFor()
  await tablet.getByRole('link', { name: 'Dry compression' }).click()
  await confirmConditions(tablet)
  await readCylinders(tablet, { 1: 152, 2: 156, 3: 129, 4: 147 })
  await tablet.waitForURL(/\/test\/verdict/)
  await desk.getByText('Cylinder 4: 147 psi').first().waitFor()
  const last = await desk.getByText(/^Cylinder \d: \d+ psi/).count()
  expect(last).toBe(4)
  await tablet.getByText('Not within one tenth.').waitFor()
})

test('two desks that look at one job see a reading within a second of its being kept', async () => {
  await signIn(bench, chain.mill.technician)
  await bench.goto(`/jobs/${job}`)
  await bench.getByText('Cylinder 3: 129 psi').first().waitFor()
  const sessions = await api.GET('/v1/jobs/{job}/sessions', { params: { path: { job } } })
  const session = sessions.data!.items[0]!.id
  const took: number[] = []
  for (const value of [126, 127, 128]) {
    const reading = crypto.randomUUID().replace(/^(.{14})./, '$17')
    const put = await api.PUT('/v1/sessions/{session}/readings/{reading}', { params: { path: { session, reading } }, body: { takenAt: new Date().toISOString(), reading: { test: 'compression', cylinder: 3, pressure: { value, unit: 'psi' }, strokeCount: 10 } } })
    expect(put.response.status).toBe(201)
    const told = Date.now()
    await Promise.all([desk, bench].map((page) => page.getByText(`Cylinder 3: ${value} psi`).first().waitFor()))
    took.push(Date.now() - told)
  }
  // the fastest of three: what else runs on the machine must not decide
  expect(Math.min(...took), took.join(', ')).toBeLessThan(1_000)
})

test('the technician takes the suggested test', async () => {
  await tablet.getByRole('button', { name: 'Do this' }).click()
  await tablet.waitForURL(/\/test\?test=/)
  await doSuggestedTest(tablet)
  await desk.getByRole('heading', { name: 'What was decided on suggestions' }).waitFor()
  await desk.getByText(`${chain.mill.technician.name} took:`).waitFor()
})

test('a quote is written, sent back with a question, changed, and approved', async () => {
  await bench.goto(`/jobs/${job}`)
  await bench.getByRole('link', { name: 'Write a quote' }).click()
  await addLine(bench, 0, 'Head off and on, valve ground in', '4,5', '80.00')
  await bench.getByText('Draft kept.').waitFor()
  await bench.getByRole('button', { name: 'Send to the manager' }).click()
  await bench.waitForURL(`/jobs/${job}`)
  await bench.getByRole('heading', { name: /^Waits for/ }).waitFor()

  await signIn(office, chain.mill.manager)
  await office.getByRole('link', { name: 'Decisions' }).click()
  await office.waitForURL('/decisions')
  await office.getByRole('link', { name: /M 1/ }).click()
  await office.getByRole('heading', { name: 'What the evidence says' }).waitFor()
  await office.getByText('Not within one tenth.').waitFor()
  await office.getByText('€432.00').first().waitFor()
  await office.getByRole('button', { name: 'Send back with a question' }).click()
  await office.getByRole('button', { name: 'Send it back' }).click()
  await office.getByText('A reason is needed').waitFor()
  await office.getByLabel('What should be answered, or tested, first?').fill('Would a look through the plug hole not come first?')
  await office.getByRole('button', { name: 'Send it back' }).click()
  await office.getByText(/sent back by/).waitFor()

  await bench.getByText(/Would a look through the plug hole/).first().waitFor()
  await bench.getByRole('link', { name: 'Write a quote' }).click()
  await bench.getByText(/Would a look through the plug hole/).first().waitFor()
  await addLine(bench, 0, 'Head off and on, valve ground in', '4.5', '80.00')
  await bench.getByLabel('From the catalogue').selectOption({ label: 'Look through the plug holes' })
  await bench.getByRole('button', { name: 'Send to the manager' }).click()
  await bench.waitForURL(`/jobs/${job}`)

  await office.goto(`/jobs/${job}/decide`)
  await office.getByText('against quote 1: Look through the plug holes, added').waitFor()
  await office.getByText('Within your limit (€1,500.00).').waitFor()
  await office.getByRole('button', { name: /^Approve €/ }).click()
  await office.getByText(/approved by Mara/).waitFor()
})

test('the customer’s word is recorded with the number called', async () => {
  await desk.getByRole('heading', { name: /customer’s word|the word of/ }).waitFor()
  await desk.getByRole('button', { name: 'Record the customer’s word' }).click()
  const dialog = desk.getByRole('dialog')
  await dialog.getByLabel('Who said it').fill('Milo Ondrej')
  await dialog.getByRole('button', { name: 'Record it' }).click()
  await dialog.getByText('This is needed.').waitFor()
  await dialog.getByLabel('Number called').fill('0100 204 204')
  await dialog.getByRole('button', { name: 'Record it' }).click()
  await desk.getByRole('heading', { name: /repair can start/ }).waitFor()
})

test('the repair is started, what was found is recorded, and it is finished', async () => {
  await bench.getByRole('button', { name: 'Start the repair' }).click()
  await bench.getByRole('heading', { name: /^In repair/ }).waitFor()
  await bench.getByRole('link', { name: 'Record a finding' }).click()
  await bench.getByRole('button', { name: /^Cylinder 3/ }).click()
  await bench.getByLabel('What was found').selectOption({ label: 'exhaust valve leaks' })
  await bench.getByLabel('As it was seen').fill('Seat of the exhaust valve pitted over a third of its width')
  await bench.getByRole('button', { name: 'Record it' }).click()
  await bench.getByText(/had been believed|had not been reckoned/).waitFor()
  await bench.goto(`/jobs/${job}`)
  await bench.getByRole('button', { name: 'Finish the repair' }).click()
  await bench.getByRole('dialog').getByRole('button', { name: 'Finish the repair' }).click()
  await bench.getByRole('heading', { name: /retest next/ }).waitFor()
})

test('the retest is measured on the tablet, compared with its baseline, and passed', async () => {
  await tablet.goto(`/jobs/${job}/test`)
  await confirmConditions(tablet)
  await readCylinders(tablet, { 1: 152, 2: 155, 3: 151, 4: 149 })
  await tablet.waitForURL(/\/test\/verdict/)
  await bench.getByRole('link', { name: 'release retest' }).click()
  await bench.getByText('Before and after may be compared.').waitFor()
  await bench.getByRole('row', { name: /^3 .*better/ }).waitFor()
  await bench.getByRole('button', { name: 'It passed' }).click()
  await bench.getByText(/passed, by Tess/).first().waitFor()
})

test('the car is handed over with a promise to measure again, and the trail is whole', async () => {
  await desk.getByRole('heading', { name: /^Ready to hand over/ }).waitFor()
  await desk.getByRole('link', { name: 'Hand over' }).click()
  await desk.getByLabel('Odometer, km (optional)').fill('84 150')
  await desk.getByRole('button', { name: 'Promise another retest' }).click()
  await desk.getByLabel('Why').fill('head torqued again')
  await desk.getByLabel('At km').fill('84650')
  await desk.getByRole('button', { name: 'Hand over now' }).click()
  await desk.waitForURL(`/jobs/${job}`)
  await desk.getByRole('heading', { name: /^Handed over/ }).waitFor()
  await desk.getByRole('heading', { name: 'Trail' }).click()
  await desk.getByRole('button', { name: 'Check the trail' }).click()
  await desk.getByText(/^Whole: all \d+ entries fit together\.$/).waitFor()
  await desk.goto('/retests')
  await desk.getByText(/head torqued again/).waitFor()
  expect(errors).toEqual([])
})

async function addLine(page: Page, at: number, what: string, quantity: string, rate: string): Promise<void> {
  await page.getByRole('button', { name: 'Add a line' }).click()
  await page.getByRole('textbox', { name: 'Work', exact: true }).nth(at).fill(what)
  await page.getByLabel(`Hours, ${what}`).fill(quantity)
  await page.getByLabel(`Rate, ${what}`).fill(rate)
}

/** Does whatever the model asked for, as a technician would who finds cylinder 3 leaking at the exhaust. */
async function doSuggestedTest(page: Page): Promise<void> {
  const wanted = new URL(page.url()).searchParams.get('test')
  const keep = () => page.getByRole('button', { name: 'Keep it' }).click()
  if (wanted === 'wet') return readCylinders(page, { 1: 158, 2: 161, 3: 132, 4: 152 })
  if (wanted === 'clearance') {
    await choose(page, 'Cylinder', '3')
    await choose(page, 'Valve', 'exhaust')
    await choose(page, 'State', 'right')
  } else if (wanted === 'borescope') {
    await choose(page, 'Cylinder', '3')
    await page.getByRole('button', { name: 'burnt exhaust valve' }).click()
  } else if (wanted === 'vacuum') {
    await choose(page, 'How the needle moves', 'drops regularly')
  } else if (wanted === 'coolant-gas' || wanted === 'observation') {
    await choose(page, wanted === 'observation' ? 'Seen, heard or felt' : 'Gas in the coolant', 'looked for, not there')
  } else if (wanted === 'leakage') {
    for (const digit of '62') await page.locator('.pad').getByRole('button', { name: digit, exact: true }).click()
  } else if (wanted === 'compression') {
    await page.getByRole('button', { name: /^Cylinder 3/ }).click()
    for (const digit of '128') await page.locator('.pad').getByRole('button', { name: digit, exact: true }).click()
    return page.locator('.pad .go').click()
  } else throw new Error(`No hand for the suggested test "${wanted}" in this walk.`)
  await keep()
}
