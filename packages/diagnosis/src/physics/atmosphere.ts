/** Sea-level standard air, ISO 2533:1975. */
export const STANDARD_AIR_PA = 101325
export const STANDARD_AIR_K = 288.15
/** Fall of temperature with height below 11 km, K/m, ISO 2533:1975. */
const LAPSE_K_PER_M = 0.0065
/** Gas constant of dry air, J/(kg K), ISO 2533:1975. */
export const AIR_GAS_CONSTANT = 287.05287
/** Standard acceleration of free fall, m/s2. */
const GRAVITY = 9.80665

/**
 * Temperature of the standard atmosphere, T = 288.15 - .0065 H. Valid to 11,000 m of geopotential height (also below sea level).
 * @example standardTemperatureK(1000) // 281.65
 */
export function standardTemperatureK(altitudeM: number): number {
  return STANDARD_AIR_K - LAPSE_K_PER_M * altitudeM
}

/**
 * Absolute pressure of the standard atmosphere, p = 101325 (T/288.15)^(g/(R L)), ISO 2533:1975, geopotential height.
 * Valid to 11,000 m; 0 m gives 101325 Pa.
 * @example standardPressurePa(1500) // 84556.0
 */
export function standardPressurePa(altitudeM: number): number {
  return STANDARD_AIR_PA * (standardTemperatureK(altitudeM) / STANDARD_AIR_K) ** (GRAVITY / (AIR_GAS_CONSTANT * LAPSE_K_PER_M))
}

/** Density of the standard atmosphere in kg/m3 (ideal gas). @example standardDensity(0) // 1.225 */
export function standardDensity(altitudeM: number): number {
  return standardPressurePa(altitudeM) / (AIR_GAS_CONSTANT * standardTemperatureK(altitudeM))
}
