/** One cylinder's dimensions in metres; the clearance volume is what is left at top dead centre, in m3. */
export type CylinderGeometry = {
  readonly boreM: number
  readonly strokeM: number
  readonly rodM: number
  readonly clearanceM3: number
}

/** Distance in metres from the top of the stroke at a crank angle in degrees after top dead centre (plane geometry of crank and rod). */
export function pistonDepthM(geometry: CylinderGeometry, degAtdc: number): number {
  const radius = geometry.strokeM / 2
  const angle = (degAtdc * Math.PI) / 180
  const side = radius * Math.sin(angle)
  return radius * (1 - Math.cos(angle)) + geometry.rodM - Math.sqrt(geometry.rodM * geometry.rodM - side * side)
}

export function pistonAreaM2(geometry: CylinderGeometry): number {
  return (Math.PI * geometry.boreM * geometry.boreM) / 4
}

export function sweptVolumeM3(geometry: CylinderGeometry): number {
  return pistonAreaM2(geometry) * geometry.strokeM
}
