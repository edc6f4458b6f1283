/**
 * Slider-crank volume over clearance volume, V/Vc = 1 + (rc - 1)/2 [R + 1 - cos t - sqrt(R^2 - sin^2 t)].
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals, ch. 2 (from memory).
 * @param crankDeg crank angle after top dead centre, degrees; any angle (periodic)
 * @param compressionRatio static ratio rc, above 1
 * @param rodRatio rod length over crank radius R, above 1 (R of infinity: sinusoidal motion)
 * @returns 1 at top dead centre, rc at bottom dead centre
 * @example volumeRatio(90, 10, 3.5) // 6.156541
 */
export function volumeRatio(crankDeg: number, compressionRatio: number, rodRatio: number): number {
  const angle = (crankDeg * Math.PI) / 180
  const sine = Math.sin(angle)
  const lift = rodRatio === Infinity ? 1 - Math.cos(angle) : rodRatio + 1 - Math.cos(angle) - Math.sqrt(rodRatio * rodRatio - sine * sine)
  return 1 + ((compressionRatio - 1) / 2) * lift
}

/**
 * Dynamic ratio: volume where the intake valve closes over clearance volume. Compression starts there, not at bottom dead centre
 * (Heywood, from memory).
 * @param intakeClosesDegAbdc crank degrees after bottom dead centre; 0 gives the static ratio
 * @example dynamicRatio(10, 3.5, 50) // 8.774418
 */
export function dynamicRatio(compressionRatio: number, rodRatio: number, intakeClosesDegAbdc: number): number {
  return volumeRatio(180 - intakeClosesDegAbdc, compressionRatio, rodRatio)
}

/** Swept volume of one cylinder in cm3. @example displacementCm3(80, 80) // 402.12 */
export function displacementCm3(boreMm: number, strokeMm: number): number {
  return ((Math.PI / 4) * boreMm * boreMm * strokeMm) / 1000
}
