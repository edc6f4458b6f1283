import { testService, type TestService } from '@evenbore/tests/support'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { OpenApiDocument } from './openapi.ts'

let service: TestService
let document: OpenApiDocument
beforeAll(async () => {
  service = await testService()
  document = (await request(service.server).get('/v1/openapi.json').expect(200)).body
})
afterAll(() => service.close())

const operations = () => Object.entries(document.paths).flatMap(([path, methods]) => Object.entries(methods).map(([method, operation]) => ({ name: `${method} ${path}`, operation })))

describe('the published document', () => {
  test('is OpenAPI 3.1', () => expect(document).toMatchObject({ openapi: '3.1.0', info: { title: 'Evenbore' } }))

  test('says of every route what it is for and which permission it takes', () => {
    expect(operations().length).toBeGreaterThan(20)
    for (const { name, operation } of operations()) {
      expect(operation.summary, name).toBeTruthy()
      expect(operation.tags?.length, name).toBeGreaterThan(0)
      expect(operation['x-action'], name).toBeTruthy()
    }
  })

  test('refers to nothing that it does not hold', () => {
    const names = [...JSON.stringify(document).matchAll(/"#\/components\/schemas\/([^"]+)"/g)].map(([, name]) => name ?? '')
    expect(names.length).toBeGreaterThan(50)
    for (const name of new Set(names)) expect(document.components.schemas, name).toHaveProperty([name])
  })
})

describe('the readable documentation', () => {
  test.each(['/docs', '/docs/reference', '/docs/problems', '/docs/events', '/docs/limits'])('%s is a page without scripts', async (path) => {
    const { text, headers } = await request(service.server).get(path).expect(200)
    expect(headers['content-type']).toContain('text/html')
    expect(text).not.toContain('<script')
  })

  test('names every path', async () => {
    const { text } = await request(service.server).get('/docs/reference')
    for (const path of Object.keys(document.paths)) expect(text).toContain(path)
  })
})
