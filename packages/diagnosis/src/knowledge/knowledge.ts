import { causes, crankingSpeed, levels, oneBank, otherGauge, wornEvenly } from './causes.ts'
import { bridge, faults, faultyCylinder, pairs, tendencies, withCylinders } from './faults.ts'
import { fingerprint } from './hash.ts'
import { afterRun, past, pastLimits } from './history.ts'
import { listening } from './listening.ts'
import { borescope, ignition, plugs, running, trace, valveTrain } from './looks.ts'
import { minutes, stopping } from './minutes.ts'
import { leakageTest, noise, oil } from './noise.ts'
import { growth, operations } from './operations.ts'
import { cylinderSigns, engineSigns, groups, otherOil, quiet, vacuum, vacuumDepth } from './signs.ts'

/** Version of the tables: goes up whenever a value changes. */
export const KNOWLEDGE_VERSION = '19'

const tables = {
  faults, bridge, pairs, tendencies, population: { faultyCylinder, withCylinders }, causes, wornEvenly, oneBank, otherGauge, crankingSpeed, levels, noise, leakageTest, oil, listening,
  plugs, ignition, borescope, running, trace, valveTrain, cylinderSigns, engineSigns, groups, otherOil, quiet, vacuum, vacuumDepth, past, pastLimits, afterRun, minutes, stopping,
  operations, growth,
}

/** All tables of the model. Each leaf is an `Entry` with its basis. */
export type Knowledge = typeof tables & { readonly version: string }

/** The tables as they come with this version of the model. */
export const defaultKnowledge: Knowledge = { version: KNOWLEDGE_VERSION, ...tables }

const known = new WeakMap<Knowledge, string>()

/** Fingerprint of the values (words and bases too): recorded with every evaluation. */
export function knowledgeHash(knowledge: Knowledge): string {
  let hash = known.get(knowledge)
  if (hash === undefined) {
    hash = fingerprint(JSON.stringify(knowledge))
    known.set(knowledge, hash)
  }
  return hash
}
