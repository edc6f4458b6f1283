import type { Case } from '@evenbore/contract'
import { describe, expect, it } from 'vitest'
import { admit } from '../admission/admit.ts'
import { evaluate } from '../evaluate.ts'
import { defaultKnowledge } from '../knowledge/knowledge.ts'
import { unreleasedChances } from './unreleased.ts'

/** Dry readings in the order taken, in psi, with first strokes where given. */
function four(psi: readonly number[], first: readonly number[] = []): Case {
  return {
    engine: { fuel: 'petrol', layout: 'inline', cylinders: psi.length, boreMm: 80, strokeMm: 80, compressionRatio: 9 },
    conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 6 },
    readings: psi.map((value, i) => ({
      test: 'compression', cylinder: i + 1, pressure: { value, unit: 'psi' }, seq: i + 1,
      ...(first[i] === undefined ? {} : { firstStroke: { value: first[i], unit: 'psi' } }),
    })),
  } as Case
}

const chances = (given: Case) => unreleasedChances(admit(given).compression, defaultKnowledge)
const soundOf = (given: Case) => evaluate(given).cylinders.map(({ sound }) => sound)

describe('a gauge that was not released', () => {
  it('is as likely as the orders that rise by chance leave it: 1 in 24 for four that differ, 4 in 24 with three alike (counting)', () => {
    const before = defaultKnowledge.noise.unreleased.value.chance
    const chanceFor = (risesByChance: number): number => before / (before + (1 - before) * risesByChance)
    // the last reading is within a mark of the one before it, the others rise by more
    expect(chances(four([140, 146, 152, 152.5])).get(3)).toBeCloseTo(chanceFor(1 / 24), 12)
    expect([...chances(four([140, 146, 152, 152.5])).keys()]).toEqual([3])
    expect(chances(four([140, 150, 150, 150])).get(2)).toBeCloseTo(chanceFor(6 / 24), 12)
  })

  it('is out of the question once a reading falls, and no part of a case without an order', () => {
    expect(chances(four([140, 150, 150, 149])).size).toBe(0)
    const given = four([140, 150, 150, 150])
    expect(chances({ ...given, readings: given.readings.map((reading) => ({ ...reading, seq: undefined })) } as Case).size).toBe(0)
  })

  it('is told by first strokes: nearly sure where they stand at the reading before, nearly impossible where far below', () => {
    expect(chances(four([150, 152, 152, 152], [80, 150, 152, 152])).get(3)!).toBeGreaterThan(0.99)
    expect(chances(four([150, 152, 152, 152], [80, 81, 80, 82])).size).toBe(0)
  })

  it('leaves the covered cylinders about where they were before any reading, and the first one read', () => {
    const sound = soundOf(four([150, 152, 152, 152], [80, 150, 152, 152]))
    const released = soundOf(four([150, 152, 152, 152], [80, 81, 80, 82]))
    const unread = soundOf({ ...four([150, 152, 152, 152], [80, 81, 80, 82]), readings: [four([150]).readings[0]!] })
    expect(Math.abs(sound[0]! - released[0]!)).toBeLessThan(0.02)
    for (const i of [2, 3]) {
      expect(sound[i]!).toBeLessThan(released[i]! - 0.08)
      expect(Math.abs(sound[i]! - unread[i]!)).toBeLessThan(0.05)
    }
  })
})
