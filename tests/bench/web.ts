import { gzipSync } from 'node:zlib'
import type { CDPSession, Page } from 'playwright-core'
import { askedFor, digits, gaugeName, keep, sceneOn, stateConditions, tabletBrowser, takeOver } from '../e2e/parts/bay.ts'
import { startBrowser } from '../support/browser.ts'
import { TEST_PASSWORD } from '../support/index.ts'
import { localService } from '../support/local-service.ts'
import type { TestService } from '../support/service.ts'

/** Measures the web in a real browser as a slow tablet would have it, and prints each figure beside its limit. Exit 1 when a size is over. */
const SLOW = { cpu: 4, network: { offline: false, latency: 150, downloadThroughput: (1.6e6 / 8), uploadThroughput: (750e3 / 8) } }
const rows: { what: string; measured: number; limit: number; unit: string }[] = []
const note = (what: string, measured: number, limit: number, unit: string) => rows.push({ what, measured, limit, unit })

async function slow(page: Page, network: boolean): Promise<CDPSession> {
  const session = await page.context().newCDPSession(page)
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOW.cpu })
  if (network) {
    await session.send('Network.enable')
    await session.send('Network.emulateNetworkConditions', SLOW.network)
  }
  return session
}

/** Compressed bytes of the JavaScript that a page fetches, the worker apart. */
function countScripts(page: Page): { total: () => number; worker: () => number } {
  const seen = new Map<string, number>()
  page.on('response', async (response) => {
    if (/[.]js$/.test(new URL(response.url()).pathname)) seen.set(response.url(), gzipSync(await response.body().catch(() => Buffer.alloc(0))).length)
  })
  const sum = (worker: boolean) => [...seen].filter(([url]) => url.includes('/workers/') === worker).reduce((total, [, size]) => total + size, 0)
  return { total: () => sum(false), worker: () => sum(true) }
}

const service = await localService()
// the builders of the scene need the database and the keys only
const scene = await sceneOn(service as unknown as TestService, service.address)
const browser = await startBrowser()
try {
  const first = await browser.newContext({ viewport: { width: 820, height: 1180 }, serviceWorkers: 'block' })
  first.setDefaultTimeout(120_000)
  const cold = await first.newPage()
  const scripts = countScripts(cold)
  await slow(cold, true)
  await cold.goto(`${scene.base}/bay`)
  await cold.getByRole('heading', { level: 1 }).waitFor()
  await cold.waitForTimeout(1000)
  const paint = await cold.evaluate(() => new Promise<number>((resolve) => {
    new PerformanceObserver((list) => resolve(list.getEntries().at(-1)!.startTime)).observe({ type: 'largest-contentful-paint', buffered: true })
    setTimeout(() => resolve(NaN), 5000)
  }))
  note('first screen, largest paint, 4x CPU, 1.6 Mbps, 150 ms', paint, 2000, 'ms')
  note('first screen, JavaScript', scripts.total() / 1000, 90, 'kB')
  await first.close()

  const context = await tabletBrowser(browser, scene)
  context.setDefaultTimeout(120_000)
  const page = await context.newPage()
  await takeOver(page, scene.base, scene.chain.mill.technician.name)
  const job = countScripts(page)
  await page.goto(`${scene.base}/jobs/${scene.job.id}/test`)
  await stateConditions(page, await gaugeName(scene))
  await page.evaluate(async () => void (await navigator.serviceWorker.ready))
  note('test screen of a job, JavaScript', job.total() / 1000, 150, 'kB')
  note('test screen of a job, the diagnosis in its worker (after the first paint)', job.worker() / 1000, Infinity, 'kB')

  await slow(page, false)
  const warm = Date.now()
  await page.reload()
  await page.locator('.entry').waitFor()
  note('warm open from the service worker, 4x CPU', Date.now() - warm, 1000, 'ms')

  let slowest = await slowestKey(page)
  for (let open = 1; open < 3; open += 1) {
    await page.waitForTimeout(500) // what was cleared last is stored
    await page.reload()
    await page.locator('.entry').waitFor()
    slowest = Math.max(slowest, await slowestKey(page))
  }
  note('key press to shown digit, 4x CPU (slowest of thirty, from just after three openings)', slowest, 50, 'ms')
  for (const value of ['155', '160', '129']) {
    const cylinder = await askedFor(page)
    await digits(page, value)
    await keep(page).click()
    await page.waitForFunction((was) => !document.querySelector('.entry label')?.textContent?.endsWith(String(was)), cylinder)
  }
  await page.waitForTimeout(4000)
  await digits(page, '145')
  const [verdict, faults] = await verdictAfterKeep(page)
  note('kept value to updated verdict, 4x CPU', verdict, 200, 'ms')
  note('kept value to the picture of the faults, 4x CPU', faults, Infinity, 'ms')

  note('floor with 200 jobs, live event to change on the screen', await floorUpdate(), 100, 'ms')
} finally {
  await browser.close()
  await service.close()
}

for (const { what, measured, limit, unit } of rows) console.log(`${measured <= limit ? 'ok  ' : 'OVER'} ${what}: ${measured.toFixed(unit === 'kB' ? 1 : 0)} ${unit}${limit === Infinity ? '' : ` (limit ${limit})`}`)
process.exitCode = rows.some(({ unit, measured, limit }) => unit === 'kB' && measured > limit) ? 1 : 0

/** Books 200 jobs, opens the floor, puts one into another bay by the API, and takes the time from its answer to the change on the screen; middle of five. */
async function floorUpdate(): Promise<number> {
  const { mill } = scene.chain
  const desk = { authorization: `Bearer ${mill.frontDesk.token}`, 'content-type': 'application/json' }
  const post = async (path: string, body: object) => (await (await fetch(scene.base + path, { method: 'POST', headers: desk, body: JSON.stringify(body) })).json()) as { id: string; code: string }
  let last = { id: '', code: '' }
  for (let i = 0; i < 200; i += 1) {
    last = await post(`/v1/garages/${mill.id}/jobs`, { customer: { name: `Customer ${i}` }, vehicle: { plate: `BN ${i}`, description: 'grey estate' }, engine: { description: 'four', ownValues: { fuel: 'petrol', layout: 'inline', cylinders: 4 } }, complaint: 'runs on three' })
  }
  const office = await (await browser.newContext()).newPage()
  await office.goto(`${scene.base}/sign-in`)
  await office.getByLabel('E-mail').fill(mill.frontDesk.email)
  await office.getByLabel('Password').fill(TEST_PASSWORD)
  await office.getByRole('button', { name: 'Sign in' }).click()
  await office.getByText('In no bay').waitFor()
  await office.waitForTimeout(3000)
  const taken: number[] = []
  for (let i = 0; i < 5; i += 1) {
    const into = i % 2 === 0
    const seen = office.evaluate(({ code, there }) => new Promise<number>((resolve) => {
      const plan = document.querySelector('section[aria-labelledby="floor"]')!
      const look = () => plan.textContent!.includes(code) === there && resolve(Date.now())
      new MutationObserver(look).observe(plan, { subtree: true, childList: true, characterData: true })
    }), { code: last.code, there: into })
    await post(`/v1/jobs/${last.id}/bay`, { bay: into ? mill.bays[1]! : null })
    const answered = Date.now()
    taken.push((await seen) - answered)
  }
  return taken.sort((a, b) => a - b)[2]!
}

/** Presses ten keys inside the page and takes the slowest time until the frame after the digit stands there. */
function slowestKey(page: Page): Promise<number> {
  return page.evaluate(async () => {
    const input = document.querySelector<HTMLInputElement>('.entry input')!
    const [clear, one] = [...document.querySelectorAll<HTMLButtonElement>('.pad button')].filter((button) => /^(Clear|1)$/.test(button.textContent!.trim())).sort((a) => (a.textContent!.trim() === 'Clear' ? -1 : 1))
    let slowest = 0
    for (let i = 0; i < 10; i += 1) {
      const before = input.value
      const start = performance.now()
      ;(i % 5 === 4 ? clear! : one!).click()
      while (input.value === before) await new Promise(requestAnimationFrame)
      slowest = Math.max(slowest, performance.now() - start)
    }
    clear!.click()
    return slowest
  })
}

/** Keeps the last value by a click inside the page and waits for the first verdict of the verdict page that is not an old one, then for the pictures. */
function verdictAfterKeep(page: Page): Promise<[verdict: number, faults: number]> {
  return page.evaluate(async () => {
    const start = performance.now()
    const until = async (selector: string) => {
      for (;;) {
        await new Promise(requestAnimationFrame)
        const taken = performance.now() - start
        if (document.querySelector(selector)) return taken
        if (taken > 20_000) return NaN
      }
    }
    document.querySelector<HTMLButtonElement>('.pad .go')!.click()
    return [await until('.body:not(.stale) .verdict b'), await until('.body:not(.stale) figure')]
  })
}
