import type { Random } from '../random.ts'
import { drawRange, drawSpread } from '../worlds/draw.ts'
import type { OwnFault, Path, Range, World } from '../worlds/world.ts'
import type { Design } from './design.ts'

/** What a fault does to its cylinder. Areas in mm2, effective, at 80 psi, engine hot. */
export type FaultEffect = {
  readonly fault: OwnFault
  readonly leaksMm2: Readonly<Partial<Record<Path, number>>>
  /** Share of its leak that stays with oil in the cylinder. */
  readonly oilLeaves: number
  /** Which valve it concerns, where it concerns one. */
  readonly valve?: 'intake' | 'exhaust'
  /** Share of the normal charge that gets in; 1 unless a valve does not open. */
  readonly fill: number
  /** Share of normal lift that is left; 1 unless a valve does not open. */
  readonly lift: number
  /** Clearance volume as a multiple of the normal one. */
  readonly clearanceScale: number
  /** Chance that the fault shows in a given test; below 1 for a sticky valve. */
  readonly shows: number
  /** Share of the leak when the engine is cold. */
  readonly coldShare: number
}

const PLAIN = { oilLeaves: 1, fill: 1, lift: 1, clearanceScale: 1, shows: 1, coldShare: 1 } as const

/** Draws the size and the particulars of a fault in this world. */
export function drawFault(random: Random, world: World, design: Design, fault: OwnFault): FaultEffect {
  const oil = (range: Range): number => {
    const leaves = drawRange(random, range)
    return design.layout.layout === 'flat' ? (1 + leaves) / 2 : leaves
  }
  const valveOil = (): number => (design.valveGear === 'side' ? random.between(0.5, 0.9) : drawRange(random, world.oilLeaves.valves))
  switch (fault) {
    case 'exhaust-valve-leak':
      return { ...PLAIN, fault, valve: 'exhaust', leaksMm2: { exhaust: drawSpread(random, world.leaksMm2[fault]) }, oilLeaves: valveOil() }
    case 'intake-valve-leak':
      return { ...PLAIN, fault, valve: 'intake', leaksMm2: { intake: drawSpread(random, world.leaksMm2[fault]) }, oilLeaves: valveOil() }
    case 'clearance-tight': {
      const valve = random.chance(0.75) ? 'exhaust' : 'intake'
      const leak = drawSpread(random, world.leaksMm2[fault])
      return { ...PLAIN, fault, valve, leaksMm2: { [valve]: leak }, oilLeaves: valveOil(), coldShare: random.between(0.2, 1) }
    }
    case 'valve-sticking': {
      const valve = random.chance(0.7) ? 'exhaust' : 'intake'
      const leak = drawSpread(random, world.leaksMm2[fault])
      return { ...PLAIN, fault, valve, leaksMm2: { [valve]: leak }, oilLeaves: valveOil(), shows: random.between(0.55, 1) }
    }
    case 'ring-wear':
      return { ...PLAIN, fault, leaksMm2: { rings: drawSpread(random, world.leaksMm2[fault]) }, oilLeaves: oil(world.oilLeaves.wornRings) }
    case 'ring-broken-or-stuck':
      return {
        ...PLAIN,
        fault,
        leaksMm2: { rings: drawSpread(random, world.leaksMm2[fault]) },
        oilLeaves: oil(world.oilLeaves.brokenRings),
      }
    case 'piston-damage':
      return { ...PLAIN, fault, leaksMm2: { rings: drawSpread(random, world.leaksMm2[fault]) }, oilLeaves: oil(world.oilLeaves.piston) }
    case 'fuel-wash':
      return { ...PLAIN, fault, leaksMm2: { rings: drawSpread(random, world.leaksMm2[fault]) }, oilLeaves: oil(world.oilLeaves.washed) }
    case 'gasket-to-coolant':
      return {
        ...PLAIN,
        fault,
        leaksMm2: { coolant: drawSpread(random, world.leaksMm2[fault]) },
        oilLeaves: drawRange(random, world.oilLeaves.head),
      }
    case 'gasket-to-outside':
      return {
        ...PLAIN,
        fault,
        leaksMm2: { outside: drawSpread(random, world.leaksMm2[fault]) },
        oilLeaves: drawRange(random, world.oilLeaves.head),
      }
    case 'plug-thread-leak':
      return { ...PLAIN, fault, leaksMm2: { outside: drawSpread(random, world.leaksMm2[fault]) }, oilLeaves: 1 }
    case 'cracked-head': {
      const total = drawSpread(random, world.leaksMm2[fault])
      const path: Path = design.cooling === 'air' ? 'outside' : random.weighted({ coolant: 7, outside: 1, exhaust: 1, intake: 1 })
      return {
        ...PLAIN,
        fault,
        leaksMm2: { [path]: total },
        oilLeaves: drawRange(random, world.oilLeaves.head),
        coldShare: random.between(0.5, 1),
      }
    }
    case 'carbon-build-up':
      return { ...PLAIN, fault, leaksMm2: {}, clearanceScale: random.between(0.72, 0.92) }
    case 'rod-bent':
      return { ...PLAIN, fault, leaksMm2: {}, clearanceScale: 1 + random.between(0.0012, 0.005) * clearanceRise(design) }
    case 'valve-not-opening':
      return { ...PLAIN, fault, leaksMm2: {}, ...drawDeadValve(random) }
  }
}

/** Relative growth of the clearance volume for each metre that the piston stops short of the top. */
function clearanceRise(design: Design): number {
  return (design.compressionRatio - 1) / design.strokeM
}

/** A dead or nearly dead valve: only an intake that hardly opens keeps the charge out (trade practice as computed in the design notes). */
function drawDeadValve(random: Random): { valve: 'intake' | 'exhaust'; fill: number; lift: number } {
  if (random.chance(0.35)) return { valve: 'exhaust', fill: 1, lift: random.chance(0.6) ? 0 : random.between(0.05, 0.4) }
  if (random.chance(0.6)) return { valve: 'intake', fill: 0, lift: 0 }
  const lift = random.between(0.02, 0.3)
  return { valve: 'intake', fill: Math.min(1, 0.3 + 7 * lift * random.between(0.6, 1.2)), lift }
}
