import { STANDARD_AIR_PA } from './atmosphere.ts'
import { flowFunction } from './nozzle.ts'

/** Supply of the reference leakage tester: 80 psi gauge (FAA AC 43.13-1B par. 8-14, second hand). */
export const REFERENCE_SUPPLY_PA = 80 * 6894.757293168361
/** Restrictors prescribed by bore: .040 in below 5.00 in (127 mm), .060 in from there (FAA AC 43.13-1B par. 8-14, second hand). */
const SMALL_RESTRICTOR_MM = 1.016
const LARGE_RESTRICTOR_MM = 1.524
const LARGE_BORE_MM = 127

/** The restrictor prescribed for a bore; an unknown bore takes the small one. */
export function prescribedRestrictorMm(boreMm: number | undefined): number {
  return boreMm !== undefined && boreMm >= LARGE_BORE_MM ? LARGE_RESTRICTOR_MM : SMALL_RESTRICTOR_MM
}

/** Geometric area of a round hole, mm2. */
export function holeAreaMm2(diameterMm: number): number {
  return (Math.PI / 4) * diameterMm * diameterMm
}

/**
 * Leak area over restrictor area of a differential leakage tester: two isentropic orifices in series,
 * A_leak p2 f(p3/p2) = A_restrictor p1 f(p2/p1).
 *
 * @param supplyPa, heldPa gauge pressures, held at most the supply @param airPa absolute air pressure
 * @returns 0 where all is held, Infinity where nothing is
 * @example leakAreaRatio(551580.58, 413685.44, 101325) // 1.058556 (80 psi supplied, 60 held)
 */
export function leakAreaRatio(supplyPa: number, heldPa: number, airPa: number): number {
  const upstream = supplyPa + airPa
  const between = heldPa + airPa
  const out = between * flowFunction(airPa / between)
  if (out === 0) return Infinity
  return (upstream * flowFunction(between / upstream)) / out
}

/**
 * Flow through a leak under what the reference tester still holds, as part of the flow through it under the whole supply, at sea level: the
 * restrictor lets no more through however large the leak, and leaks of one cylinder share the flow by their areas.
 * @param percent lost at the reference tester
 * @example flowShare(0) // 1
 */
export function flowShare(percent: number): number {
  const flowAt = (heldPa: number): number => (heldPa + STANDARD_AIR_PA) * flowFunction(STANDARD_AIR_PA / (heldPa + STANDARD_AIR_PA))
  return flowAt(REFERENCE_SUPPLY_PA * (1 - percent / 100)) / flowAt(REFERENCE_SUPPLY_PA)
}

/**
 * Gauge pressure a tester holds behind its restrictor against a leak (the inverse of `leakAreaRatio`).
 * @returns the supply for no leak, towards 0 as the leak grows; exact to a part in 1e14 by bisection
 */
export function heldPressurePa(areaRatio: number, supplyPa: number, airPa: number): number {
  if (areaRatio <= 0) return supplyPa
  if (areaRatio === Infinity) return 0
  let low = 0
  let high = supplyPa
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2
    // more held means a smaller leak
    if (leakAreaRatio(supplyPa, middle, airPa) > areaRatio) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/**
 * Percent lost that the reference tester (80 psi, prescribed restrictor, sea level) would show for a leak of this area.
 * @example percentAtReference(1.058556 * holeAreaMm2(1.016), 1.016) // 25
 */
export function percentAtReference(leakAreaMm2: number, restrictorMm: number): number {
  const held = heldPressurePa(leakAreaMm2 / holeAreaMm2(restrictorMm), REFERENCE_SUPPLY_PA, STANDARD_AIR_PA)
  return 100 * (1 - held / REFERENCE_SUPPLY_PA)
}
