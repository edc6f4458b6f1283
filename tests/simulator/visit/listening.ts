import type { LeakageReading } from '@evenbore/contract'
import { angleWhileAtTop, gasketPairs, openValves } from '../population/design.ts'
import type { Cylinder } from '../population/engine.ts'
import type { Path } from '../worlds/world.ts'
import type { Leaks } from './leaks.ts'
import type { Visit } from './visit.ts'

type Heard = Pick<LeakageReading, 'heard' | 'neighbour'>
type Place = 'intake' | 'exhaust' | 'crankcase' | 'coolant' | 'neighbour' | 'outside'

const PLACE_OF: Record<Path, Place> = { intake: 'intake', exhaust: 'exhaust', rings: 'crankcase', coolant: 'coolant', outside: 'outside' }
const REFERENCE_PA = 652_905

/** What an ear makes of the flow through each path: a step louder for each factor in flow, noisy, saturating at loud. */
export function listen(visit: Visit, cylinder: Cylinder, leaks: Leaks, heldPa: number, slack: readonly number[]): Heard {
  const { engine, random } = visit
  const { listening, mistakes } = engine.world
  const share = heldPa / REFERENCE_PA
  const loudness = (area: number, faint: number): number => {
    const level = area <= 0 ? -2 : 1 + Math.log((area * share) / faint) / Math.log(listening.factorPerStep)
    const heard = Math.round(level + random.normal(0, listening.noise))
    return heard < 1 ? (random.chance(listening.falseFaint) ? 1 : 0) : Math.min(3, heard)
  }
  const throughBreather = engine.breather ? listening.breatherShare * leaks.rings : 0
  const areas: Record<Path, number> = {
    exhaust: leaks.exhaust,
    intake: leaks.intake + throughBreather,
    rings: leaks.rings,
    coolant: engine.design.cooling === 'air' ? 0 : leaks.coolant,
    outside: leaks.outside,
  }
  const heard: Partial<Record<Place, number>> = {}
  for (const path of Object.keys(PLACE_OF) as Path[]) {
    if (path === 'coolant' && engine.design.cooling === 'air') continue
    if (random.chance(listening.notListened) || (path === 'outside' && random.chance(0.3))) continue
    heard[PLACE_OF[path]] = loudness(areas[path], listening.faintMm2[path])
  }
  if (random.chance(mistakes.misheardPath)) [heard.intake, heard.exhaust] = [heard.exhaust ?? 0, heard.intake ?? 0]
  const neighbour = loudestNeighbour(visit, cylinder, leaks, slack)
  if (neighbour === undefined || random.chance(listening.notListened)) return { heard }
  heard.neighbour = loudness(neighbour.area, listening.faintMm2.neighbour)
  return { heard, ...(heard.neighbour > 0 || random.chance(0.5) ? { neighbour: neighbour.cylinder } : {}) }
}

/** The neighbour at whose plug hole most air comes out: across the gasket, or through a manifold to which its valve stands open. */
function loudestNeighbour(
  visit: Visit,
  cylinder: Cylinder,
  leaks: Leaks,
  slack: readonly number[],
): { cylinder: number; area: number } | undefined {
  const { engine } = visit
  const { throughManifold } = engine.world.listening
  let loudest: { cylinder: number; area: number } | undefined
  for (const pair of gasketPairs(engine.design)) {
    if (!pair.includes(cylinder.number)) continue
    const other = pair[0] === cylinder.number ? pair[1] : pair[0]
    const open = openValves(engine.design, angleWhileAtTop(engine.design, cylinder.number, other))
    const shut = slack.includes(other)
    const area =
      (leaks.neighbours.get(other) ?? 0) +
      (open.intake && !shut ? throughManifold * leaks.intake : 0) +
      (open.exhaust && !shut ? 0.7 * throughManifold * leaks.exhaust : 0)
    if (loudest === undefined || area > loudest.area) loudest = { cylinder: other, area }
  }
  return loudest
}
