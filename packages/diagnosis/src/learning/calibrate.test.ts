import { describe, expect, it } from 'vitest'
import { defaultKnowledge, knowledgeHash } from '../knowledge/knowledge.ts'
import { calibrate, type Finding } from './calibrate.ts'

const found = (what: Finding['found'], times: number, more: Partial<Finding> = {}): Finding[] => Array.from({ length: times }, () => ({ cylinder: 1, found: what, ...more }))

describe('learning from findings', () => {
  it('moves the kinds of faults toward what was found, and gives the tables another hash', () => {
    const { knowledge } = calibrate(found('valve-sticking', 30))
    expect(knowledge.faults['valve-sticking'].value.share).toBeGreaterThan(0.3)
    expect(knowledgeHash(knowledge)).not.toBe(knowledgeHash(defaultKnowledge))
    const sum = Object.values(knowledge.faults).reduce((s, f) => s + f.value.share, 0)
    expect(sum).toBeCloseTo(1, 12)
  })

  it('leaves soundness alone when only suspects were opened', () => {
    expect(calibrate(found('ring-wear', 50)).knowledge.population.faultyCylinder.value).toBe(defaultKnowledge.population.faultyCylinder.value)
  })

  it('changes soundness by engines that were followed up', () => {
    expect(calibrate(found('sound', 200, { followedUp: true })).knowledge.population.faultyCylinder.value).toBeLessThan(0.06)
  })

  it('changes nothing without findings', () => {
    expect(calibrate([]).knowledge).toBe(defaultKnowledge)
  })

  it('keeps to the engine family asked for', () => {
    expect(calibrate(found('ring-wear', 5, { family: 'a' }), defaultKnowledge, 'b').used).toBe(0)
  })

  it('warns of drift when one rare fault is found again and again, and not when findings follow the tables', () => {
    expect(calibrate(found('rod-bent', 25)).drift?.faults).toContain('rod-bent')
    const total = Object.values(defaultKnowledge.faults).reduce((s, f) => s + f.value.share, 0)
    const usual = Object.entries(defaultKnowledge.faults).flatMap(([fault, f]) => found(fault as Finding['found'], Math.round(100 * f.value.share / total)))
    expect(calibrate(usual).drift).toBeNull()
  })
})
