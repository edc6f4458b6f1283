import { FLOW_GAMMA, GAS_CONSTANT_J_PER_KG_K } from './air.ts'

const CRITICAL_RATIO = (2 / (FLOW_GAMMA + 1)) ** (FLOW_GAMMA / (FLOW_GAMMA - 1))
const SUBSONIC_FACTOR = (2 * FLOW_GAMMA) / (FLOW_GAMMA - 1)
const CHOKED_FACTOR = Math.sqrt(FLOW_GAMMA * (2 / (FLOW_GAMMA + 1)) ** ((FLOW_GAMMA + 1) / (FLOW_GAMMA - 1)))
const INVERSE_GAMMA = 1 / FLOW_GAMMA

/** Flow factor of an isentropic hole for a pressure ratio (downstream over upstream) of 0 to 1: m = A p / sqrt(R T) x factor. */
export function flowFactor(ratio: number): number {
  if (ratio <= CRITICAL_RATIO) return CHOKED_FACTOR
  if (ratio >= 1) return 0
  const x = ratio ** INVERSE_GAMMA
  return Math.sqrt(SUBSONIC_FACTOR * x * (x - ratio))
}

/** Mass flow in kg/s through an effective area in m2 from `upPa` at `upTempK` to `downPa` (both absolute, up at least down). */
export function massFlowKgS(areaM2: number, upPa: number, upTempK: number, downPa: number): number {
  return (areaM2 * upPa * flowFactor(downPa / upPa)) / Math.sqrt(GAS_CONSTANT_J_PER_KG_K * upTempK)
}
