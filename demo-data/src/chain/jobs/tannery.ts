import { DIESEL, HOT, WARM } from '../conditions.ts'
import { dry, leak, plugs, wet } from '../readings.ts'
import type { DemoJob } from '../types.ts'

const GAUGE = 'Manometer 2'
const TESTER = 'Druckverlusttester'
const bar = (values: readonly (number | null)[]) => dry(values, 'bar')

/** Old Tannery: eleven visits, told in bar. */
export const TANNERY_JOBS: readonly DemoJob[] = [
  // Handed over: carbon, high reading.
  {
    garage: 'tannery', vehicle: 'green-roadster', complaint: 'Klingelt, läuft nach', odometerKm: 90_400,
    sessions: [{ hoursAgo: 1700, conditions: HOT, gauge: GAUGE, readings: [...bar([10.2, 10.3, 12.1, 10.4]), { test: 'borescope', cylinder: 3, seen: ['carbon'] }] }],
    suggestion: { decision: 'taken' }, quote: { lines: [{ kind: 'labour', operation: 'decoke', cylinders: [3], text: 'Kopf ab, entkohlen', quantity: 7.5 }] }, approved: true, customer: { kind: 'given', method: 'phone' },
    findings: [{ cylinders: [3], fault: 'carbon-build-up', seen: 'Drei Millimeter Ölkohle auf Kolben 3.' }], repair: { finished: true },
    release: { session: { hoursAgo: 1600, conditions: HOT, gauge: GAUGE, readings: bar([10.3, 10.3, 10.4, 10.4]) }, outcome: 'passed' }, handOver: {},
  },
  // Handed over: fuel wash after a stuck float.
  {
    garage: 'tannery', vehicle: 'grey-saloon', complaint: 'Springt nicht an, riecht nach Benzin', odometerKm: 118_900,
    sessions: [{ hoursAgo: 1300, conditions: WARM, gauge: GAUGE, readings: [...plugs(['wet-fuel', 'wet-fuel', 'wet-fuel', 'tan', 'tan', 'tan']), ...bar([7.1, 7.3, 7.6, 9.6, 9.7, 9.5]), ...wet({ 1: 9.8, 5: 10.6 }, 'bar'), { test: 'observation', code: 'petrol-in-oil' }] }],
    suggestion: { decision: 'taken' }, quote: { lines: [{ kind: 'labour', operation: 'fuel-wash', cylinders: [1, 2, 3], text: 'Schwimmer, Choke, Ölwechsel, warm fahren', quantity: 2 }, { kind: 'part', operation: 'fuel-wash', text: 'Öl und Filter', quantity: 1, priceMinor: 5_400 }] }, approved: true, customer: { kind: 'given', method: 'in-person' },
    findings: [{ cylinders: [1, 2, 3], fault: 'fuel-wash', seen: 'Schwimmernadel des vorderen Vergasers hing; Öl verdünnt.' }], repair: { finished: true },
    release: { session: { hoursAgo: 1250, conditions: WARM, gauge: GAUGE, readings: bar([9.4, 9.5, 9.5, 9.6, 9.7, 9.6]) }, outcome: 'passed' }, handOver: { followUps: [{ reason: 'Ölstand und Kompression nach einem Monat', inDays: 3 }] },
  },
  // Retest due.
  {
    garage: 'tannery', vehicle: 'fire-engine', complaint: 'Vor der Ausfahrt prüfen, läuft auf sieben', odometerKm: 21_300, promisedInHours: 10, bay: 'Platz 1',
    sessions: [{ hoursAgo: 48, conditions: WARM, gauge: GAUGE, tester: TESTER, readings: [...bar([9.3, 9.2, 9.4, 9.3, 6.1, 9.2, 9.3, 9.1]), leak(5, 2.9, { intake: 3 }, 'bar'), leak(1, 5.0, {}, 'bar')] }],
    suggestion: { decision: 'taken' }, quote: { lines: [{ kind: 'labour', operation: 'sticking-valve', cylinders: [5], text: 'Ventil gangbar machen, laufen lassen, wieder prüfen', quantity: 2 }] }, approved: true, customer: { kind: 'given', method: 'phone' },
    findings: [{ cylinders: [5], fault: 'valve-sticking', seen: 'Einlassventil 5 hing im Schaft, Sitz sauber.' }], repair: { finished: true },
  },
  // Waits for the manager.
  {
    garage: 'tannery', vehicle: 'copper-coupe', complaint: 'Zündaussetzer, neue Kerzen halfen nicht', odometerKm: 177_800, promisedInHours: 30, bay: 'Platz 2',
    sessions: [{ hoursAgo: 5, conditions: HOT, gauge: GAUGE, tester: TESTER, readings: [...bar([12.4, 12.5, 12.3, 12.4, 9.0, 12.2]), ...wet({ 5: 9.3, 4: 13.6 }, 'bar'), leak(5, 2.7, { exhaust: 3 }, 'bar'), leak(4, 5.1, {}, 'bar')] }],
    suggestion: { decision: 'taken' }, quote: { lines: [{ kind: 'labour', operation: 'head-valves', cylinders: [5], text: 'Kopf ab und auf, Ventile und Sitze', quantity: 11 }, { kind: 'part', operation: 'head-valves', text: 'Kopfdichtsatz und Ventile', quantity: 1, priceMinor: 21_900 }] },
  },
  // Waits for the customer.
  {
    garage: 'tannery', vehicle: 'farm-diesel', complaint: 'Raucht weiß, springt schlecht an', odometerKm: 9_900, contacts: [{ kind: 'call', text: 'Herr auf dem Feld, ruft abends zurück', nextInHours: 8 }],
    sessions: [{ hoursAgo: 26, conditions: DIESEL, readings: [...bar([24.1, 24.6, 20.2, 24.3])] }],
    suggestion: { decision: 'taken' }, quote: { lines: [{ kind: 'labour', operation: 'look-head-off', cylinders: [3], text: 'Kopf ab und nachsehen', quantity: 7 }] }, approved: true,
  },
  // Waits for the customer, second.
  {
    garage: 'tannery', vehicle: 'white-flat', complaint: 'Neue Ringe, raucht noch', odometerKm: 70_150, priorWork: { ringsNew: true },
    sessions: [{ hoursAgo: 50, conditions: HOT, gauge: GAUGE, readings: bar([8.4, 8.5, 7.7, 8.3]) }],
    suggestion: { decision: 'taken' }, quote: { lines: [{ kind: 'labour', operation: 'hard-run', text: 'Einfahren auf der Straße, dann wieder messen', quantity: 1 }] }, approved: true,
  },
  // Waits for parts.
  {
    garage: 'tannery', vehicle: 'bubble-car', complaint: 'Ein Zylinder fast ohne Druck', odometerKm: 33_300, promisedInHours: 150,
    sessions: [{ hoursAgo: 75, conditions: HOT, gauge: GAUGE, tester: TESTER, readings: [...bar([7.6, 2.4]), leak(2, 0.9, { exhaust: 3 }, 'bar')] }],
    suggestion: { decision: 'taken' }, quote: { lines: [{ kind: 'labour', operation: 'head-valves', cylinders: [2], text: 'Zylinderkopf 2 ab und auf, Ventile', quantity: 3 }, { kind: 'part', operation: 'head-valves', text: 'Auslassventil', quantity: 1, priceMinor: 3_700 }] }, approved: true, customer: { kind: 'given', method: 'message' }, parts: [{ text: 'Auslassventil', expectedInHours: 70 }],
  },
  // Ready: nothing found.
  {
    garage: 'tannery', vehicle: 'green-roadster', complaint: 'Vor dem Verkauf: Zustand des Motors?', odometerKm: 91_000,
    sessions: [{ hoursAgo: 8, conditions: HOT, gauge: GAUGE, tester: TESTER, readings: [...bar([10.2, 10.4, 10.3, 10.3]), leak(1, 5.1, {}, 'bar'), leak(2, 5.0, {}, 'bar'), leak(3, 5.1, {}, 'bar'), leak(4, 5.1, {}, 'bar')] }],
    suggestion: { decision: 'declined', reason: 'Käufer will alle vier auf Druckverlust sehen', instead: 'leakage on all four' }, nothingFound: 'Gleichmäßig und dicht. Bericht gedruckt.',
  },
  // In a bay, not tested.
  { garage: 'tannery', vehicle: 'grey-saloon', complaint: 'Ölstand und Kompression nach einem Monat', odometerKm: 119_700, bay: 'Platz 3', promisedInHours: 6 },
  // Booked.
  { garage: 'tannery', vehicle: 'white-flat', complaint: 'Ventilspiel, Winterdienst', odometerKm: 70_900, promisedInHours: 55 },
  // Testing: the evidence cannot decide yet.
  {
    garage: 'tannery', vehicle: 'plum-saloon', complaint: 'Gutachten: gleichmäßig genug?', odometerKm: 176_000,
    sessions: [{ hoursAgo: 1, conditions: HOT, gauge: GAUGE, readings: bar([12.4, 12.5, 12.3, 12.4, 11.3, 12.2]) }], suggestion: { decision: 'taken' },
  },
]
