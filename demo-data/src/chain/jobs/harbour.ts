import { COLD, DIESEL, HOT, WARM } from '../conditions.ts'
import { dry, leak, plugs, wet } from '../readings.ts'
import type { DemoJob } from '../types.ts'

const GAUGE = 'Gauge H1'
const DIESEL_GAUGE = 'Diesel gauge'
const TESTER = 'Leakage tester H'
const valves = (cylinders: number[]) => [
  { kind: 'labour' as const, operation: 'head-valves' as const, cylinders, text: 'Head off and on, valves and seats', quantity: 10 },
  { kind: 'part' as const, operation: 'head-valves' as const, text: 'Head set and valves', quantity: 1, priceMinor: 18_400 },
]

/** Harbour Road: thirteen visits. */
export const HARBOUR_JOBS: readonly DemoJob[] = [
  // Handed over: diesel, outside its own limit though every cylinder clears the minimum.
  {
    garage: 'harbour', vehicle: 'harbour-truck', complaint: 'Knocks when cold, white smoke for a minute', odometerKm: 311_000, bay: 'Bay 1',
    sessions: [{ hoursAgo: 1500, conditions: DIESEL, gauge: DIESEL_GAUGE, tester: TESTER, readings: [...dry([385, 390, 325, 380]), leak(3, 49, { crankcase: 3 }), leak(2, 72)] }],
    suggestion: { decision: 'taken' },
    quote: { lines: [{ kind: 'labour', operation: 'rings', cylinders: [3], text: 'Rings in frame', quantity: 19 }, { kind: 'part', operation: 'rings', text: 'Ring set', quantity: 1, priceMinor: 22_300 }] },
    approved: true, customer: { kind: 'given', method: 'written' },
    findings: [{ cylinders: [3], fault: 'ring-broken-or-stuck', seen: 'Second ring of 3 in two pieces, bore lightly marked.' }], repair: { finished: true },
    release: { session: { hoursAgo: 1400, conditions: DIESEL, gauge: DIESEL_GAUGE, readings: dry([388, 390, 381, 384]) }, outcome: 'passed' }, handOver: { followUps: [{ reason: 'Oil use and compression after 1,000 km', odometerKm: 312_000 }] },
  },
  // Handed over: the whole engine even but low; run on.
  {
    garage: 'harbour', vehicle: 'ivory-saloon', complaint: 'Slow, starts badly, but even', odometerKm: 189_000,
    sessions: [{ hoursAgo: 800, conditions: HOT, gauge: GAUGE, readings: [...plugs(['dry-black', 'dry-black', 'dry-black', 'dry-black']), ...dry([116, 118, 114, 117]), ...wet({ 3: 139, 2: 141 }), { test: 'observation', code: 'breather-smoke' }] }],
    suggestion: { decision: 'taken' }, nothingFound: 'Evenly worn. Told the customer: runs on, plan an overhaul in the next years.', handOver: { followUps: [{ reason: 'Look at it again in a year', inDays: 330 }] },
  },
  // Handed over, finding against the leading explanation.
  {
    garage: 'harbour', vehicle: 'red-coupe', complaint: 'Tick and a miss on one', odometerKm: 83_500,
    sessions: [{ hoursAgo: 1200, conditions: HOT, gauge: GAUGE, tester: TESTER, readings: [...dry([150, 112, 149, 152, 148, 151]), leak(2, 48, { exhaust: 2, crankcase: 2 }), leak(1, 74)] }],
    suggestion: { decision: 'declined', reason: 'Exhaust hiss is plain enough', instead: 'straight to the quote' },
    quote: { lines: valves([2]) }, approved: true, customer: { kind: 'given', method: 'phone' },
    findings: [{ cylinders: [2], fault: 'cracked-head', seen: 'Hairline crack from the exhaust seat of 2; valve itself sound.' }], repair: { finished: true },
    release: { session: { hoursAgo: 1100, conditions: HOT, gauge: GAUGE, readings: dry([151, 148, 150, 152, 149, 152]) }, outcome: 'passed' }, handOver: {},
  },
  // Failed its release retest: testing again.
  {
    garage: 'harbour', vehicle: 'sand-offroader', complaint: 'Weak on sand, hiss at the carburettor', odometerKm: 141_250, bay: 'Bay 2', promisedInHours: 26,
    sessions: [{ hoursAgo: 70, conditions: HOT, gauge: GAUGE, tester: TESTER, readings: [...dry([139, 140, 88, 141, 138, 142, 140, 139]), leak(3, 36, { intake: 3 }), leak(1, 71)] }],
    suggestion: { decision: 'taken' }, quote: { lines: [{ kind: 'labour', operation: 'sticking-valve', cylinders: [3], text: 'Free the valve, run, test again', quantity: 1.5 }] }, approved: true, customer: { kind: 'given', method: 'phone' },
    repair: { finished: true, note: 'Stem freed with penetrating oil, run for half an hour.' },
    release: { session: { hoursAgo: 5, conditions: HOT, gauge: GAUGE, readings: dry([140, 141, 96, 140, 139, 141, 141, 140]) }, outcome: 'failed', reason: 'Cylinder 3 hardly better: the seat itself leaks' },
  },
  // Waits for the manager.
  {
    garage: 'harbour', vehicle: 'navy-estate', complaint: 'Coolant loss, rough after standing', odometerKm: 201_700, bay: 'Bay 3', promisedInHours: 40,
    sessions: [{ hoursAgo: 6, conditions: WARM, gauge: GAUGE, tester: TESTER, readings: [...dry([171, 133, 174, 172, 175, 170]), leak(2, 51, { coolant: 3 }), leak(1, 73), { test: 'coolant-gas', present: true }, { test: 'cooling-pressure', lostPressure: { value: 4, unit: 'psi' }, minutes: 2 }] }],
    suggestion: { decision: 'taken' },
    quote: { lines: [{ kind: 'labour', operation: 'gasket-replace', cylinders: [2], text: 'Head off and on, gasket, faces checked', quantity: 9 }, { kind: 'part', operation: 'gasket-replace', text: 'Gasket set and bolts', quantity: 1, priceMinor: 14_300 }] },
  },
  // Waits for the manager; above her limit, an owner must.
  {
    garage: 'harbour', vehicle: 'blue-van', complaint: 'Hard to start, uses oil, knocks', odometerKm: 402_000, promisedInHours: 120,
    sessions: [{ hoursAgo: 20, conditions: DIESEL, gauge: DIESEL_GAUGE, readings: dry([300, 285, 240, 295]) }],
    suggestion: { decision: 'taken' },
    quote: { lines: [{ kind: 'labour', operation: 'overhaul', text: 'Overhaul', quantity: 42 }, { kind: 'part', operation: 'overhaul', text: 'Pistons, rings, shells, gaskets', quantity: 1, priceMinor: 98_000 }] },
  },
  // Waits for parts.
  {
    garage: 'harbour', vehicle: 'teal-hatch', complaint: 'Engine light, one cylinder dead', odometerKm: 154_600, promisedInHours: 60,
    sessions: [{ hoursAgo: 44, conditions: HOT, gauge: GAUGE, tester: TESTER, readings: [...dry([186, 71, 188]), leak(2, 19, { exhaust: 3 }), leak(1, 75)] }],
    suggestion: { decision: 'taken' }, quote: { lines: valves([2]) }, approved: true, customer: { kind: 'given', method: 'message' }, parts: [{ text: 'Exhaust valve and head set', expectedInHours: 22 }],
  },
  // In repair; the parts came.
  {
    garage: 'harbour', vehicle: 'orange-beach-car', complaint: 'No pull on one side', odometerKm: 38_900, bay: 'Bay 1', promisedInHours: 9,
    sessions: [{ hoursAgo: 27, conditions: HOT, gauge: GAUGE, readings: [...dry([112, 74]), ...wet({ 2: 101, 1: 128 })] }],
    suggestion: { decision: 'taken' },
    quote: { lines: [{ kind: 'labour', operation: 'rings', cylinders: [2], text: 'Barrel off, rings', quantity: 5 }, { kind: 'part', operation: 'rings', text: 'Ring set, one barrel', quantity: 1, priceMinor: 5_200 }] },
    approved: true, customer: { kind: 'given', method: 'phone' }, parts: [{ text: 'Ring set', expectedInHours: 2, arrived: true }], repair: {},
  },
  // Ready: the customer declined.
  {
    garage: 'harbour', vehicle: 'red-coupe', complaint: 'Oil on the floor, a bit down on power', odometerKm: 84_300,
    sessions: [{ hoursAgo: 30, conditions: HOT, gauge: GAUGE, readings: dry([149, 133, 150, 151, 148, 150]) }],
    suggestion: { decision: 'declined', reason: 'Customer is in a hurry and declines more testing' },
    quote: { lines: [{ kind: 'labour', operation: 'clearances-run-test', text: 'Set clearances, run, test again', quantity: 1 }] }, approved: true, customer: { kind: 'declined', method: 'in-person' },
  },
  // In the bay list, nothing measured yet.
  { garage: 'harbour', vehicle: 'harbour-truck', complaint: 'Service, and the follow-up after the ring job', odometerKm: 312_400, promisedInHours: 7 },
  // Draft beside testing.
  {
    garage: 'harbour', vehicle: 'ivory-saloon', complaint: 'Blue cloud on the overrun', odometerKm: 191_000, promisedInHours: 33,
    sessions: [{ hoursAgo: 2, conditions: COLD, gauge: GAUGE, readings: [...dry([112, 115, 109, 113]), { test: 'observation', code: 'smoke-blue-overrun' }] }],
    quote: { lines: [{ kind: 'labour', operation: 'guides', text: 'Valve guides', quantity: 8 }], draftOnly: true },
  },
  { garage: 'harbour', vehicle: 'sand-offroader', complaint: 'Double booking', cancelled: 'Booked twice by mistake' },
  // Handed over with a waived retest.
  {
    garage: 'harbour', vehicle: 'teal-hatch', complaint: 'Oil leak at the plug thread', odometerKm: 151_000,
    sessions: [{ hoursAgo: 3000, conditions: HOT, gauge: GAUGE, readings: [...dry([187, 185, 171]), { test: 'observation', cylinder: 3, code: 'bubbles-at-plug-thread' }] }],
    suggestion: { decision: 'taken' }, quote: { lines: [{ kind: 'labour', operation: 'plug-thread', cylinders: [3], text: 'Plug thread insert', quantity: 1.2 }] }, approved: true, customer: { kind: 'given', method: 'in-person' },
    findings: [{ cylinders: [3], fault: 'plug-thread-leak', seen: 'Thread stripped on the first three turns.' }], repair: { finished: true },
    release: { waived: 'Soaped under pressure, no bubbles; the customer had to catch the ferry' }, handOver: {},
  },
]
