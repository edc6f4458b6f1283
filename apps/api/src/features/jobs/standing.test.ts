import { describe, expect, test } from 'vitest'
import { agreedVersion, permittedMinor, standingOf, type StandingFacts, type VersionFacts } from './standing.ts'

/** A clock for the tests: so many minutes after the job was booked. */
const START = Date.parse('2026-05-06T08:00:00.000Z')
const at = (minutes: number): number => START + minutes * 60_000
const iso = (minutes: number): string => new Date(at(minutes)).toISOString()

const BOOKED: StandingFacts = {
  bookedAt: at(0), placedAt: null, inBay: false, promisedAt: at(600), customer: 'Ines Duarte', handedOverAt: null, cancelledAt: null,
  testingClosedAt: null, firstSessionAt: null, lastTestSessionAt: null, sessionBy: null, draft: false, versions: [], toleranceBasisPoints: 0,
  parts: null, repair: null, release: null, unplaced: false, nextContactAt: null,
}
const job = (facts: Partial<StandingFacts> = {}): StandingFacts => ({ ...BOOKED, ...facts })
const inBay = { inBay: true, placedAt: at(5) }
const tested = { ...inBay, firstSessionAt: at(10), lastTestSessionAt: at(10), sessionBy: 'Tomas Reis' }
const version = (facts: Partial<VersionFacts> = {}): VersionFacts =>
  ({ sentAt: at(60), totalMinor: 50_000, answer: null, answeredAt: null, word: null, wordAt: null, givenMinor: null, ...facts })
const approved = version({ answer: 'approved', answeredAt: at(70) })
const permitted = version({ ...approved, word: 'given', wordAt: at(80), givenMinor: 50_000 })
const repairing = { startedAt: at(90), finishedAt: null, by: 'Tomas Reis' }
const repaired = { startedAt: at(90), finishedAt: at(150), by: 'Tomas Reis' }
const stands = (facts: Partial<StandingFacts>) => standingOf(job(facts))

describe('where a job stands, the first that fits', () => {
  test('handed over is final, whatever else is on record', () => {
    expect(stands({ ...tested, handedOverAt: at(300), cancelledAt: at(1), parts: { orderedAt: at(20), expectedAt: null, text: 'gasket' } })).toMatchObject({ state: 'handed-over', since: iso(300), waitsFor: 'nobody', until: null })
  })
  test('cancelled', () => {
    expect(stands({ ...tested, cancelledAt: at(200) })).toMatchObject({ state: 'cancelled', since: iso(200), waitsFor: 'nobody' })
  })
  test('ready: testing closed with nothing found', () => {
    expect(stands({ ...tested, testingClosedAt: at(40) })).toMatchObject({ state: 'ready', since: iso(40), waitsFor: 'front-desk', until: iso(600), beside: ['nothing-found'] })
  })
  test('ready: the customer declined', () => {
    expect(stands({ ...tested, versions: [version({ ...approved, word: 'declined', wordAt: at(85) })] })).toMatchObject({ state: 'ready', since: iso(85), beside: ['declined'] })
  })
  test.each(['passed', 'waived'] as const)('ready: repair finished, its release retest %s', (outcome) => {
    expect(stands({ ...tested, versions: [permitted], repair: repaired, release: { outcome, decidedAt: at(180) } })).toMatchObject({ state: 'ready', since: iso(180), beside: [`release-${outcome}`] })
  })
  test('not ready while late readings wait for a place', () => {
    expect(stands({ ...tested, testingClosedAt: at(40), unplaced: true })).toMatchObject({ state: 'testing', beside: ['nothing-found', 'unplaced-readings'] })
    expect(stands({ ...tested, versions: [permitted], repair: repaired, release: { outcome: 'passed', decidedAt: at(180) }, unplaced: true }).state).toBe('testing')
  })
  test('waiting for parts: ordered, not arrived, told until when', () => {
    expect(stands({ ...tested, versions: [permitted], repair: repairing, parts: { orderedAt: at(95), expectedAt: at(400), text: 'head gasket' } })).toMatchObject({ state: 'waiting-for-parts', since: iso(95), waitsFor: 'parts', waitsOn: 'head gasket', until: iso(400) })
  })
  test('waiting for the manager: a version sent and unanswered', () => {
    expect(stands({ ...tested, versions: [version()] })).toMatchObject({ state: 'waiting-for-manager', since: iso(60), waitsFor: 'manager', beside: ['sent'] })
  })
  test('waiting for the manager also during repair', () => {
    expect(stands({ ...tested, versions: [permitted, version({ sentAt: at(100), totalMinor: 70_000 })], repair: repairing })).toMatchObject({ state: 'waiting-for-manager', since: iso(100) })
  })
  test('waiting for the manager again once an approval was withdrawn', () => {
    expect(stands({ ...tested, versions: [version({ answer: 'withdrawn', answeredAt: at(75) })] })).toMatchObject({ state: 'waiting-for-manager', since: iso(75) })
  })
  test('waiting for the customer: approved, not authorised; until the next call', () => {
    expect(stands({ ...tested, versions: [approved], nextContactAt: at(120) })).toMatchObject({ state: 'waiting-for-customer', since: iso(70), waitsFor: 'customer', waitsOn: 'Ines Duarte', until: iso(120), beside: [] })
  })
  test('waiting for the customer also during repair, when the new total exceeds what was permitted', () => {
    const more = version({ sentAt: at(100), totalMinor: 70_000, answer: 'approved', answeredAt: at(110) })
    expect(stands({ ...tested, versions: [permitted, more], repair: repairing })).toMatchObject({ state: 'waiting-for-customer', since: iso(110), beside: ['excess-needs-permission'] })
  })
  test('retest due: finished, no release retest since', () => {
    expect(stands({ ...tested, versions: [permitted], repair: repaired })).toMatchObject({ state: 'retest-due', since: iso(150), waitsFor: 'technician' })
  })
  test('in repair: started, not finished', () => {
    expect(stands({ ...tested, versions: [permitted], repair: repairing })).toMatchObject({ state: 'in-repair', since: iso(90), waitsOn: 'Tomas Reis' })
  })
  test('approved by manager and customer', () => {
    expect(stands({ ...tested, versions: [permitted] })).toMatchObject({ state: 'approved', since: iso(80) })
  })
  test('testing: a session', () => {
    expect(stands(tested)).toMatchObject({ state: 'testing', since: iso(10), waitsOn: 'Tomas Reis', until: iso(600), beside: [] })
  })
  test.each(['sent-back', 'refused'] as const)('testing, and a draft and a %s quote are said beside it', (answer) => {
    expect(stands({ ...tested, draft: true, versions: [version({ answer, answeredAt: at(72) })] })).toMatchObject({ state: 'testing', since: iso(72), beside: ['draft', answer] })
  })
  test('in a bay', () => {
    expect(stands({ ...inBay, draft: true })).toMatchObject({ state: 'in-bay', since: iso(5), beside: ['draft'] })
  })
  test('booked', () => {
    expect(stands({ promisedAt: null })).toMatchObject({ state: 'booked', since: iso(0), until: null, beside: [] })
  })
})

describe('what a decided release retest ends', () => {
  test('a failed one ends approval, permission and repair: the job is testing again', () => {
    expect(stands({ ...tested, versions: [permitted], repair: repaired, release: { outcome: 'failed', decidedAt: at(180) } })).toMatchObject({ state: 'testing', since: iso(180), beside: ['release-failed'] })
  })
  test('after a failed one the job is testing even where no session was opened', () => {
    expect(stands({ ...inBay, versions: [permitted], repair: repaired, release: { outcome: 'failed', decidedAt: at(180) } })).toMatchObject({ state: 'testing', since: iso(180) })
  })
  test('after a failed one the next version needs a permission of its own', () => {
    const again = version({ sentAt: at(200), totalMinor: 10_000, answer: 'approved', answeredAt: at(210) })
    expect(stands({ ...tested, versions: [permitted, again], repair: repaired, release: { outcome: 'failed', decidedAt: at(180) } }).state).toBe('waiting-for-customer')
  })
  test('after a failed one a second repair runs its own course', () => {
    const again = version({ sentAt: at(200), totalMinor: 10_000, answer: 'approved', answeredAt: at(210), word: 'given', wordAt: at(220), givenMinor: 10_000 })
    const failed = { ...tested, versions: [permitted, again], release: { outcome: 'failed' as const, decidedAt: at(180) } }
    expect(stands({ ...failed, repair: repaired }).state).toBe('approved')
    expect(stands({ ...failed, repair: { startedAt: at(230), finishedAt: null, by: null } }).state).toBe('in-repair')
    expect(stands({ ...failed, repair: { startedAt: at(230), finishedAt: at(260), by: null } }).state).toBe('retest-due')
  })
  test('a version sent after a passed one opens the job again', () => {
    expect(stands({ ...tested, versions: [permitted, version({ sentAt: at(200) })], repair: repaired, release: { outcome: 'passed', decidedAt: at(180) } }).state).toBe('waiting-for-manager')
  })
})

describe('what opens a closed job again', () => {
  test('a session after testing was closed', () => {
    expect(stands({ ...tested, testingClosedAt: at(40), lastTestSessionAt: at(45) })).toMatchObject({ state: 'testing', since: iso(45), beside: [] })
  })
  test('a version sent after testing was closed', () => {
    expect(stands({ ...tested, testingClosedAt: at(40), versions: [version({ sentAt: at(50) })] }).state).toBe('waiting-for-manager')
  })
  test('a version sent after the customer declined', () => {
    expect(stands({ ...tested, versions: [version({ ...approved, word: 'declined', wordAt: at(85) }), version({ sentAt: at(95) })] }).state).toBe('waiting-for-manager')
  })
})

describe('what the customer permitted', () => {
  test('a smaller new version needs no new permission', () => {
    const less = version({ sentAt: at(85), totalMinor: 45_000, answer: 'approved', answeredAt: at(86) })
    expect(stands({ ...tested, versions: [permitted, less] })).toMatchObject({ state: 'approved', since: iso(86) })
  })
  test('the tolerance of the garage covers an excess up to its last minor unit', () => {
    const more = (totalMinor: number) => version({ sentAt: at(85), totalMinor, answer: 'approved', answeredAt: at(86) })
    expect(stands({ ...tested, toleranceBasisPoints: 1000, versions: [permitted, more(55_000)] }).state).toBe('approved')
    expect(stands({ ...tested, toleranceBasisPoints: 1000, versions: [permitted, more(55_001)] }).state).toBe('waiting-for-customer')
  })
  test('a declined excess leaves the repair that was permitted as it is', () => {
    const more = version({ sentAt: at(100), totalMinor: 70_000, answer: 'approved', answeredAt: at(110), word: 'declined', wordAt: at(115) })
    expect(stands({ ...tested, versions: [permitted, more], repair: repairing })).toMatchObject({ state: 'in-repair', beside: ['declined'] })
    expect(stands({ ...tested, versions: [permitted, more] }).state).toBe('approved')
  })
  test('a version that the customer declined is not the one agreed on, even where an earlier permission would cover it', () => {
    const less = version({ sentAt: at(85), totalMinor: 45_000, answer: 'approved', answeredAt: at(86), word: 'declined', wordAt: at(87) })
    expect(stands({ ...tested, versions: [permitted, less] })).toMatchObject({ state: 'approved', since: iso(80), beside: ['declined'] })
    expect(agreedVersion(job({ versions: [permitted, less] }))).toBe(0)
  })
  test('the latest permission counts', () => {
    expect(permittedMinor(job({ versions: [permitted, version({ givenMinor: 60_000, word: 'given', wordAt: at(99) })] }))).toBe(60_000)
    expect(permittedMinor(job())).toBeNull()
  })
})
