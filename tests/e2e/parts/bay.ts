import type { StoredReading } from '@evenbore/contract'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { expect } from 'vitest'
import { TEST_PIN, testChain, testJob, testService, testTablet, type TestChain, type TestJob, type TestService, type TestTablet } from '../../support/index.ts'

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
  const base = await service.listen()
  const chain = await testChain(service)
  const job = await testJob(service, chain.mill)
  const tablet = await testTablet(service, chain.mill)
  await service.app.inject({ method: 'POST', url: `/v1/jobs/${job.id}/bay`, headers: { authorization: `Bearer ${chain.mill.technician.token}` }, payload: { bay: tablet.bay } })
  return { service, base, chain, job, tablet }
}

/** A browser that is this tablet: enrolled, nobody signed in. */
export async function tabletBrowser(browser: Browser, { base, chain, tablet }: BayScene): Promise<BrowserContext> {
  const context = await browser.newContext({ viewport: { width: 820, height: 1180 }, hasTouch: true, locale: 'en-GB' })
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

/** States conditions for the first time; later ones are remembered and only confirmed. */
export async function stateConditions(page: Page, gauge: string): Promise<void> {
  for (const fact of ['hot', 'throttle open', 'all plugs out', gauge]) await page.getByText(fact, { exact: true }).first().click()
  await page.getByRole('button', { name: 'So it is, begin' }).click()
  await page.getByRole('button', { name: 'Undo' }).waitFor()
}

/** Types digits on the pad. */
export async function digits(page: Page, typed: string): Promise<void> {
  for (const key of typed) await page.locator('.pad').getByRole('button', { name: key, exact: true }).click()
}

/** The filled button of the pad. */
export const keep = (page: Page) => page.locator('.pad .go')

/** The cylinder that the line above the pad asks for. */
export async function askedFor(page: Page): Promise<number> {
  return Number(/\d+/.exec((await page.locator('.entry label').textContent()) ?? '')?.[0])
}

/** Asks until it is so: two cores may be busy with a dozen other tests. */
export const soon = <Value>(ask: () => Value | Promise<Value>) => expect.poll(ask, { timeout: 60_000, interval: 100 })

/** Every reading the server has for the job, in the order it has them. */
export async function readingsOnServer({ service, job, chain }: BayScene): Promise<StoredReading[]> {
  const answer = await service.app.inject({ url: `/v1/jobs/${job.id}/sessions`, headers: { authorization: `Bearer ${chain.mill.technician.token}` } })
  const sessions = answer.json<{ items: { readings: StoredReading[] }[] }>().items
  return sessions.flatMap(({ readings }) => readings)
}
