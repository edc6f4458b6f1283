import type { Page, Route } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { deskScene, screens, type DeskScene } from './parts/desk.ts'
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

test.each(asked)('%s says what is on its way, what failed and what is forbidden, and asks again', async (name, role, path, text) => {
  const page = scene.pages.get(role)!
  await page.bringToFront()
  const line = await between(page)
  try {
    await page.goto(await path(scene))
    await page.getByText('Fetching…').or(page.getByText('Reckoning…')).filter({ visible: true }).first().waitFor()
    await line.letGo()
    const alerts = page.getByRole('alert')
    await alerts.getByText('That did not work').first().waitFor()
    const again = alerts.getByRole('button', { name: 'Try again' })
    let forbidden = false
    // one answer may bring others that were not asked for before: it is still for half a second once all of them are there
    for (let still = 0; still < 5; ) {
      forbidden ||= (await alerts.getByText('You may not see this.').count()) > 0
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
    expect(forbidden, `${name} says what is forbidden`).toBe(true)
  } finally {
    await line.stop()
  }
})
