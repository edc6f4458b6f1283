import { AxeBuilder } from '@axe-core/playwright'
import type { Browser, Page, Route } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { startBrowser } from '../support/browser.ts'
import { askedFor, bayScene, digits, gaugeName, keep, stateConditions, tabletBrowser, takeOver, type BayScene } from './parts/bay.ts'
import { soon } from './parts/soon.ts'

/** Every screen of the bay: what a glove can hit, what axe finds in each theme, and that nothing scrolls sideways however the tablet is held. */
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']
const SIZES = { portrait: { width: 820, height: 1180 }, landscape: { width: 1180, height: 820 }, phone: { width: 390, height: 844 } } as const
let scene: BayScene
let browser: Browser
let page: Page
let stranger: Page

beforeAll(async () => {
  ;[scene, browser] = await Promise.all([bayScene(), startBrowser()])
  const context = await tabletBrowser(browser, scene)
  page = await context.newPage()
  await takeOver(page, scene.base, scene.chain.mill.technician.name)
  await page.goto(`${scene.base}/jobs/${scene.job.id}/test`)
  await stateConditions(page, await gaugeName(scene))
  for (const value of ['155', '160', '129', '145']) {
    const cylinder = await askedFor(page)
    await digits(page, value)
    await keep(page).click()
    await page.waitForFunction((was) => location.pathname.endsWith('/verdict') || !document.querySelector('.entry label')?.textContent?.endsWith(String(was)), cylinder)
  }
  stranger = await (await browser.newContext({ hasTouch: true, viewport: SIZES.portrait, locale: 'en-GB' })).newPage()
})
afterAll(async () => {
  await browser?.close()
  await scene?.service.close()
})

const at = (test: string) => `/jobs/${scene.job.id}/test?test=${test}`
/** Name, where, what stands there, and what is pressed first. */
const screens: readonly (readonly [name: string, path: () => string, text: RegExp, press?: string])[] = [
  ['bay', () => '/bay', /Dry compression/],
  ['waiting', () => '/bay/waiting', /sent|waiting/i],
  ['dry', () => at('compression'), /Cylinder 1/],
  ['wet', () => at('wet'), /Cylinder 1/],
  ['strokes counted', () => at('compression'), /strokes/i, 'count'],
  ['wrong cylinder', () => at('compression'), /Belongs to/, 'Wrong cylinder?'],
  ['method card', () => at('compression'), /ten strokes|compression strokes|strokes/i, 'How it is done'],
  ['tests', () => at('compression'), /What next/i, 'Tests'],
  ['conditions', () => at('compression'), /So it is, begin/, 'Change'],
  ['leakage', () => at('leakage'), /How loud/],
  ['plugs', () => at('plug'), /after a run/i],
  ['borescope', () => at('borescope'), /Keep it/],
  ['clearances', () => at('clearance'), /tight/],
  ['vacuum', () => at('vacuum'), /steady/],
  ['cranking current', () => at('cranking-current'), /Keep it/],
  ['observation', () => at('observation'), /Keep it/],
  ['verdict', () => `/jobs/${scene.job.id}/test/verdict`, /Next, worth its time/],
  ['verdict, other test', () => `/jobs/${scene.job.id}/test/verdict`, /Why not/, 'Something else'],
]

test.each(screens.map(([name, path, text, press]) => ({ name, path, text, press })))('$name', async ({ name, path, text, press }) => {
  await page.setViewportSize(SIZES.portrait)
  await page.goto(scene.base + path())
  if (press) await page.getByRole('button', { name: press }).first().click()
  await page.getByText(text).filter({ visible: true }).first().waitFor()
  await look(page, name)
})

test('a job that does not come, or is nobody’s here to see, is said so, and asked for again', async () => {
  const fresh = await (await tabletBrowser(browser, scene)).newPage()
  await takeOver(fresh, scene.base, scene.chain.mill.technician.name)
  let status = 500
  const answer = async (route: Route) => route.fulfill({ status, contentType: 'application/problem+json', body: JSON.stringify({ type: 'about:blank', title: 'Broken', status }) })
  await fresh.route(`**/v1/jobs/${scene.job.id}`, answer)
  // nothing of this job is kept on this tablet yet
  // away from the program, which may still be keeping what it was told when it took over
  await fresh.goto(`${scene.base}/v1/openapi.json`)
  await fresh.evaluate(() => new Promise((done) => { const wipe = indexedDB.open('evenbore'); wipe.onsuccess = () => { const clear = wipe.result.transaction('kept', 'readwrite').objectStore('kept').clear(); clear.onsuccess = () => { wipe.result.close(); done(undefined) } } }))
  await fresh.goto(`${scene.base}/jobs/${scene.job.id}/test`)
  const alert = fresh.getByRole('alert')
  await alert.getByText('That did not work').waitFor()
  status = 403
  await alert.getByRole('button', { name: 'Try again' }).click()
  await alert.getByText('You may not see this').waitFor()
  await fresh.unroute(`**/v1/jobs/${scene.job.id}`, answer)
  await alert.getByRole('button', { name: 'Try again' }).click()
  await fresh.getByRole('heading', { name: 'Dry compression' }).waitFor()
  await fresh.context().close()
})

test('a tablet that belongs nowhere yet', async () => {
  await stranger.goto(`${scene.base}/bay`)
  await stranger.getByLabel('One-time code').waitFor()
  await look(stranger, 'enrol')
})

test('who is working here, and the PIN', async () => {
  await page.setViewportSize(SIZES.portrait)
  await page.goto(`${scene.base}/bay`)
  await page.getByRole('button', { name: 'Hand over the tablet' }).click()
  await page.getByRole('button', { name: scene.chain.mill.technician.name }).click()
  await page.getByRole('button', { name: 'Take over' }).waitFor()
  await look(page, 'PIN')
})

async function look(on: Page, name: string): Promise<void> {
  for (const theme of ['paper', 'dark', 'sunlight'] as const) {
    await on.evaluate((chosen) => void (document.documentElement.dataset['theme'] = chosen), theme)
    const axe = new AxeBuilder({ page: on }).setLegacyMode()
    const { violations } = await (theme === 'paper' ? axe.withTags(RULES) : axe.withRules(['color-contrast'])).analyze()
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => String(target)).join(' | ')}`), `${name}, ${theme}`).toEqual([])
  }
  for (const [held, size] of Object.entries(SIZES)) {
    await on.setViewportSize(size)
    await soon(() => on.evaluate(() => innerWidth)).toBe(size.width)
    const found = await on.evaluate(() => ({
      wide: document.documentElement.scrollWidth - innerWidth,
      small: [...document.querySelectorAll<HTMLElement>('button, a[href], select, textarea, input:not([type=radio], [type=checkbox], [type=file]), label:has(input), summary')]
        .filter((part) => part.checkVisibility({ opacityProperty: true, visibilityProperty: true }) && !part.closest('.unseen, p, .entry') && !part.matches('.unseen, .skip'))
        .map((part) => ({ part: `${part.tagName} ${part.textContent?.trim().slice(0, 30)}`, box: part.getBoundingClientRect() }))
        .filter(({ box }) => box.width > 0 && (box.height < 43.5 || box.width < 43.5))
        .map(({ part, box }) => `${part}: ${Math.round(box.width)} x ${Math.round(box.height)}`),
    }))
    expect(found.wide, `${name}, ${held}: scrolls sideways`).toBeLessThanOrEqual(0)
    expect(found.small, `${name}, ${held}: too small for a glove`).toEqual([])
  }
}
