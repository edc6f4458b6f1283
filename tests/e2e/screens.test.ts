import { mkdirSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { AxeBuilder } from '@axe-core/playwright'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { deskScene, screens, type DeskScene } from './parts/desk.ts'
import { soon } from './parts/soon.ts'
import { openDevice, SIZES } from './parts/walk.ts'

/**
 * Every screen of desk and office, by whoever uses it, at both sizes and in both themes: pictures into tests/shots (git-ignored), and
 * axe on each in both themes, by the rules of WCAG 2.2 AA.
 */
const SHOTS = resolve(import.meta.dirname, '..', 'shots')
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']

let scene: DeskScene

beforeAll(async () => {
  mkdirSync(SHOTS, { recursive: true })
  scene = await deskScene()
})
afterAll(() => scene?.close())

test.each(screens)('%s can be used by everyone, in both themes', async (name, role, path, text) => {
  const page = scene.pages.get(role)!
  // a window behind another one paints late, and its pictures would show old ink
  await page.bringToFront()
  await page.setViewportSize(SIZES.desk)
  await page.goto(await path(scene))
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

test.each(['/sign-in', '/second-factor', '/owner', '/owner/back', '/nothing-here'])('the door %s can be used by everyone, in both themes', async (path) => {
  // a second factor is set up by somebody who is signed in; the other doors are for nobody yet
  const page = path === '/second-factor' ? await scene.pages.get('manager')!.context().newPage() : await openDevice(scene.browser, new URL(scene.pages.get('owner')!.url()).origin, 'desk', scene.errors)
  await page.goto(path)
  await page.getByRole('heading', { level: 1 }).waitFor()
  for (const theme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme: theme })
    const { violations } = await new AxeBuilder({ page }).setLegacyMode().withTags(RULES).analyze()
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => String(target)).join(' | ')}`), `${path}, ${theme}`).toEqual([])
  }
  await page.close()
})

test('no screen threw an error', () => {
  expect(scene.errors).toEqual([])
})

test('a person who is signed out is asked to sign in, and comes back to where he was', async () => {
  const page = await openDevice(scene.browser, new URL(scene.pages.get('owner')!.url()).origin, 'desk', scene.errors)
  await page.goto('/retests')
  await page.waitForURL(/\/sign-in\?to=%2Fretests/)
  await page.screenshot({ path: join(SHOTS, 'sign-in-desk-light.png') })
  const { violations } = await new AxeBuilder({ page }).setLegacyMode().withTags(RULES).analyze()
  expect(violations.map(({ id }) => id)).toEqual([])
  await page.getByLabel('E-mail').fill(scene.chain.mill.frontDesk.email)
  await page.getByLabel('Password').fill('wrong and wrong again')
  await page.getByRole('button', { name: 'Sign in' }).click()
  await page.getByText('E-mail and password do not fit together.').waitFor()
})
