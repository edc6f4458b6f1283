import type { Browser, Page } from 'playwright-core'
import { startBrowser } from '../../support/browser.ts'
import { testChain, testService, type TestChain, type TestService } from '../../support/index.ts'
import { jobAt, need, signInCrew, type Crew } from './stages.ts'
import { demandBuild, openDevice, signIn } from './walk.ts'

export type Role = 'frontDesk' | 'technician' | 'manager' | 'owner'

/** A chain at work: jobs at every stage, things set up, and one browser for each who sits at a desk. */
export interface DeskScene {
  readonly service: TestService
  readonly chain: TestChain
  readonly crew: Crew
  readonly browser: Browser
  readonly pages: ReadonlyMap<Role, Page>
  /** Job ids by the stage that each was brought to. */
  readonly jobs: Readonly<Record<string, string>>
  /** What the pages threw. */
  readonly errors: string[]
  close(): Promise<void>
}

/** Builds the scene; everything in it goes through the public API. */
export async function deskScene(): Promise<DeskScene> {
  demandBuild()
  const service = await testService()
  const chain = await testChain(service)
  const jobs: Record<string, string> = {}
  const pages = new Map<Role, Page>()
  const errors: string[] = []
  const baseUrl = await service.listen()
  const crew = await signInCrew(baseUrl, chain)
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
  const browser = await startBrowser()
  for (const role of ['frontDesk', 'technician', 'manager', 'owner'] as const) {
    const page = await openDevice(browser, baseUrl, 'desk', errors)
    await signIn(page, role === 'owner' ? chain.owner : chain.mill[role])
    if (role === 'owner') await page.getByLabel('Garage').selectOption({ label: 'Mill Lane' })
    pages.set(role, page)
  }
  return {
    service, chain, crew, browser, pages, jobs, errors,
    close: async () => {
      await browser.close()
      await service.close()
    },
  }
}

async function retestOf({ crew, jobs }: DeskScene, stage: string): Promise<string> {
  const job = jobs[stage]!
  const { items } = await need(crew.technician.GET('/v1/jobs/{job}/retests', { params: { path: { job } } }))
  return `/jobs/${job}/retests/${items[0]!.id}`
}
const read = ({ crew, jobs }: DeskScene, stage: string) => need(crew.frontDesk.GET('/v1/jobs/{job}', { params: { path: { job: jobs[stage]! } } }))
const customerOf = async (scene: DeskScene, stage: string) => `/customers/${(await read(scene, stage)).customerRecord!.id}`
const vehicleOf = async (scene: DeskScene, stage: string) => `/vehicles/${(await read(scene, stage)).vehicleRecord.id}`
const engineOf = async (scene: DeskScene, stage: string) => `/engines/${(await read(scene, stage)).engine}`

/** Name of the picture, who looks, where, and what stands on the screen once it is there. */
export const screens: readonly (readonly [name: string, role: Role, path: (scene: DeskScene) => Promise<string> | string, text: RegExp])[] = [
  ['floor', 'frontDesk', () => '/', /Waits for a yes/],
  ['search', 'frontDesk', () => '/search?q=fx204', /One job/],
  ['search-nothing', 'frontDesk', () => '/search?q=zzzz', /Nothing fits/],
  ['book-in', 'frontDesk', () => '/book-in', /Registration plate/],
  ['job-testing', 'technician', ({ jobs }) => `/jobs/${jobs['testing']}`, /Not within/],
  ['job-waiting', 'manager', ({ jobs }) => `/jobs/${jobs['sent']}`, /Not within/],
  ['job-customer', 'frontDesk', ({ jobs }) => `/jobs/${jobs['approved']}`, /Not within/],
  ['job-ready', 'frontDesk', ({ jobs }) => `/jobs/${jobs['ready']}`, /Ready to hand over/],
  ['job-handed-over', 'owner', ({ jobs }) => `/jobs/${jobs['handed-over']}`, /Handed over/],
  ['quote', 'technician', ({ jobs }) => `/jobs/${jobs['testing']}/quote`, /From the catalogue/],
  ['decisions', 'manager', () => '/decisions', /sent/],
  ['decide', 'manager', ({ jobs }) => `/jobs/${jobs['sent']}/decide`, /Not within/],
  ['findings', 'technician', ({ jobs }) => `/jobs/${jobs['retested']}/findings`, /pitted/],
  ['retests', 'frontDesk', () => '/retests', /head torqued again/],
  ['retest', 'technician', (scene) => retestOf(scene, 'retested'), /may be compared/],
  ['hand-over', 'frontDesk', ({ jobs }) => `/jobs/${jobs['ready']}/hand-over`, /Hand over now/],
  ['customers', 'frontDesk', () => '/customers', /Rosa Quill/],
  ['customer', 'frontDesk', (scene) => customerOf(scene, 'ready'), /Visits/],
  ['vehicles', 'frontDesk', () => '/vehicles', /WT 11/],
  ['vehicle', 'frontDesk', (scene) => vehicleOf(scene, 'ready'), /Visits/],
  ['engines', 'technician', () => '/engines', /four in line/],
  ['engine', 'technician', (scene) => engineOf(scene, 'handed-over'), /Over the years/],
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
  ['print-test-record', 'technician', ({ jobs }) => `/jobs/${jobs['testing']}/print/test-record`, /Test record/],
  ['print-quote', 'frontDesk', ({ jobs }) => `/jobs/${jobs['approved']}/print/quote`, /Total/],
  ['print-release', 'frontDesk', ({ jobs }) => `/jobs/${jobs['ready']}/print/release`, /pitted/],
  ['print-key-tag', 'frontDesk', ({ jobs }) => `/jobs/${jobs['ready']}/print/key-tag`, /WT 11/],
]
