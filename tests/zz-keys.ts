import { askedFor, digits, gaugeName, keep, sceneOn, stateConditions, tabletBrowser, takeOver } from './e2e/parts/bay.ts'
import { startBrowser } from './support/browser.ts'
import { localService } from './support/local-service.ts'
const service = await localService()
const scene = await sceneOn(service as any, service.address)
const browser = await startBrowser()
const context = await tabletBrowser(browser, scene)
const page = await context.newPage()
await takeOver(page, scene.base, scene.chain.mill.technician.name)
await page.goto(`${scene.base}/jobs/${scene.job.id}/test`)
await stateConditions(page, await gaugeName(scene))
for (const value of ['155', '160']) { const c = await askedFor(page); await digits(page, value); await keep(page).click(); await page.waitForFunction((was) => !document.querySelector('.entry label')?.textContent?.endsWith(String(was)), c) }
await page.waitForTimeout(3000)
const s = await context.newCDPSession(page)
await s.send('Profiler.enable'); await s.send('Profiler.setSamplingInterval', { interval: 200 })
await s.send('Profiler.start')
await page.evaluate(async () => {
  const [clear, one] = [...document.querySelectorAll<HTMLButtonElement>('.pad button')].filter((b) => /^(Clear|1)$/.test(b.textContent!.trim())).sort((a) => (a.textContent!.trim() === 'Clear' ? -1 : 1))
  for (let i = 0; i < 40; i++) { (i % 5 === 4 ? clear! : one!).click(); await new Promise(requestAnimationFrame); await new Promise((r) => setTimeout(r, 5)) }
})
const { profile } = await s.send('Profiler.stop')
const self = new Map<string, number>()
const dt = profile.timeDeltas!
profile.samples!.forEach((id, i) => { const n = profile.nodes.find((x) => x.id === id)!; const k = `${n.callFrame.functionName || '(anon)'} ${n.callFrame.url.split('/').at(-1)}:${n.callFrame.lineNumber}:${n.callFrame.columnNumber}`; self.set(k, (self.get(k) ?? 0) + dt[i]! / 1000) })
console.log([...self].sort((a, b) => b[1] - a[1]).slice(0, 22).map(([k, v]) => `${v.toFixed(1)} ${k}`).join('\n'))
const m = await s.send('Performance.enable').then(() => s.send('Performance.getMetrics'))
console.log(m.metrics.filter((x) => /Duration|Count|Nodes/.test(x.name)).map((x) => `${x.name}=${x.value.toFixed(3)}`).join(' '))
await browser.close(); await service.close()
