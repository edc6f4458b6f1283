import { startBrowser } from './support/browser.ts'
const path = process.argv[2] ?? '/bay'
const browser = await startBrowser()
const ctx = await browser.newContext({ viewport: { width: 820, height: 1180 }, serviceWorkers: 'block' })
ctx.setDefaultTimeout(120000)
const page = await ctx.newPage()
const s = await page.context().newCDPSession(page)
await s.send('Emulation.setCPUThrottlingRate', { rate: Number(process.env.RATE ?? 4) })
await s.send('Network.enable')
await s.send('Network.emulateNetworkConditions', { offline: false, latency: 150, downloadThroughput: 1.6e6/8, uploadThroughput: 750e3/8 })
await page.goto('http://127.0.0.1:4391' + path)
await page.getByRole('heading', { level: 1 }).waitFor()
await page.waitForTimeout(1500)
const out = await page.evaluate(() => new Promise<any>((resolve) => {
  new PerformanceObserver((list) => resolve({ lcp: list.getEntries().map((e: any) => [Math.round(e.startTime), e.element?.tagName, e.element?.textContent?.slice(0,30)]), nav: [performance.getEntriesByType('navigation')[0]].map((n: any) => [Math.round(n.responseStart), Math.round(n.domContentLoadedEventEnd)]), res: performance.getEntriesByType('resource').map((r: any) => `${Math.round(r.startTime)} ${Math.round(r.requestStart)} ${Math.round(r.responseEnd)} ${r.encodedBodySize} ${r.name.split('/').slice(-2).join('/')}`), paints: performance.getEntriesByType('paint').map((p) => [p.name, Math.round(p.startTime)]) })).observe({ type: 'largest-contentful-paint', buffered: true })
}))
console.log(JSON.stringify(out.lcp), JSON.stringify(out.paints), JSON.stringify(out.nav)); if (process.argv[3]) console.log(out.res.join('\n')); console.log(out.res.length)
await browser.close()
