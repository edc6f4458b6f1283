import { expect, test } from 'vitest'
import { methods as de } from '@evenbore/words/de/methods.ts'
import { methods as en } from '@evenbore/words/en/methods.ts'
import { methods as es } from '@evenbore/words/es/methods.ts'
import { cautionsAt } from './cautions.ts'

test('every test has a card in three languages, with steps and a source for what it says', () => {
  for (const cards of [en, de, es])
    for (const [name, card] of Object.entries(cards)) {
      expect(card.steps.length, name).toBeGreaterThan(0)
      expect(card.sources.length, name).toBeGreaterThan(0)
    }
})

test('the languages say as much as each other, and name the same documents', () => {
  const documents = (sources: readonly string[]) => sources.flatMap((source) => source.match(/\b(?:TM|AC) [\d.A-Z&-]+/g) ?? []).sort()
  for (const [name, card] of Object.entries(en)) {
    for (const other of [de, es]) {
      const theirs = other[name as keyof typeof en]
      expect([theirs.steps.length, theirs.mind.length, theirs.sources.length], name).toEqual([card.steps.length, card.mind.length, card.sources.length])
      expect(documents(theirs.sources), name).toEqual(documents(card.sources))
    }
  }
})

test('oil is never suggested for a diesel, petrol mist never warned of there', () => {
  expect(cautionsAt('wet', true)).toContain('oil-in-diesel')
  expect(cautionsAt('wet', true)).not.toContain('wet-test-oil')
  expect(cautionsAt('compression', true)).toEqual(['cranking', 'diesel-spray', 'diesel-gauge'])
  expect(cautionsAt('compression', false)).toEqual(['cranking', 'petrol-mist'])
})
