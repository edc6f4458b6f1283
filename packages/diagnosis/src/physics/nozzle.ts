import { AIR_GAS_CONSTANT } from './atmosphere.ts'

/** Ratio of specific heats of air. */
export const AIR_KAPPA = 1.4

/**
 * Pressure ratio at and below which flow is choked, (2/(k+1))^(k/(k-1)).
 * Source: NACA report 1135 (from memory). @example criticalRatio(1.4) // .528281787717
 */
export function criticalRatio(kappa = AIR_KAPPA): number {
  return (2 / (kappa + 1)) ** (kappa / (kappa - 1))
}

/** Static over stagnation pressure at a Mach number (isentropic; NACA report 1135, from memory). @example pressureRatioAtMach(0.5) // .843019 */
export function pressureRatioAtMach(mach: number, kappa = AIR_KAPPA): number {
  return (1 + ((kappa - 1) / 2) * mach * mach) ** (-kappa / (kappa - 1))
}

/** Area over critical area at a Mach number above 0 (isentropic; NACA report 1135, from memory). 1 at Mach 1. @example areaRatioAtMach(0.2) // 2.963520 */
export function areaRatioAtMach(mach: number, kappa = AIR_KAPPA): number {
  const power = (kappa + 1) / (2 * (kappa - 1))
  return ((1 + ((kappa - 1) / 2) * mach * mach) / ((kappa + 1) / 2)) ** power / mach
}

const CRITICAL = criticalRatio()
/** sqrt(k) (2/(k+1))^((k+1)/(2(k-1))): .684731456378 for air. */
const CHOKED_FLOW = Math.sqrt(AIR_KAPPA) * (2 / (AIR_KAPPA + 1)) ** ((AIR_KAPPA + 1) / (2 * (AIR_KAPPA - 1)))

/**
 * Dimensionless isentropic flow of air through an opening, m sqrt(R T0) / (A p0), choked or not.
 * @param ratio downstream over upstream absolute pressure; 1 and above gives 0 (no flow back), at and below .528 the choked value
 */
export function flowFunction(ratio: number): number {
  if (ratio >= 1) return 0
  if (ratio <= CRITICAL) return CHOKED_FLOW
  // r^(2/k) - r^((k+1)/k) = r^(2/k) (1 - r^((k-1)/k)); expm1 keeps it exact as the ratio nears 1
  const logRatio = Math.log(ratio)
  const difference = -Math.exp((2 / AIR_KAPPA) * logRatio) * Math.expm1(((AIR_KAPPA - 1) / AIR_KAPPA) * logRatio)
  return Math.sqrt(((2 * AIR_KAPPA) / (AIR_KAPPA - 1)) * difference)
}

/**
 * Mass flow of air in kg/s through an opening without losses (isentropic nozzle; flows as in numeric tables of the standard relations).
 * @param areaMm2 effective area @param upstreamPa, downstreamPa absolute pressures @param upstreamK stagnation temperature
 * @example 1000 * massFlow(Math.PI / 4, 701325, 101325, 293.15) // 1.300180 g/s
 */
export function massFlow(areaMm2: number, upstreamPa: number, downstreamPa: number, upstreamK: number): number {
  return (areaMm2 * 1e-6 * upstreamPa * flowFunction(downstreamPa / upstreamPa)) / Math.sqrt(AIR_GAS_CONSTANT * upstreamK)
}
