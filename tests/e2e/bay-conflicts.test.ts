import { AxeBuilder } from '@axe-core/playwright'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { newId, testPerson } from '../support/index.ts'
import { asTechnician, atTheBench, digits, keep, openSignedIn, quietLine, readingsOnServer, type BayScene } from './parts/bay.ts'
import { soon } from './parts/soon.ts'

/** What two people, or a changed permission, make of readings that were taken without network: shown, decided by the technician, never dropped. */
let scene: BayScene
let browser: Browser
let context: BrowserContext
let page: Page
const testPage = () => `${scene.base}/jobs/${scene.job.id}/test`
const quiet = () => quietLine(page)

beforeAll(async () => {
  ;({ scene, browser, context, page } = await atTheBench())
  await page.getByText('all sent', { exact: true }).waitFor()
})
afterAll(async () => {
  await browser?.close()
  await scene?.service.close()
})

test('one cylinder read by two people is shown with both, and the technician says that it was the same crank', async () => {
  const { items } = await asTechnician<{ items: { id: string }[] }>(scene, 'GET', `/v1/jobs/${scene.job.id}/sessions`)
  await context.setOffline(true)
  await page.getByRole('button', { name: /^Cylinder 1/ }).click()
  await digits(page, '155')
  await keep(page).click()
  await soon(quiet).toContain('1 entry kept here')
  const colleague = await testPerson(scene.service, 'Theo Second', [{ garage: scene.chain.mill.id, role: 'technician' }])
  const put = await fetch(`${scene.base}/v1/sessions/${items[0]!.id}/readings/${newId()}`, {
    method: 'PUT', headers: { authorization: `Bearer ${colleague.token}`, 'content-type': 'application/json' },
    body: JSON.stringify({ takenAt: new Date().toISOString(), reading: { test: 'compression', cylinder: 1, pressure: { value: 149, unit: 'psi' }, strokeCount: 10 } }),
  })
  expect(put.status).toBe(201)
  await context.setOffline(false)
  await soon(quiet).toBe('all sent')
  const asked = page.getByText('Theo Second: 149 psi', { exact: false })
  await asked.waitFor()
  expect(await asked.textContent()).toContain(`${scene.chain.mill.technician.name}: 155 psi`)
  expect((await readingsOnServer(scene)).filter(({ current }) => current).length).toBe(2)
  await page.getByRole('button', { name: 'The same crank' }).click()
  await soon(async () => (await readingsOnServer(scene)).filter(({ current, withdrawn }) => current && !withdrawn).length).toBe(1)
  await asked.waitFor({ state: 'detached' })
  expect((await readingsOnServer(scene)).length).toBe(3) // both as they were read, and the row that withdraws one
})

test('a reading of somebody who may no longer write is refused, shown with the reason, and sent again once he may', async () => {
  const { mill, harbour, owner } = scene.chain
  const person = async (method: string, body?: object, version?: number) => {
    const answered = await fetch(`${scene.base}/v1/people/${mill.technician.id}`, { method, headers: { authorization: `Bearer ${owner.token}`, ...(body ? { 'content-type': 'application/json', 'if-match': `"${version}"` } : {}) }, ...(body ? { body: JSON.stringify(body) } : {}) })
    return (await answered.json()) as { version: number }
  }
  const worksAt = async (garage: string) => person('PATCH', { roles: [{ garage, role: 'technician' }] }, (await person('GET')).version)
  const before = (await readingsOnServer(scene)).length
  await openSignedIn(page, testPage())
  await page.locator('.entry').waitFor()
  await context.setOffline(true)
  await page.getByRole('button', { name: /^Cylinder 4/ }).click()
  await digits(page, '147')
  await keep(page).click()
  await soon(quiet).toContain('1 entry kept here')
  await worksAt(harbour.id)
  await context.setOffline(false)
  await soon(quiet).toContain('1 entry needs your word')
  await page.goto(`${scene.base}/bay/waiting`)
  await page.getByRole('heading', { name: /Cylinder 4, 147 psi/ }).waitFor()
  expect(await page.locator('article').textContent()).toContain('may not record readings here any more')
  const { violations } = await new AxeBuilder({ page }).setLegacyMode().withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']).analyze()
  expect(violations.map(({ id }) => id)).toEqual([])
  await worksAt(mill.id)
  await page.getByRole('button', { name: 'Try sending again' }).click()
  await soon(quiet).toBe('all sent')
  const stored = await readingsOnServer(scene)
  expect(stored.length).toBe(before + 1)
  expect(stored.at(-1)).toMatchObject({ offline: true, reading: { cylinder: 4, pressure: { value: 147 } } })
})
