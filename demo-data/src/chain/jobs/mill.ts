import { HOT, COLD, SHUT, WARM } from '../conditions.ts'
import { dry, leak, plugs, wet } from '../readings.ts'
import type { DemoJob } from '../types.ts'

const GAUGE = 'Gauge 4'
const TESTER = 'Leakage tester A'
const headValves = (cylinders: number[]) => [
  { kind: 'labour' as const, operation: 'head-valves' as const, cylinders, text: 'Head off and on, valves and seats', quantity: 10 },
  { kind: 'part' as const, operation: 'head-valves' as const, text: 'Head set and valves', quantity: 1, priceMinor: 18_400 },
]
const look = (cylinders: number[]) => ({ kind: 'labour' as const, operation: 'look-borescope' as const, cylinders, text: 'Look through the plug hole', quantity: 0.3 })

/** Mill Lane: sixteen visits, old ones first. */
export const MILL_JOBS: readonly DemoJob[] = [
  // Handed over: burnt exhaust valve, proved by strip-down and retest.
  {
    garage: 'mill', vehicle: 'grey-estate', complaint: 'Runs on three when hot, worst at idle', odometerKm: 88_120, promisedInHours: 30, bay: 'Bay 2',
    sessions: [
      { hoursAgo: 1000, conditions: HOT, gauge: GAUGE, readings: [...plugs(['tan', 'tan', 'wet-fuel', 'tan']), ...dry([152, 156, 118, 149])] },
      { hoursAgo: 999, conditions: HOT, gauge: GAUGE, tester: TESTER, readings: [...wet({ 3: 124, 2: 171 }), leak(3, 41, { exhaust: 3 }), leak(2, 73)] },
    ],
    suggestion: { decision: 'taken' },
    quote: { lines: headValves([3]), note: 'No. 3 hisses at the exhaust and oil hardly lifts it.' }, approved: true, customer: { kind: 'given', method: 'phone' },
    findings: [{ cylinders: [3], fault: 'exhaust-valve-leak', seen: 'Exhaust valve 3 burnt through at the rim, seat pitted.' }],
    repair: { finished: true, note: 'All eight valves ground, number 3 exhaust renewed.' },
    release: { session: { hoursAgo: 940, conditions: HOT, gauge: GAUGE, readings: dry([155, 157, 154, 152]) }, outcome: 'passed' },
    handOver: { note: 'Torque and clearances again after the first 500 km.', followUps: [{ reason: 'Head torque and clearances, then compression again', inDays: -6, odometerKm: 88_620 }] },
  },
  // Handed over: worn rings in one cylinder.
  {
    garage: 'mill', vehicle: 'red-van', complaint: 'Uses a litre of oil in 400 km, smokes under load', odometerKm: 143_900, bay: 'Bay 3',
    sessions: [
      { hoursAgo: 1900, conditions: HOT, gauge: GAUGE, readings: [...plugs(['tan', 'wet-oil', 'tan', 'tan']), ...dry([148, 121, 150, 146]), { test: 'observation', code: 'smoke-blue-throttle' }, { test: 'observation', code: 'oil-use-high' }] },
      { hoursAgo: 1899, conditions: HOT, gauge: GAUGE, tester: TESTER, readings: [...wet({ 2: 152, 3: 162 }), leak(2, 52, { crankcase: 3 }), leak(3, 74)] },
    ],
    suggestion: { decision: 'taken' },
    quote: { lines: [{ kind: 'labour', operation: 'rings', cylinders: [1, 2, 3, 4], text: 'Rings in frame', quantity: 19 }, { kind: 'part', operation: 'rings', text: 'Ring set', quantity: 1, priceMinor: 14_900 }] },
    sentBack: { question: 'One cylinder or the set? Price both and say which you would do.', lines: [{ kind: 'labour', operation: 'rings', cylinders: [1, 2, 3, 4], text: 'Rings in frame, all four while it is open', quantity: 19 }, { kind: 'part', operation: 'rings', text: 'Ring set', quantity: 1, priceMinor: 14_900 }, { kind: 'part', text: 'Big-end shells', quantity: 1, priceMinor: 6_200 }] },
    approved: true, customer: { kind: 'given', method: 'in-person', partsBack: true },
    findings: [{ cylinders: [2], fault: 'ring-wear', seen: 'Top ring gap in 2 three times that of its sisters, bore sound.' }],
    repair: { finished: true }, release: { session: { hoursAgo: 1800, conditions: HOT, gauge: GAUGE, readings: dry([150, 149, 152, 149]) }, outcome: 'passed' },
    handOver: { followUps: [{ reason: 'Compression again once the rings have bedded in', inDays: 9, odometerKm: 144_900 }] },
  },
  // Handed over: nothing wrong mechanically, a plug lead.
  {
    garage: 'mill', vehicle: 'white-hatch', complaint: 'Misses when damp', odometerKm: 121_300,
    sessions: [{ hoursAgo: 700, conditions: HOT, gauge: GAUGE, readings: [...plugs(['tan', 'wet-fuel', 'tan']), ...dry([189, 186, 190]), { test: 'observation', cylinder: 2, code: 'better-with-other-plug-and-lead' }] }],
    suggestion: { decision: 'declined', reason: 'Swapping lead and plug takes five minutes, I did that first', instead: 'plug and lead swapped' },
    nothingFound: 'Compression even. Lead 2 arced in the damp; customer buys a set.', handOver: {},
  },
  // Handed over: gasket between 4 and 5.
  {
    garage: 'mill', vehicle: 'blue-saloon', complaint: 'Loses power, puffs at the carburettor', odometerKm: 97_450, bay: 'Bay 1',
    sessions: [{ hoursAgo: 2600, conditions: HOT, gauge: GAUGE, tester: TESTER, readings: [...dry([148, 151, 146, 60, 63, 147]), leak(4, 22, { neighbour: 3 }), leak(5, 24, { neighbour: 3 })] }],
    suggestion: { decision: 'taken' },
    quote: { lines: [look([4, 5]), { kind: 'labour', operation: 'gasket-replace', cylinders: [4, 5], text: 'Head off and on, gasket, faces checked', quantity: 7 }, { kind: 'part', operation: 'gasket-replace', text: 'Gasket set and bolts', quantity: 1, priceMinor: 11_840 }] },
    approved: true, customer: { kind: 'given', method: 'message' },
    findings: [{ cylinders: [4, 5], fault: 'gasket-between', seen: 'Fire ring burnt away between 4 and 5, faces within limits.' }],
    repair: { finished: true }, release: { session: { hoursAgo: 2500, conditions: HOT, gauge: GAUGE, readings: dry([149, 150, 147, 146, 148, 149]) }, outcome: 'passed' },
    handOver: { note: 'Torque again after 500 km.', followUps: [{ reason: 'Head torque after 500 km', inDays: -20, odometerKm: 97_950 }] },
  },
  // Waits for the manager: six cylinders, two neighbours low again.
  {
    garage: 'mill', vehicle: 'cream-coupe', complaint: 'Down on power since the long climb, water is missing', odometerKm: 76_040, promisedInHours: 50, bay: 'Bay 1', priorWork: { overheated: true }, slowly: true,
    sessions: [
      { hoursAgo: 4, conditions: HOT, gauge: GAUGE, readings: dry([152, 154, 149, 98, 101, 139]) },
      { hoursAgo: 3, conditions: HOT, gauge: GAUGE, tester: TESTER, readings: [leak(4, 38, { neighbour: 3, coolant: 1 }), leak(5, 40, { neighbour: 3 }), leak(3, 74)] },
    ],
    suggestion: { decision: 'declined', reason: 'Plugs dry and no smoke: oil would not tell me more than air', instead: 'leakage on 4 and 5' },
    quote: { lines: [{ kind: 'labour', operation: 'gasket-replace', cylinders: [4, 5], text: 'Head off and on, gasket, faces checked', quantity: 7 }, { kind: 'part', operation: 'gasket-replace', text: 'Gasket set and bolts', quantity: 1, priceMinor: 11_840 }] },
    sentBack: { question: 'Look first through the plug holes: is 6 part of it?', lines: [look([4, 5, 6]), { kind: 'labour', operation: 'gasket-replace', cylinders: [4, 5], text: 'Head off and on, gasket, faces checked', quantity: 7 }, { kind: 'part', operation: 'gasket-replace', text: 'Gasket set and bolts', quantity: 1, priceMinor: 11_840 }] },
  },
  // Testing just now: three of four read, the tablet is in the bay.
  {
    garage: 'mill', vehicle: 'red-van', complaint: 'Misses under load since Monday', odometerKm: 144_310, promisedInHours: 6, bay: 'Bay 2',
    sessions: [{ hoursAgo: 0.2, conditions: HOT, gauge: GAUGE, readings: dry([152, 156, 129, null]), leftOpen: true }],
  },
  // Repair done, retest next.
  {
    garage: 'mill', vehicle: 'green-pickup', complaint: 'Left bank rattles, weak on one cylinder', odometerKm: 132_800, promisedInHours: 3, bay: 'Bay 3',
    sessions: [{ hoursAgo: 50, conditions: HOT, gauge: GAUGE, tester: TESTER, readings: [...dry([141, 139, 38, 143, 140, 142, 138, 141]), { test: 'valve-lift', cylinder: 3, valve: 'intake', mm: 1.2 }, leak(3, 73)] }],
    suggestion: { decision: 'taken' },
    quote: { lines: [{ kind: 'labour', operation: 'rocker-pushrod', cylinders: [3], text: 'Rocker or pushrod', quantity: 1.5 }, { kind: 'part', operation: 'rocker-pushrod', text: 'Pushrod', quantity: 1, priceMinor: 2_900 }] },
    approved: true, customer: { kind: 'given', method: 'phone' },
    findings: [{ cylinders: [3], fault: 'valve-not-opening', seen: 'Intake pushrod of 3 bent and out of its cup.' }], repair: { finished: true },
  },
  // Waits for the customer.
  {
    garage: 'mill', vehicle: 'brown-tourer', complaint: 'Stood two winters, will not pull', odometerKm: 51_200, promisedInHours: 72,
    contacts: [{ kind: 'call', text: 'No answer, message left', nextInHours: 2 }],
    sessions: [{ hoursAgo: 28, conditions: COLD, gauge: GAUGE, tester: TESTER, readings: [...dry([131, 92, 128, 126]), leak(2, 55, { intake: 2 }), leak(1, 72)] }],
    suggestion: { decision: 'taken' },
    quote: { lines: [{ kind: 'labour', operation: 'sticking-valve', cylinders: [2], text: 'Free the valve, run, test again', quantity: 1.5 }], note: 'Stored long: free it and run it before anything comes off.' }, approved: true,
  },
  // Ready: release retest passed.
  {
    garage: 'mill', vehicle: 'yellow-camper', complaint: 'Hot start poor, one cylinder weak', odometerKm: 109_700, promisedInHours: 1,
    sessions: [{ hoursAgo: 26, conditions: WARM, gauge: GAUGE, tester: TESTER, readings: [...dry([126, 128, 97, 124]), leak(3, 46, { exhaust: 2 }), leak(1, 73), { test: 'clearance', cylinder: 3, valve: 'exhaust', state: 'tight' }] }],
    suggestion: { decision: 'taken' },
    quote: { lines: [{ kind: 'labour', operation: 'clearances-run-test', text: 'Set clearances, run, test again', quantity: 1 }] }, approved: true, customer: { kind: 'given', method: 'in-person' },
    findings: [{ cylinders: [3], fault: 'clearance-tight', seen: 'Exhaust of 3 had no clearance at all; the face is still round.' }], repair: { finished: true },
    release: { session: { hoursAgo: 2, conditions: WARM, gauge: GAUGE, readings: dry([127, 129, 124, 125]) }, outcome: 'passed' },
  },
  // In repair.
  {
    garage: 'mill', vehicle: 'black-limousine', complaint: 'Misfire on the right bank before a wedding', odometerKm: 64_100, promisedInHours: 20, bay: 'Bay 4',
    sessions: [{ hoursAgo: 30, conditions: HOT, gauge: GAUGE, tester: TESTER, readings: [...dry([144, 146, 143, 145, 147, 101, 143, 146]), ...wet({ 6: 108, 5: 160 }), leak(6, 37, { exhaust: 3 }), leak(5, 72)] }],
    suggestion: { decision: 'taken' }, quote: { lines: headValves([6]) }, approved: true, customer: { kind: 'given', method: 'written' }, repair: {},
  },
  // Approved by manager and customer, not begun.
  {
    garage: 'mill', vehicle: 'silver-saloon', complaint: 'Uneven idle, worse cold', odometerKm: 166_000, promisedInHours: 96,
    sessions: [{ hoursAgo: 52, conditions: HOT, gauge: GAUGE, tester: TESTER, readings: [...dry([178, 181, 179, 137, 180, 176]), leak(4, 43, { intake: 3 }), leak(1, 74)] }],
    suggestion: { decision: 'taken' }, quote: { lines: headValves([4]) }, approved: true, customer: { kind: 'given', method: 'phone' },
  },
  // Booked, not seen yet.
  { garage: 'mill', vehicle: 'grey-estate', complaint: 'Head torque and compression again after the valve work', odometerKm: 88_900, promisedInHours: 30 },
  { garage: 'mill', vehicle: 'white-hatch', complaint: 'Sluggish on hills, wants to know if the engine is tired', odometerKm: 122_400, promisedInHours: 48 },
  // Testing: numbers that must not be compared (throttle shut, cold), then again as it should be.
  {
    garage: 'mill', vehicle: 'blue-saloon', complaint: 'Feels flat since the gasket; follow-up after 500 km', odometerKm: 98_020, promisedInHours: 8,
    sessions: [
      { hoursAgo: 3, conditions: SHUT, gauge: 'Gauge 5, old', readings: dry([95, 95, 90, 95, 90, 95]) },
      { hoursAgo: 1.5, conditions: WARM, gauge: GAUGE, readings: dry([147, 149, 144, 143, 133, 146]), moved: { index: 4, cylinder: 6, reason: 'called out for 5, the hose sat on 6' }, leftOpen: true },
    ],
    suggestion: { decision: 'taken' },
  },
  // Cancelled.
  { garage: 'mill', vehicle: 'yellow-camper', complaint: 'Wants a service before the holidays', cancelled: 'Customer found an earlier date elsewhere' },
  // Testing; a refused quote beside it.
  {
    garage: 'mill', vehicle: 'violet-saloon', complaint: 'Second opinion on a quote from elsewhere: “engine finished”', odometerKm: 166_010,
    sessions: [{ hoursAgo: 60, conditions: HOT, gauge: GAUGE, readings: dry([176, 180, 178, 163, 179, 175]) }],
    suggestion: { decision: 'declined', reason: 'Wanted to repeat 4 first', instead: 'cylinder 4 again' },
    quote: { lines: [{ kind: 'labour', operation: 'overhaul', text: 'Overhaul', quantity: 40 }] }, refused: 'The readings do not carry an overhaul: one cylinder nine percent low and even so within a tenth.',
  },
]
