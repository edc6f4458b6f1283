import { WORLD_A } from './a.ts'
import { WORLD_B } from './b.ts'
import type { World } from './world.ts'

const WORLDS: Readonly<Record<string, World>> = { A: WORLD_A, B: WORLD_B }

/** The world of that name; an unknown name is an error that lists the known ones. */
export function worldNamed(name: string): World {
  const world = WORLDS[name]
  if (world === undefined) throw new Error(`world: got "${name}", expected one of ${Object.keys(WORLDS).join(', ')}`)
  return world
}
