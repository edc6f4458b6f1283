/** Dry air as the working gas, and the pressure at the garage's height. SI units throughout. */
export const GAS_CONSTANT_J_PER_KG_K = 287.05
/** Ratio of specific heats used for flow through holes, near room temperature. */
export const FLOW_GAMMA = 1.4
export const PA_PER_PSI = 6894.757293168361

/** Ratio of specific heats of air at a temperature in kelvin: 1.400 at 300 K, 1.364 at 800 K (fit from memory). */
export function gammaAt(tempK: number): number {
  return 1.4 - 7.2e-5 * (tempK - 300)
}

/** Station pressure in Pa at a height in metres, standard atmosphere below 11 km (ISO 2533, from memory). */
export function stationPressurePa(heightM: number): number {
  return 101325 * (1 - (0.0065 * heightM) / 288.15) ** 5.25588
}
