import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { Entry } from './entry.ts'
import { FAULTS } from './faults.ts'
import { defaultKnowledge, knowledgeHash } from './knowledge.ts'
import { knowledgePage } from './page.ts'

const entries = Object.entries(defaultKnowledge).flatMap(([table, rows]) =>
  typeof rows === 'string' ? [] : Object.entries(rows).map(([name, e]) => [`${table}.${name}`, e as Entry<unknown>] as const))

describe('the knowledge tables', () => {
  it.each(entries)('%s says what it is based on', (_, e) => {
    expect(typeof e.basis).toBe('string')
    expect(e.basis.length).toBeGreaterThan(5)
    expect(e).toHaveProperty('value')
  })

  it('know every fault of the contract, in its order', () => {
    expect(Object.keys(defaultKnowledge.faults)).toEqual([...FAULTS])
  })

  it('give each leaking fault listening points that sum to one', () => {
    for (const { value } of Object.values(defaultKnowledge.faults)) {
      if (value.leaks) expect(Object.values(value.escapes).reduce((sum, w) => sum + w, 0)).toBeCloseTo(1, 9)
    }
  })

  it('give each look chances that sum to one', () => {
    const { sound, faults } = defaultKnowledge.plugs.appearance.value
    for (const chances of [sound, defaultKnowledge.plugs.ignition.value, defaultKnowledge.plugs.dead.value.looks, ...Object.values(faults), ...Object.values(defaultKnowledge.vacuum).map((e) => e.value)]) {
      expect(Object.values(chances).reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 9)
    }
  })

  it('have a hash that changes with any value', () => {
    const changed = { ...defaultKnowledge, population: { ...defaultKnowledge.population, faultyCylinder: { ...defaultKnowledge.population.faultyCylinder, value: 0.2 } } }
    expect(knowledgeHash(changed)).not.toBe(knowledgeHash(defaultKnowledge))
  })

  it('are the ones on the page KNOWLEDGE.md (npm run -s knowledge -w @evenbore/diagnosis)', () => {
    expect(readFileSync(new URL('../../KNOWLEDGE.md', import.meta.url), 'utf8')).toBe(knowledgePage(defaultKnowledge))
  })
})
