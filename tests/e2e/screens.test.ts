import { mkdirSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { AxeBuilder } from '@axe-core/playwright'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { startBrowser } from '../support/browser.ts'
import { testChain, testService, type TestChain, type TestService } from '../support/index.ts'
import { jobAt, need, signInCrew, type Crew } from './parts/stages.ts'
import { soon } from './parts/soon.ts'
import { demandBuild, openDevice, signIn, SIZES } from './parts/walk.ts'

/**
 * Every screen of desk and office, by whoever uses it, at both sizes and in both themes: pictures into tests/shots (git-ignored), and
 * axe on each in both themes, by the rules of WCAG 2.2 AA.
 */
const SHOTS = resolve(import.meta.dirname, '..', 'shots')
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']
type Role = 'frontDesk' | 'technician' | 'manager' | 'owner'

let service: TestService
let chain: TestChain
let crew: Crew
let browser: Browser
const errors: string[] = []
const pages = new Map<Role, Page>()
const jobs: Record<string, string> = {}

beforeAll(async () => {
  demandBuild()
  mkdirSync(SHOTS, { recursive: true })
  service = await testService()
  chain = await testChain(service)
  const baseUrl = await service.listen()
  crew = await signInCrew(baseUrl, chain)
  const garage = chain.mill.id
  const path = { garage }
  const gauge = await need(crew.owner.POST('/v1/garages/{garage}/gauges', { params: { path }, body: { kind: 'compression', name: 'Gauge 4', specification: { span: { value: 300, unit: 'psi' }, accuracyClass: 1.6, resolution: { value: 1, unit: 'psi' } }, checkDue: '2026-01-31' } }))
  await need(crew.owner.POST('/v1/garages/{garage}/catalogue', { params: { path }, body: { kind: 'labour', operation: 'look-borescope', text: 'Look through the plug holes', minutes: 20, unitPriceMinor: null, taxBasisPoints: 2000 } }))
  await need(crew.owner.POST('/v1/garages/{garage}/tablets', { params: { path }, body: { bay: chain.mill.bays[0]!, name: 'Tablet of bay 1' } }))
  await need(crew.owner.POST('/v1/engine-families', { body: { name: 'Four in line, 1.6', specification: { fuel: 'petrol', layout: 'inline', cylinders: 4, firingOrder: [1, 3, 4, 2] }, basis: {} } }))
  await need(crew.owner.POST('/v1/apps', { body: { name: 'Gauge bridge', scopes: ['readings:write'], garages: [garage] } }))
  jobs['testing'] = await jobAt('testing', crew, garage, gauge.id, { plate: 'FX 204 B', vehicle: 'grey estate', customer: 'Milo Ondrej', complaint: 'Down on power, runs on three when cold', bay: chain.mill.bays[0]! })
  jobs['sent'] = await jobAt('sent', crew, garage, gauge.id, { plate: 'BL 19', vehicle: 'blue saloon', customer: 'Ana Castel', complaint: 'Loses water', bay: chain.mill.bays[1]! })
  jobs['approved'] = await jobAt('approved', crew, garage, gauge.id, { plate: 'GN 7', vehicle: 'green pick-up with a very long description that a careful person typed in full', customer: 'Marrow & Daughters, bakers', complaint: 'Oil on the plugs' })
  jobs['retested'] = await jobAt('retested', crew, garage, gauge.id, { plate: 'RD 8', vehicle: 'red van', customer: 'Ivo Lind', complaint: 'Coughs under load' })
  jobs['ready'] = await jobAt('ready', crew, garage, gauge.id, { plate: 'WT 11', vehicle: 'white coupé', customer: 'Rosa Quill', complaint: 'Knocks' })
  jobs['handed-over'] = await jobAt('handed-over', crew, garage, gauge.id, { plate: 'YL 3', vehicle: 'yellow roadster', customer: 'Tomas Fen', complaint: 'Hard to start' })
  browser = await startBrowser()
  for (const role of ['frontDesk', 'technician', 'manager', 'owner'] as const) {
    const page = await openDevice(browser, baseUrl, 'desk', errors)
    await signIn(page, role === 'owner' ? chain.owner : chain.mill[role])
    if (role === 'owner') await page.getByLabel('Garage').selectOption({ label: 'Mill Lane' })
    pages.set(role, page)
  }
})

afterAll(async () => {
  await browser?.close()
  await service?.close()
})

/** Name of the picture, who looks, where, and what stands on the screen once it is there. */
const screens: readonly (readonly [name: string, role: Role, path: () => Promise<string> | string, text: RegExp])[] = [
  ['floor', 'frontDesk', () => '/', /Waits for a yes/],
  ['search', 'frontDesk', () => '/search?q=fx204', /One job/],
  ['search-nothing', 'frontDesk', () => '/search?q=zzzz', /Nothing fits/],
  ['book-in', 'frontDesk', () => '/book-in', /Registration plate/],
  ['job-testing', 'technician', () => `/jobs/${jobs['testing']}`, /Not within/],
  ['job-waiting', 'manager', () => `/jobs/${jobs['sent']}`, /Not within/],
  ['job-customer', 'frontDesk', () => `/jobs/${jobs['approved']}`, /Not within/],
  ['job-ready', 'frontDesk', () => `/jobs/${jobs['ready']}`, /Ready to hand over/],
  ['job-handed-over', 'owner', () => `/jobs/${jobs['handed-over']}`, /Handed over/],
  ['quote', 'technician', () => `/jobs/${jobs['testing']}/quote`, /From the catalogue/],
  ['decisions', 'manager', () => '/decisions', /sent/],
  ['decide', 'manager', () => `/jobs/${jobs['sent']}/decide`, /Not within/],
  ['findings', 'technician', () => `/jobs/${jobs['retested']}/findings`, /pitted/],
  ['retests', 'frontDesk', () => '/retests', /head torqued again/],
  ['retest', 'technician', () => retestOf(jobs['retested']!), /may be compared/],
  ['hand-over', 'frontDesk', () => `/jobs/${jobs['ready']}/hand-over`, /Hand over now/],
  ['customers', 'frontDesk', () => '/customers', /Rosa Quill/],
  ['customer', 'frontDesk', () => customerOf(jobs['ready']!), /Visits/],
  ['vehicles', 'frontDesk', () => '/vehicles', /WT 11/],
  ['vehicle', 'frontDesk', () => vehicleOf(jobs['ready']!), /Visits/],
  ['engines', 'technician', () => '/engines', /four in line/],
  ['engine', 'technician', () => engineOf(jobs['handed-over']!), /Over the years/],
  ['reliability', 'manager', () => '/reliability', /leading explanation|no finding/],
  ['settings-me', 'frontDesk', () => '/settings/me', /Sign out/],
  ['settings-garage', 'owner', () => '/settings/garage', /Time zone/],
  ['settings-bays', 'owner', () => '/settings/bays', /Bay 2/],
  ['settings-gauges', 'owner', () => '/settings/gauges', /Gauge 4/],
  ['settings-catalogue', 'owner', () => '/settings/catalogue', /plug holes/],
  ['settings-families', 'owner', () => '/settings/families', /Four in line/],
  ['settings-people', 'owner', () => '/settings/people', /technician/],
  ['settings-tablets', 'owner', () => '/settings/tablets', /Tablet of bay 1/],
  ['settings-apps', 'owner', () => '/settings/apps', /Gauge bridge/],
  ['settings-deputies', 'manager', () => '/settings/deputies', /Name a deputy/],
  ['settings-audit', 'owner', () => '/settings/audit', /Who/],
  ['forbidden', 'technician', () => '/settings/people', /You may not see this/],
  ['gone', 'technician', () => '/jobs/019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b', /not there/],
  ['print-test-record', 'technician', () => `/jobs/${jobs['testing']}/print/test-record`, /Test record/],
  ['print-quote', 'frontDesk', () => `/jobs/${jobs['approved']}/print/quote`, /Total/],
  ['print-release', 'frontDesk', () => `/jobs/${jobs['ready']}/print/release`, /pitted/],
  ['print-key-tag', 'frontDesk', () => `/jobs/${jobs['ready']}/print/key-tag`, /WT 11/],
]

test.each(screens)('%s can be used by everyone, in both themes', async (name, role, path, text) => {
  const page = pages.get(role)!
  // a window behind another one paints late, and its pictures would show old ink
  await page.bringToFront()
  await page.setViewportSize(SIZES.desk)
  await page.goto(await path())
  await page.getByText(text).filter({ visible: true }).first().waitFor()
  await soon(() => page.getByText('Fetching…').count()).toBe(0)
  for (const theme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme: theme, media: 'screen' })
    for (const size of ['desk', 'tablet'] as const) {
      await page.setViewportSize(SIZES[size])
      // the new size and theme are there, and painted
      await page.waitForFunction(([width, dark]) => innerWidth === width && matchMedia('(prefers-color-scheme: dark)').matches === dark, [SIZES[size].width, theme === 'dark'] as const)
      await page.evaluate(() => new Promise((painted) => requestAnimationFrame(() => requestAnimationFrame(painted))))
      await page.screenshot({ path: join(SHOTS, `${name}-${size}-${theme}.png`), fullPage: true })
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth), `${name} scrolls sideways at ${SIZES[size].width} px`).toBeLessThanOrEqual(0)
    }
    // the other theme has the same elements in other colours
    const axe = theme === 'light' ? new AxeBuilder({ page }).setLegacyMode().withTags(RULES) : new AxeBuilder({ page }).setLegacyMode().withRules(['color-contrast'])
    const { violations } = await axe.analyze()
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target, failureSummary }) => `${String(target)} ${failureSummary}`).join(' | ')}`), `${name}, ${theme}`).toEqual([])
  }
  await page.emulateMedia({ colorScheme: 'light', media: name.startsWith('print-') ? 'print' : 'screen' })
  if (name.startsWith('print-')) await page.pdf({ path: join(SHOTS, `${name}.pdf`), format: 'A4', preferCSSPageSize: true })
  await page.emulateMedia({ colorScheme: 'light', media: 'screen' })
})

test('no screen threw an error', () => {
  expect(errors).toEqual([])
})

test('a person who is signed out is asked to sign in, and comes back to where he was', async () => {
  const page = await openDevice(browser, new URL(pages.get('owner')!.url()).origin, 'desk', errors)
  await page.goto('/retests')
  await page.waitForURL(/\/sign-in\?to=%2Fretests/)
  await page.screenshot({ path: join(SHOTS, 'sign-in-desk-light.png') })
  const { violations } = await new AxeBuilder({ page }).setLegacyMode().withTags(RULES).analyze()
  expect(violations.map(({ id }) => id)).toEqual([])
  await page.getByLabel('E-mail').fill(chain.mill.frontDesk.email)
  await page.getByLabel('Password').fill('wrong and wrong again')
  await page.getByRole('button', { name: 'Sign in' }).click()
  await page.getByText('E-mail and password do not fit together.').waitFor()
})

async function retestOf(job: string): Promise<string> {
  const { items } = await need(crew.technician.GET('/v1/jobs/{job}/retests', { params: { path: { job } } }))
  return `/jobs/${job}/retests/${items[0]!.id}`
}
const read = (job: string) => need(crew.frontDesk.GET('/v1/jobs/{job}', { params: { path: { job } } }))
const customerOf = async (job: string) => `/customers/${(await read(job)).customerRecord!.id}`
const vehicleOf = async (job: string) => `/vehicles/${(await read(job)).vehicleRecord.id}`
const engineOf = async (job: string) => `/engines/${(await read(job)).engine}`
