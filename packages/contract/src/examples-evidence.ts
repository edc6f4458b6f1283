/** Example bodies of sessions, readings, opinions, quotes, repairs and retests. The readings are the trade's usual case of one low cylinder. */
const ID = '019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b'
const INSTANT = '2026-05-06T10:20:00.000Z'
const DAY = '2026-06-20'

const psi = (value: number) => ({ value, unit: 'psi' })
const CONDITIONS = { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 8, batteryVolts: 12.4, altitudeM: 12, airTempC: 18, clearancesSet: true, headTorqued: true }
const dry = (cylinder: number, value: number) => ({ test: 'compression', cylinder, pressure: psi(value) })
const CASE = {
  engine: { fuel: 'petrol', layout: 'inline', cylinders: 4, firingOrder: [1, 3, 4, 2], boreMm: 84, strokeMm: 89, compressionRatio: 8.8 },
  conditions: CONDITIONS, gauge: { span: psi(300), accuracyClass: 1.6, resolution: psi(1) }, leakageTester: { supply: psi(80), restrictorMm: 1.016 },
  readings: [dry(1, 155), dry(2, 160), dry(3, 140), dry(4, 145), { test: 'leakage', cylinder: 3, held: psi(46), heard: { exhaust: 3, intake: 0 } }],
}
/** A grey square of 8 by 8 pixels, PNG. */
const PICTURE = 'iVBORw0KGgoAAAANSUhEUgAAAAgAAAAICAMAAADz0U65AAAAA1BMVEV3d3dY20ihAAAACXBIWXMAAAPoAAAD6AG1e1JrAAAADElEQVQImWNgoA4AAABIAAF7pRHIAAAAAElFTkSuQmCC'
const SUGGESTION = { tests: [{ test: 'leakage', cylinders: [3] }], bits: 1.1, minutes: 5.5, bitsPerMinute: 0.2, says: 'Leakage, listening at every point on cylinder 3.' }

export const EVIDENCE_EXAMPLES = {
  NewSession: { purpose: 'test', conditions: CONDITIONS, gauge: ID, tester: ID, apps: [], openedAt: INSTANT },
  ReadingPut: { reading: { ...dry(3, 140), firstStroke: psi(60), strokeCount: 8, seq: 3 }, takenAt: INSTANT },
  PhotoPut: { picture: PICTURE, takenAt: INSTANT, takenBy: ID },
  PhotoWithdrawal: { reason: 'Taken of the wrong plug' },
  Case: CASE,
  ComparisonRequest: { before: CASE, after: { ...CASE, readings: [dry(1, 158), dry(2, 160), dry(3, 157), dry(4, 156)] }, work: ['head-valves'] },
  NewSuggestionDecision: { decision: 'declined', suggestion: SUGGESTION, reason: 'No air in this bay today', instead: 'wet test' },
  QuoteDraftPut: {
    lines: [{ kind: 'labour', operation: 'head-valves', cylinders: [3], text: 'Head off, exhaust valve of 3 and its seat', quantity: 8.5, rateMinor: 7_800, taxBasisPoints: 2_300 }], note: 'Look at the guides when it is off.',
  },
  Approve: { reason: 'Nobody else here to ask' },
  SendBack: { question: 'Is it a tight clearance? Check the rockers of 3 first.' },
  Refuse: { reason: 'Not worth it on this engine' },
  NewAuthorisation: { kind: 'given', personName: 'Ada Wrenford', method: 'phone', numberCalled: '+351 555 0142', amountMinor: 93_204, partsBack: true, note: 'Wants the valve to look at', givenAt: INSTANT },
  FinishRepair: { operations: ['head-valves'], note: 'Guides were good' },
  NewFinding: { cylinders: [3], fault: 'exhaust-valve-leak', seen: 'Seat burnt over a quarter of its ring' },
  NewRetest: { reason: 'Again after the first 1000 km', latest: DAY, odometerKm: 183_400, event: 'first service' },
  NewRetestDate: { latest: DAY, odometerKm: 183_400, event: 'first service', bookedFor: INSTANT, reason: 'Away until then' },
  RetestOutcome: { outcome: 'passed', session: ID, reason: 'Even again' },
  Waiver: { reason: 'Owner takes it to his own garage' },
} as const
