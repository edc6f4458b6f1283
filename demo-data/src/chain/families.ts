import type { DemoFamily } from './types.ts'

const own = 'the chain’s own sheet (invented for the demo)'
const basis = (...fields: string[]) => Object.fromEntries(fields.map((field) => [field, own]))

/** Invented engine designs: two to eight cylinders, in line, V and flat, petrol and diesel. */
export const FAMILIES: readonly DemoFamily[] = [
  {
    name: 'Larch four',
    specification: { fuel: 'petrol', layout: 'inline', cylinders: 4, firingOrder: [1, 3, 4, 2], gaskets: [[1, 2, 3, 4]], boreMm: 71, strokeMm: 74, rodLengthMm: 132, compressionRatio: 8.7, intakeClosesDegAbdc: 52, valveGear: 'overhead', cooling: 'water', injection: 'none', hotExhaustCylinders: [2, 3] },
    basis: basis('boreMm', 'strokeMm', 'rodLengthMm', 'compressionRatio', 'intakeClosesDegAbdc', 'firingOrder', 'hotExhaustCylinders'),
    leads: { rotor: 'anticlockwise', leadOneAtOClock: 1 },
  },
  {
    name: 'Rowan six',
    specification: { fuel: 'petrol', layout: 'inline', cylinders: 6, firingOrder: [1, 5, 3, 6, 2, 4], boreMm: 82, strokeMm: 86, rodLengthMm: 150, compressionRatio: 8.9, intakeClosesDegAbdc: 56, valveGear: 'overhead', cooling: 'water', injection: 'none', limits: { spreadPercent: 15, minimum: { value: 110, unit: 'psi' } } },
    basis: basis('boreMm', 'strokeMm', 'compressionRatio', 'limits', 'firingOrder'),
    leads: { rotor: 'clockwise', leadOneAtOClock: 5 },
  },
  {
    name: 'Elder V8',
    specification: { fuel: 'petrol', layout: 'v', cylinders: 8, banks: [[1, 2, 3, 4], [5, 6, 7, 8]], firingOrder: [1, 5, 4, 2, 6, 3, 7, 8], boreMm: 93, strokeMm: 79, rodLengthMm: 146, compressionRatio: 8.6, intakeClosesDegAbdc: 60, valveGear: 'overhead', cooling: 'water', injection: 'none' },
    basis: basis('boreMm', 'strokeMm', 'compressionRatio', 'firingOrder', 'banks'),
    leads: { rotor: 'clockwise', leadOneAtOClock: 7 },
  },
  {
    name: 'Hornbeam V6',
    specification: { fuel: 'petrol', layout: 'v', cylinders: 6, banks: [[1, 2, 3], [4, 5, 6]], firingOrder: [1, 4, 2, 5, 3, 6], boreMm: 90, strokeMm: 72, rodLengthMm: 140, compressionRatio: 9.4, intakeClosesDegAbdc: 54, injection: 'port', cooling: 'water' },
    basis: basis('boreMm', 'strokeMm', 'compressionRatio', 'firingOrder', 'banks'),
  },
  {
    name: 'Hazel flat four',
    specification: { fuel: 'petrol', layout: 'flat', cylinders: 4, banks: [[1, 3], [2, 4]], firingOrder: [1, 3, 2, 4], boreMm: 79, strokeMm: 66, rodLengthMm: 131, compressionRatio: 8.2, intakeClosesDegAbdc: 50, cooling: 'water', injection: 'none', limits: { spreadPressure: { value: 1.5, unit: 'bar' } } },
    basis: basis('boreMm', 'strokeMm', 'compressionRatio', 'limits', 'banks'),
  },
  {
    name: 'Alder diesel four',
    specification: { fuel: 'diesel', injection: 'mechanical-diesel', layout: 'inline', cylinders: 4, firingOrder: [1, 3, 4, 2], boreMm: 84, strokeMm: 90, rodLengthMm: 148, compressionRatio: 21, intakeClosesDegAbdc: 42, cooling: 'water', limits: { minimum: { value: 300, unit: 'psi' }, spreadPressure: { value: 50, unit: 'psi' } } },
    basis: basis('boreMm', 'strokeMm', 'compressionRatio', 'limits'),
  },
  {
    name: 'Sorrel three',
    specification: { fuel: 'petrol', injection: 'port', layout: 'inline', cylinders: 3, firingOrder: [1, 2, 3], boreMm: 73, strokeMm: 79, rodLengthMm: 140, compressionRatio: 10.2, intakeClosesDegAbdc: 48, cooling: 'water' },
    basis: basis('boreMm', 'strokeMm', 'compressionRatio', 'firingOrder'),
  },
  {
    name: 'Aspen twin',
    specification: { fuel: 'petrol', injection: 'none', layout: 'inline', cylinders: 2, firingOrder: [1, 2], gaskets: [[1], [2]], boreMm: 77, strokeMm: 70, rodLengthMm: 128, compressionRatio: 7.4, intakeClosesDegAbdc: 45, cooling: 'air' },
    basis: basis('boreMm', 'strokeMm', 'compressionRatio'),
  },
]
