import type { Random } from '../random.ts'
import { LAYOUTS, type Layout } from './layouts.ts'

/** An invented engine as it left the works. Lengths in metres, angles in crank degrees. */
export type Design = {
  readonly fuel: 'petrol' | 'diesel'
  readonly injection: 'none' | 'port' | 'mechanical-diesel' | 'common-rail'
  readonly layout: Layout
  /** Cylinders under one gasket piece, in order. */
  readonly gaskets: readonly (readonly number[])[]
  readonly valveGear: 'overhead' | 'side'
  readonly cooling: 'water' | 'air'
  readonly boreM: number
  readonly strokeM: number
  readonly rodM: number
  readonly compressionRatio: number
  /** Where the intake stops passing air worth counting; the catalogue's seat timing is some degrees later. */
  readonly intakeClosesDegAbdc: number
  readonly catalogueIntakeClosesDegAbdc: number
  readonly valveLiftMm: { readonly intake: number; readonly exhaust: number }
}

const DIESEL_SHARE = 0.1
const SIDE_VALVE_SHARE = 0.06
const AIR_COOLED_SHARE = { flat: 0.6, other: 0.03 }

/** Draws an engine design: sizes, ratios and timings within what road engines of the last ninety years had (from memory). */
export function drawDesign(random: Random): Design {
  const index = Number(random.weighted(Object.fromEntries(LAYOUTS.map((item, i) => [String(i), item.weight]))))
  const layout = LAYOUTS[index] as Layout
  const diesel = layout.layout === 'inline' && random.chance(DIESEL_SHARE)
  const sideValve = !diesel && layout.layout === 'inline' && random.chance(SIDE_VALVE_SHARE)
  const airCooled = !diesel && random.chance(layout.layout === 'flat' ? AIR_COOLED_SHARE.flat : AIR_COOLED_SHARE.other)
  const sweptM3 = Math.min(1.1e-3, Math.max(1.5e-4, random.lognormal(diesel ? 5e-4 : 4.2e-4, 0.28)))
  const boreToStroke = random.between(0.85, 1.15)
  const boreM = Math.cbrt((4 * sweptM3 * boreToStroke) / Math.PI)
  const strokeM = boreM / boreToStroke
  const intakeClosesDegAbdc = diesel ? random.between(25, 42) : random.between(38, 62)
  const lift = random.between(7, 10.5)
  return {
    fuel: diesel ? 'diesel' : 'petrol',
    injection: diesel ? (random.chance(0.75) ? 'mechanical-diesel' : 'common-rail') : random.chance(0.6) ? 'none' : 'port',
    layout,
    gaskets: airCooled ? (layout.layout === 'flat' ? layout.banks.flat().map((cylinder) => [cylinder]) : layout.banks) : layout.banks,
    valveGear: sideValve ? 'side' : 'overhead',
    cooling: airCooled ? 'air' : 'water',
    boreM,
    strokeM,
    rodM: strokeM * random.between(1.55, 1.95),
    compressionRatio: diesel ? random.between(17, 22) : sideValve ? random.between(5.2, 6.8) : random.between(7.2, 10.2),
    intakeClosesDegAbdc,
    catalogueIntakeClosesDegAbdc: Math.round(intakeClosesDegAbdc + random.normal(6, 5)),
    valveLiftMm: { intake: lift, exhaust: lift * random.between(0.92, 1.02) },
  }
}

/** All cylinders of a design in ascending order. */
export function cylinderNumbers(design: Design): number[] {
  return design.layout.banks.flat().sort((a, b) => a - b)
}

/** Pairs of cylinders that share a land of one gasket piece. */
export function gasketPairs(design: Design): [number, number][] {
  return design.gaskets.flatMap((piece) => piece.slice(1).map((cylinder, i): [number, number] => [piece[i] as number, cylinder]))
}

/** Crank angle of a cylinder after its own firing top dead centre (0 to 720) while another stands at firing top dead centre. */
export function angleWhileAtTop(design: Design, atTop: number, other: number): number {
  const order = design.layout.firingOrder
  const share = 720 / order.length
  return ((((order.indexOf(atTop) - order.indexOf(other)) * share) % 720) + 720) % 720
}

/** Which valves of a cylinder stand open at a crank angle after firing top dead centre (usual timings, from memory). */
export function openValves(design: Design, degAfterFiring: number): { readonly intake: boolean; readonly exhaust: boolean } {
  const exhaust = degAfterFiring > 135 && degAfterFiring < 370
  const intake = degAfterFiring > 350 && degAfterFiring < 540 + design.intakeClosesDegAbdc - 8
  return { intake, exhaust }
}
