import type { StoredReading } from '@evenbore/contract'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { startBrowser } from '../../support/browser.ts'
import { TEST_PIN, testChain, testJob, testService, testTablet, type TestChain, type TestJob, type TestService, type TestTablet } from '../../support/index.ts'
import { PATIENCE_MS } from './soon.ts'

/** A garage with a job in the tablet's bay, and the address that serves web and API. */
export interface BayScene {
  readonly service: TestService
  readonly base: string
  readonly chain: TestChain
  readonly job: TestJob
  readonly tablet: TestTablet
}

/** Builds the scene: one service, one job in the first bay, one enrolled tablet. */
export async function bayScene(): Promise<BayScene> {
  const service = await testService()
  return sceneOn(service, await service.listen())
}

/** The same scene on a service that runs already. */
export async function sceneOn(service: TestService, base: string): Promise<BayScene> {
  const chain = await testChain(service)
  const job = await testJob(service, chain.mill)
  const tablet = await testTablet(service, chain.mill)
  await asTechnician({ base, chain }, 'POST', `/v1/jobs/${job.id}/bay`, { bay: tablet.bay })
  return { service, base, chain, job, tablet }
}

/** A request in the technician's name, past the browser. */
export async function asTechnician<Answer>({ base, chain }: Pick<BayScene, 'base' | 'chain'>, method: string, path: string, body?: object): Promise<Answer> {
  const headers = { authorization: `Bearer ${chain.mill.technician.token}`, ...(body ? { 'content-type': 'application/json' } : {}) }
  const response = await fetch(base + path, { method, headers, ...(body ? { body: JSON.stringify(body) } : {}) })
  if (!response.ok) throw new Error(`${method} ${path}: ${response.status} ${await response.text()}`)
  return (await response.json()) as Answer
}

/** Name of the job's gauge, as the form of conditions shows it. */
export async function gaugeName({ service, job }: BayScene): Promise<string> {
  return (await service.database.prisma.gauge.findUniqueOrThrow({ where: { id: job.gauge } })).name
}

/** A browser that is this tablet: enrolled, nobody signed in. */
export async function tabletBrowser(browser: Browser, { base, chain, tablet }: BayScene): Promise<BrowserContext> {
  const context = await browser.newContext({ viewport: { width: 820, height: 1180 }, hasTouch: true, locale: 'en-GB' })
  context.setDefaultTimeout(PATIENCE_MS)
  const identity = { tablet: tablet.id, name: 'Tablet', garage: chain.mill.id, bay: tablet.bay, tabletToken: tablet.tabletToken }
  await context.addInitScript(([origin, value]) => {
    if (location.origin === origin) localStorage.setItem('evenbore.tablet', value!)
  }, [base, JSON.stringify(identity)])
  return context
}

/** Takes the tablet over with name and PIN. */
export async function takeOver(page: Page, base: string, name: string): Promise<void> {
  await page.goto(`${base}/bay`)
  await page.getByRole('button', { name }).click()
  for (const digit of TEST_PIN) await page.getByRole('button', { name: digit, exact: true }).click()
  await page.getByRole('button', { name: 'Take over' }).click()
  await page.getByRole('link', { name: 'Dry compression' }).or(page.getByText('This bay is free.')).first().waitFor()
}

/** Opens a page and waits until its sign-in is renewed: an answer to that which got lost ends the sign-in, and a network cut in between loses it. */
export async function openSignedIn(page: Page, address: string): Promise<void> {
  const me = page.waitForResponse((response) => new URL(response.url()).pathname === '/v1/me')
  await page.goto(address)
  await (await me).finished()
}

/** States conditions for the first time; later ones are remembered and only confirmed. */
export async function stateConditions(page: Page, gauge: string): Promise<void> {
  for (const fact of ['hot', 'throttle open', 'all plugs out', gauge]) await page.getByText(fact, { exact: true }).first().click()
  await page.getByRole('button', { name: 'So it is, begin' }).click()
  await page.getByRole('button', { name: 'Undo' }).waitFor()
}

/** The scene with somebody at the bench: taken over, signed in, conditions stated. */
export async function atTheBench(): Promise<{ scene: BayScene; browser: Browser; context: BrowserContext; page: Page }> {
  const [scene, browser] = await Promise.all([bayScene(), startBrowser()])
  const context = await tabletBrowser(browser, scene)
  const page = await context.newPage()
  await takeOver(page, scene.base, scene.chain.mill.technician.name)
  await openSignedIn(page, `${scene.base}/jobs/${scene.job.id}/test`)
  await stateConditions(page, await gaugeName(scene))
  return { scene, browser, context, page }
}

/** What the quiet line says of what waits. */
export const quietLine = (page: Page) => page.locator('header small').last().textContent()

/** Types digits on the pad. */
export async function digits(page: Page, typed: string): Promise<void> {
  for (const key of typed) await page.locator('.pad').getByRole('button', { name: key, exact: true }).click()
}

/** Every half-entered number that this tablet has stored: what a killed tab finds again. */
export const halfEntered = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<unknown[]>((answer, refuse) => {
        const opening = indexedDB.open('evenbore')
        opening.onerror = () => refuse(opening.error)
        opening.onsuccess = () => {
          const drafts = opening.result.transaction('drafts').objectStore('drafts').getAll()
          drafts.onsuccess = () => {
            opening.result.close()
            answer(drafts.result.map(({ value }) => (value as { typed?: string }).typed))
          }
        }
      }),
  )

/** The filled button of the pad. */
export const keep = (page: Page) => page.locator('.pad .go')

/** The cylinder that the line above the pad asks for. */
export async function askedFor(page: Page): Promise<number> {
  return Number(/\d+/.exec((await page.locator('.entry label').textContent()) ?? '')?.[0])
}

/** Every reading the server has for the job, in the order it has them. */
export async function readingsOnServer(scene: BayScene): Promise<StoredReading[]> {
  const { items } = await asTechnician<{ items: { readings: StoredReading[] }[] }>(scene, 'GET', `/v1/jobs/${scene.job.id}/sessions`)
  return items.flatMap(({ readings }) => readings)
}
