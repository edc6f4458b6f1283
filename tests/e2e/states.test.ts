import type { Page, Route } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { deskScene, screens, type DeskScene } from './parts/desk.ts'
import { jobAt } from './parts/stages.ts'
import { soon } from './parts/soon.ts'

/**
 * Slow, failed and forbidden: every answer that a screen asks for is first kept waiting, then fails, then is forbidden, then comes.
 * The screen must say each of these, and offer each answer again: what fails in silence looks like "there is none".
 */
let scene: DeskScene

beforeAll(async () => {
  scene = await deskScene()
})
afterAll(() => scene?.close())

/** Who is signed in, and the line of live events, are not a screen's own. */
const ofTheApp = /^\/v1\/(me|events)\b/
/** Screens that show a refusal or a missing thing are what they are. */
const asked = screens.filter(([name]) => !['forbidden', 'gone', 'search-nothing', 'settings-me'].includes(name))

const problem = (status: number) => ({ status, contentType: 'application/problem+json', body: JSON.stringify({ type: 'about:blank', title: status === 403 ? 'Not permitted' : 'Broken', status }) })

/** Stands between the page and the service: how often each address was asked, and what waits for `let go`. */
async function between(page: Page): Promise<{ readonly times: Map<string, number>; letGo(): Promise<void>; stop(): Promise<void> }> {
  const times = new Map<string, number>()
  let waiting: Route[] | undefined = []
  const handler = async (route: Route) => {
    const { pathname, search } = new URL(route.request().url())
    if (route.request().method() !== 'GET' || ofTheApp.test(pathname)) return route.fallback()
    const time = (times.get(pathname + search) ?? 0) + 1
    times.set(pathname + search, time)
    if (time > 2) return route.fallback()
    if (time === 2) return route.fulfill(problem(403))
    if (waiting) waiting.push(route)
    else await route.fulfill(problem(500))
  }
  await page.route('**/v1/**', handler)
  return {
    times,
    letGo: async () => {
      const first = waiting ?? []
      waiting = undefined
      await Promise.all(first.map((route) => route.fulfill(problem(500))))
    },
    stop: () => page.unroute('**/v1/**', handler),
  }
}

/** Keeps all that alerts say from now on: a refusal may stand for no longer than the next answer takes. Runs in the page. */
function keepWhatAlertsSay(): void {
  const kept = ((globalThis as { alertsSaid?: Set<string> }).alertsSaid = new Set<string>())
  const look = () => document.querySelectorAll('[role="alert"]').forEach((alert) => kept.add(alert.textContent ?? ''))
  new MutationObserver(look).observe(document.body, { subtree: true, childList: true, characterData: true })
}

test.each(asked)('%s says what is on its way, what failed and what is forbidden, and asks again', async (name, role, path, text) => {
  const page = scene.pages.get(role)!
  await page.bringToFront()
  const line = await between(page)
  try {
    await page.goto(await path(scene))
    await page.getByText('Fetching…').or(page.getByText('Reckoning…')).filter({ visible: true }).first().waitFor()
    await page.evaluate(keepWhatAlertsSay)
    await line.letGo()
    const alerts = page.getByRole('alert')
    await alerts.getByText('That did not work').first().waitFor()
    const again = alerts.getByRole('button', { name: 'Try again' })
    // one answer may bring others that were not asked for before: it is still for half a second once all of them are there
    for (let still = 0; still < 5; ) {
      if (await again.count()) {
        still = 0
        // the answer to the press before may just take it away
        await again.first().click({ timeout: 500 }).catch(() => undefined)
      } else still += 1
      await page.waitForTimeout(still ? 100 : 20)
    }
    await page.getByText(text).filter({ visible: true }).first().waitFor()
    await soon(() => page.getByText('Fetching…').count()).toBe(0)
    expect([...line.times].filter(([, times]) => times < 3).map(([address]) => address), `${name}: failed, and is not asked for again`).toEqual([])
    const said = await page.evaluate(() => [...(globalThis as { alertsSaid?: Set<string> }).alertsSaid!])
    expect(said.join(), `${name} says what is forbidden`).toContain('You may not see this.')
  } finally {
    await line.stop()
  }
})

test('what takes long is said to be slow', async () => {
  const page = scene.pages.get('frontDesk')!
  await page.bringToFront()
  const line = await between(page)
  try {
    await page.goto('/retests')
    await page.getByText('Still fetching; the connection is slow.').waitFor()
    await line.letGo()
    await page.getByRole('alert').getByText('That did not work').waitFor()
  } finally {
    await line.stop()
  }
})

/** Forms that begin with what a record says, or open on demand: who fills which field, where, after which press. */
const forms: readonly (readonly [name: string, role: 'frontDesk' | 'technician' | 'manager' | 'owner', path: (scene: DeskScene) => Promise<string> | string, open: string | undefined, field: string | RegExp])[] = [
  ['book-in', 'frontDesk', screen('book-in'), undefined, 'Registration plate'],
  ['customer', 'frontDesk', screen('customer'), undefined, 'Note'],
  ['vehicle', 'frontDesk', screen('vehicle'), undefined, 'What it is, in a few words'],
  ['findings', 'technician', screen('findings'), undefined, 'As it was seen'],
  ['hand-over', 'frontDesk', screen('hand-over'), undefined, 'Note'],
  ['decline a suggestion', 'technician', screen('job-testing'), 'Something else', 'Why not'],
  ['a question about a quote', 'manager', screen('decide'), 'Send back with a question', 'What should be answered'],
  ['garage', 'owner', screen('settings-garage'), undefined, 'Name'],
  ['new bay', 'owner', screen('settings-bays'), 'New bay', 'Name'],
  ['new gauge', 'owner', screen('settings-gauges'), 'New gauge', 'Name'],
  ['catalogue', 'owner', screen('settings-catalogue'), 'Change', 'Name'],
  ['family', 'owner', screen('settings-families'), 'Change', 'Name'],
  ['new person', 'owner', screen('settings-people'), 'New person', 'Name'],
  ['new app', 'owner', screen('settings-apps'), 'New outside app', 'Name'],
]

test.each(forms)('what is half-written in %s survives one reload and another', async (_name, role, path, open, field) => {
  const page = scene.pages.get(role)!
  await page.bringToFront()
  const form = page.locator('main').getByLabel(field).first()
  const opened = () => (open ? page.getByRole('button', { name: open }).first().click() : undefined)
  await page.goto(await path(scene))
  await opened()
  const before = await form.inputValue()
  await form.fill(`${before} half`)
  // twice: what was put back is as half-written as before
  for (let reload = 0; reload < 2; reload += 1) {
    await page.reload()
    await opened()
    await soon(() => form.inputValue()).toBe(`${before} half`)
  }
})

/** The second garage of the chain has done nothing yet: each list says so, and what would put something there. */
const empty: readonly (readonly [path: string, text: readonly string[]])[] = [
  ['/', ['Nobody is waited for.', 'No retest is due.', 'Nothing is ready yet.']],
  ['/decisions', ['No quote waits for an answer.']],
  ['/retests', ['No retest is promised.']],
  ['/customers', ['No customer is kept here.']],
  ['/vehicles', ['No vehicle is kept here.']],
  ['/reliability', ['There is no finding to judge by yet.']],
  ['/settings/gauges', ['None yet.']],
  ['/settings/catalogue', ['None yet.']],
  ['/settings/tablets', ['None yet.']],
  ['/settings/deputies', ['None yet.']],
]

test.each(empty)('%s says that there is nothing yet', async (path, texts) => {
  const page = scene.pages.get('owner')!
  await page.bringToFront()
  await page.goto('/')
  await page.getByLabel('Garage').selectOption({ label: 'Harbour Street' })
  await page.goto(path)
  for (const text of texts) await page.getByText(text).first().waitFor()
})

test('a job just booked says of every part that there is nothing yet', async () => {
  const page = scene.pages.get('frontDesk')!
  await page.bringToFront()
  const job = await jobAt('booked', scene.crew, scene.chain.mill.id, '', { plate: 'NW 1', vehicle: 'new here', customer: 'Nell Wick', complaint: 'None yet' })
  await page.goto(`/jobs/${job}`)
  for (const text of ['Nothing has been read yet.', 'No session yet. One opens with the first test.', 'No parts ordered.', 'Nothing noted yet.', 'No quote']) await page.getByText(text).first().waitFor()
  for (const [sheet, text] of [['test-record', 'Nothing has been read yet.'], ['quote', 'No version has been sent']] as const) {
    await page.goto(`/jobs/${job}/print/${sheet}`)
    await page.getByText(text).first().waitFor()
    expect(await page.getByRole('alert').count(), `${sheet} shows no failure`).toBe(0)
  }
})

function screen(name: string): (typeof screens)[number][2] {
  return screens.find(([called]) => called === name)![2]
}
