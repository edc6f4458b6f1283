import { existsSync } from 'node:fs'
import { resolve } from 'node:path'
import type { Browser, BrowserContext, Locator, Page } from 'playwright-core'
import { TEST_PASSWORD, TEST_PIN, type TestPerson } from '../../support/index.ts'
import { PATIENCE_MS } from './soon.ts'

/** How people of the tests find their way about the screens. English texts, British numbers, the garage's own clock. */
export const SIZES = { desk: { width: 1280, height: 800 }, tablet: { width: 820, height: 1180 } } as const

/** @throws Error with one sentence where the web was not built: these tests walk on what is served. */
export function demandBuild(): void {
  if (!existsSync(resolve(import.meta.dirname, '../../../apps/web/build/index.html'))) throw new Error('The web is not built: run `npm run build` first.')
}

/** A browser of somebody's own, with nobody signed in. Errors of the page are collected in `errors`. */
export async function openDevice(browser: Browser, baseURL: string, size: keyof typeof SIZES, errors: string[], theme: 'light' | 'dark' = 'light'): Promise<Page> {
  const context: BrowserContext = await browser.newContext({ baseURL, viewport: SIZES[size], colorScheme: theme, locale: 'en-GB', reducedMotion: 'reduce' })
  context.setDefaultTimeout(PATIENCE_MS)
  const page = await context.newPage()
  page.on('pageerror', (error) => errors.push(`${page.url()}: ${error.message}`))
  return page
}

/** Signs in at the desk by e-mail and password. */
export async function signIn(page: Page, person: Pick<TestPerson, 'email'>, password = TEST_PASSWORD): Promise<void> {
  await page.goto('/sign-in')
  await page.getByLabel('E-mail').fill(person.email)
  await page.getByLabel('Password').fill(password)
  await page.getByRole('button', { name: 'Sign in' }).click()
  await page.waitForURL('/')
  await page.getByRole('heading', { name: 'The floor' }).waitFor()
}

/** Makes a device the tablet of a bay with a one-time code, and hands it to a technician by PIN. */
export async function takeOverTablet(page: Page, enrolmentCode: string, person: Pick<TestPerson, 'name'>): Promise<void> {
  await page.goto('/bay')
  await page.getByLabel('One-time code').fill(enrolmentCode)
  await page.getByRole('button', { name: 'Enrol this tablet' }).click()
  await page.getByRole('button', { name: person.name }).click()
  for (const digit of TEST_PIN) await page.getByRole('button', { name: digit, exact: true }).click()
  await page.getByRole('button', { name: 'Take over' }).click()
}

/** Confirms the conditions: hot, throttle open, all plugs out, the garage's gauge. */
export async function confirmConditions(page: Page): Promise<void> {
  await choose(page, 'Engine', 'hot')
  await choose(page, 'Throttle', 'throttle open')
  await choose(page, 'Plugs out', 'all plugs out')
  await page.getByRole('button', { name: 'So it is, begin' }).click()
}

/** Touches one of a few choices. */
export async function choose(scope: Page | Locator, label: string, option: string): Promise<void> {
  await scope.getByRole('group', { name: label, exact: true }).getByText(option, { exact: true }).click()
}

/** Types one reading on the pad and keeps it. */
export async function typeReading(page: Page, value: number): Promise<void> {
  for (const digit of String(value)) await page.locator('.pad').getByRole('button', { name: digit, exact: true }).click()
  await page.locator('.pad .go').click()
}

/** Reads all cylinders in the order the pad asks for them, by what each cylinder shows. */
export async function readCylinders(page: Page, values: Readonly<Record<number, number>>): Promise<void> {
  for (let read = 0; read < Object.keys(values).length; read += 1) {
    const label = (await page.locator('.hand').getByText(/^Cylinder \d+$/).first().textContent()) ?? ''
    await typeReading(page, values[Number(label.replace(/\D/g, ''))]!)
  }
}
