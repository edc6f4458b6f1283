import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { startBrowser } from '../support/browser.ts'
import { testChain, testService, type TestChain, type TestService } from '../support/index.ts'
import { jobAt, need, signInCrew, type Crew } from './parts/stages.ts'
import { demandBuild, openDevice, signIn } from './parts/walk.ts'
import { soon } from './parts/soon.ts'
import { untold } from './parts/untold.ts'

/** The desk for people who magnify, who use no mouse, who want nothing to move, or who listen: see apps/web/SCREEN-READER.md. */
let service: TestService
let chain: TestChain
let crew: Crew
let browser: Browser
let page: Page
let sent: string
let testing: string
const errors: string[] = []

beforeAll(async () => {
  demandBuild()
  service = await testService()
  chain = await testChain(service)
  const baseUrl = await service.listen()
  crew = await signInCrew(baseUrl, chain)
  const garage = { params: { path: { garage: chain.mill.id } } }
  const gauge = await need(crew.owner.POST('/v1/garages/{garage}/gauges', { ...garage, body: { kind: 'compression', name: 'Gauge 4', specification: { span: { value: 300, unit: 'psi' }, accuracyClass: 1.6 } } }))
  sent = await jobAt('sent', crew, chain.mill.id, gauge.id, { plate: 'BL 19', vehicle: 'blue saloon', customer: 'Ana Castel', complaint: 'Loses water', bay: chain.mill.bays[0]! })
  testing = await jobAt('testing', crew, chain.mill.id, gauge.id, { plate: 'FX 204 B', vehicle: 'grey estate', customer: 'Milo Ondrej', complaint: 'Runs on three', bay: chain.mill.bays[1]! })
  browser = await startBrowser()
  page = await openDevice(browser, baseUrl, 'desk', errors)
  await signIn(page, chain.mill.manager)
})
afterAll(async () => {
  await browser?.close()
  await service?.close()
})

const desk = (): readonly (readonly [string, RegExp])[] => [
  ['/', /Waits for a yes/], ['/book-in', /Registration plate/], [`/jobs/${testing}`, /Not within/], [`/jobs/${sent}/decide`, /Not within/], [`/jobs/${testing}/quote`, /From the catalogue/],
  [`/jobs/${testing}/hand-over`, /Hand over|cannot/], ['/search?q=fx', /One job/], ['/decisions', /sent/], ['/retests', /Retests/], ['/customers', /Ana Castel/], ['/vehicles', /BL 19/], ['/engines', /four in line/], ['/reliability', /right/], ['/settings/me', /Sign out/], ['/settings/gauges', /Gauge 4/],
]

test('at 200 percent no desk screen loses anything or scrolls sideways', async () => {
  // a window of 1280 by 800 magnified twice
  await page.setViewportSize({ width: 640, height: 400 })
  for (const [path, text] of desk()) {
    await page.goto(path)
    await page.getByText(text).filter({ visible: true }).first().waitFor()
    const over = await page.evaluate(() => {
      const wide = document.documentElement.scrollWidth - innerWidth
      // what stands beyond the right edge, outside anything that scrolls by itself
      const out = [...document.querySelectorAll<HTMLElement>('main *, header *, nav *')].filter((part) => {
        const { right, width } = part.getBoundingClientRect()
        return width > 1 && right > innerWidth + 1 && !part.closest('.unseen, svg') && ![...ancestors(part)].some((up) => /auto|scroll/.test(getComputedStyle(up).overflowX))
      })
      return { wide, out: out.slice(0, 3).map((part) => `${part.tagName} ${part.className} ${part.textContent?.slice(0, 30)}`) }
      function* ancestors(part: HTMLElement): Generator<HTMLElement> {
        for (let up = part.parentElement; up; up = up.parentElement) yield up
      }
    })
    expect(over, path).toEqual({ wide: expect.toSatisfy((px: number) => px <= 0) as number, out: [] })
  }
  await page.setViewportSize({ width: 1280, height: 800 })
})

test('nothing moves for who wants nothing to move', async () => {
  await page.emulateMedia({ reducedMotion: 'reduce' })
  for (const [path, text] of desk().slice(0, 4)) {
    await page.goto(path)
    await page.getByText(text).filter({ visible: true }).first().waitFor()
    const moving = await page.evaluate(() => [...document.querySelectorAll('*')].filter((part) => {
      const style = getComputedStyle(part)
      return style.animationName !== 'none' || style.transitionDuration.split(',').some((time) => parseFloat(time) > 0.01)
    }).map((part) => `${part.tagName} ${part.className}`))
    expect(moving, path).toEqual([])
  }
})

test('from the floor to an approved quote by keyboard alone', async () => {
  await page.goto('/')
  await page.getByRole('heading', { name: 'The floor' }).waitFor()
  await page.keyboard.press('Tab')
  expect(await focused()).toBe('To the content')
  await page.keyboard.press('Enter')
  await tabTo(/BL 19|K|blue saloon/, `a[href="/jobs/${sent}"]`)
  await page.keyboard.press('Enter')
  await page.waitForURL(`**/jobs/${sent}`)
  await tabTo(/Look and decide/)
  await page.keyboard.press('Enter')
  await page.waitForURL(`**/decide`)
  await page.getByRole('button', { name: 'Refuse' }).waitFor()
  await soon(() => untold(page, [/table "Quote 1"/, /button "Send back with a question"/, /button "Refuse"/])).toEqual([])
  await tabTo(/^Approve/)
  expect(await page.evaluate(() => getComputedStyle(document.activeElement!).outlineStyle)).toBe('solid')
  await page.keyboard.press('Enter')
  await page.getByText(/approved/i).filter({ visible: true }).first().waitFor()
})

/** Names and roles that the written walk promises, page by page. */
const walk = (): readonly (readonly [string, RegExp, readonly RegExp[]])[] => [
  ['/', /The floor/, [/link "To the content"/, /navigation "Where to go"/, /searchbox "Find by plate, code, name"/, /heading "The floor" \[level=1\]/, /link "M \d .*estate.* being tested since/, /heading "Waits for a yes" \[level=2\]/]],
  ['/book-in', /Registration plate/, [/heading "Book in" \[level=1\]/, /textbox "Registration plate"/, /textbox "What it is, in a few words"/, /textbox "Complaint, in the customer’s words"/, /button "Book in"/]],
  [`/jobs/${testing}`, /Not within/, [/heading "Being tested since .*" \[level=1\]/, /region "What the evidence says"/, /img "Engine plan, seen from above, front at the left"/, /row "Cylinder 3 129 low"/, /table "Spread of the readings/, /row "Cylinder 3 129 ± [\d.]+ outside the limit"/, /table "Readings of Test"/, /heading "Complaint" \[level=2\]/, /button "Correct the booking"/]],
  [`/jobs/${testing}/quote`, /From the catalogue/, [/heading "Quote" \[level=1\]/, /region "What the evidence carries"/, /button "Send to the manager"/]],
]

test('what a screen reader is told at the desk is what the walk says', async () => {
  for (const [path, there, promised] of walk()) {
    await page.goto(path)
    await page.getByText(there).filter({ visible: true }).first().waitFor()
    await soon(() => untold(page, promised)).toEqual([])
  }
})

test('no screen threw an error', () => {
  expect(errors).toEqual([])
})

const focused = () => page.evaluate(() => document.activeElement?.textContent?.trim() ?? '')

/** Tabs on until what has the focus says so (and is what the selector names). */
async function tabTo(says: RegExp, selector = '*'): Promise<void> {
  for (let step = 0; step < 90; step += 1) {
    await page.keyboard.press('Tab')
    const [text, fits] = await page.evaluate((of) => [document.activeElement?.textContent?.trim() ?? '', document.activeElement?.matches(of) ?? false] as const, selector)
    if (fits && says.test(text)) return
  }
  throw new Error(`No way by Tab to ${says.source}`)
}
