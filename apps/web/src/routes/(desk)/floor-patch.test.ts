import type { Floor, JobSummary } from '@evenbore/contract'
import { expect, test } from 'vitest'
import { sameBays, withJob } from './floor-patch.ts'

const job = (id: string, since: string, bay: string | null = null): JobSummary => ({
  id, garage: 'g', code: id, plate: '', vehicle: '', customer: '', complaint: '', bay: bay === null ? null : { id: bay, name: bay }, engine: 'e', cylinders: 4,
  standing: { state: 'booked', since, waitsFor: 'technician', waitsOn: null, until: null, beside: [] }, promisedAt: null, bookedAt: since,
})
const retest = (code: string, overdueDays: number | null, kind: 'release' | 'follow-up' = 'follow-up') => ({ retest: `r-${code}`, job: code, code, plate: '', kind, reason: '', due: null, overdueDays, bookedFor: null })
const floor = (parts: Partial<Floor> = {}): Floor => ({
  garage: 'g', name: 'Mill', bays: [{ id: 'b1', name: 'Bay 1', job: null }, { id: 'b2', name: 'Bay 2', job: null }], elsewhere: [], waitsForDecision: [], retestsDue: [], ready: [], ...parts,
})

test('a job driven into a bay leaves the list, and every other row stays the same object', () => {
  const [a, b, c] = [job('A', '1'), job('B', '2'), job('C', '3')]
  const before = floor({ elsewhere: [a, b, c], ready: [job('D', '1')] })
  const moved = job('B', '4', 'b2')
  const after = withJob(before, 'B', floor({ bays: [before.bays[0]!, { id: 'b2', name: 'Bay 2', job: moved }] }))
  expect(after.bays[1]!.job).toBe(moved)
  expect(after.bays[0]).toBe(before.bays[0])
  expect(after.elsewhere).toEqual([a, c])
  expect(after.elsewhere[0]).toBe(a)
  expect(after.ready).toBe(before.ready)
})
test('a job that left the garage leaves its bay and lists', () => {
  const inside = job('A', '1', 'b1')
  const before = floor({ bays: [{ id: 'b1', name: 'Bay 1', job: inside }, { id: 'b2', name: 'Bay 2', job: null }], waitsForDecision: [inside], retestsDue: [retest('A', 1)] })
  expect(withJob(before, 'A', floor())).toEqual(floor())
})
test('a job driven into a taken bay is shown there, as the whole floor would show it', () => {
  const before = floor({ bays: [{ id: 'b1', name: 'Bay 1', job: job('A', '1', 'b1') }, { id: 'b2', name: 'Bay 2', job: null }] })
  const after = withJob(before, 'B', floor({ bays: [{ id: 'b1', name: 'Bay 1', job: job('B', '2', 'b1') }, { id: 'b2', name: 'Bay 2', job: null }] }))
  expect(after.bays.map((bay) => bay.job?.id)).toEqual(['B', undefined])
})
test('a new row is put where the server would have put it', () => {
  expect(withJob(floor({ elsewhere: [job('A', '1'), job('C', '3')] }), 'B', floor({ elsewhere: [job('B', '2')] })).elsewhere.map(({ id }) => id)).toEqual(['A', 'B', 'C'])
  const due = [retest('A', null, 'release'), retest('B', 9), retest('C', null)]
  expect(withJob(floor({ retestsDue: due }), 'D', floor({ retestsDue: [retest('D', 2)] })).retestsDue.map(({ code }) => code)).toEqual(['A', 'B', 'D', 'C'])
})
test('a bay added or renamed asks for the whole floor', () => {
  expect(sameBays(floor(), floor())).toBe(true)
  expect(sameBays(floor(), floor({ bays: [{ id: 'b1', name: 'Lift', job: null }, { id: 'b2', name: 'Bay 2', job: null }] }))).toBe(false)
  expect(sameBays(floor(), floor({ bays: [] }))).toBe(false)
})
