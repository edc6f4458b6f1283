import type { Caution, CautionCode, EngineDescription, TestName } from '@evenbore/contract'

/** What each caution says. Sources: US Army TM 5-4210-230-14&P-1 and TM 10-3930-618-20 (ignition), FAA AC 43.13-1B (air), 30 CFR 77.412(c); the rest from memory. */
const SAYS: Readonly<Record<CautionCode, string>> = {
  'oil-in-diesel': 'Oil in a diesel cylinder can fire or lock the engine: do not crank or start, drain it first and turn by hand.',
  cranking: "Out of gear, wheels chocked, ignition dead with the coil wire earthed, fuel off. The person at the key acts on call only; hands, hair and leads clear of fan and belts. Follow the maker's procedure first.",
  'petrol-mist': 'Petrol mist leaves open plug holes: no spark, flame or hot lamp near them, extinguisher within reach.',
  'liquid-in-cylinder': 'Liquid suspected in a cylinder: plugs out and turn by hand, never with the starter.',
  'wet-test-oil': 'Measure the oil, a little only: too much can lock the engine. It sprays back; expel it before the plugs go in.',
  'diesel-spray': 'Injection stopped before cranking. Fuel under pressure pierces skin: never loosen a line of a common-rail system.',
  'diesel-gauge': 'Use a gauge and adaptor rated for diesel compression.',
  'compressed-air': 'Air turns the crank hard: take the turning bar off first, start at 20 psi, hands out of line, no flame, no ear or hand to a pressurised opening, bleed before unscrewing. Never point air at a person.',
  'running-engine': 'Exhaust extraction on, keep clear of fan and hot parts, brakes and wheels secured.',
  'high-tension': 'Earth the lead that is off; short bursts only, since unburnt fuel overheats the exhaust.',
  'current-clamp': 'Plugs in, ignition and fuel dead; old cars may have positive earth.',
  'coolant-cap': 'Open the cap only when cold, and never go above the pressure on this cap.',
  borescope: 'Never turn the engine with the borescope inside.',
  'strip-down': 'Old gaskets may hold asbestos: wet them, no wire brush, no air line. Beware of sodium-filled valves; keep used oil off the skin.',
}

/** One caution in words. */
export function caution(code: CautionCode): Caution {
  return { code, says: SAYS[code] }
}

/** The order in which cautions are listed: gravest first. */
const ORDER = Object.keys(SAYS) as CautionCode[]

/** What is about to be done, as far as cautions go. */
export interface Step {
  readonly test: TestName
  readonly wet?: boolean
  readonly running?: boolean
  readonly snap?: boolean
}

function codesFor(step: Step, engine: EngineDescription): CautionCode[] {
  const diesel = engine.fuel === 'diesel'
  switch (step.test) {
    case 'compression':
      if (step.running || step.snap) return diesel ? ['running-engine', 'diesel-spray', 'diesel-gauge'] : ['running-engine', 'high-tension']
      if (diesel) return ['cranking', 'diesel-spray', 'diesel-gauge']
      return step.wet ? ['cranking', 'petrol-mist', 'wet-test-oil'] : ['cranking', 'petrol-mist']
    case 'leakage':
      return step.wet && !diesel ? ['compressed-air', 'wet-test-oil'] : ['compressed-air']
    case 'power-balance':
      return diesel ? ['running-engine', 'diesel-spray'] : ['running-engine', 'high-tension']
    case 'vacuum':
      return ['running-engine']
    case 'coolant-gas':
      return ['running-engine', 'coolant-cap']
    case 'cooling-pressure':
      return ['coolant-cap']
    case 'borescope':
      return ['borescope']
    case 'cranking-current':
      return ['cranking', 'current-clamp']
    default:
      return []
  }
}

/** Cautions for steps that are at hand (tests recorded or suggested), each once, gravest first. */
export function cautionsFor(steps: readonly Step[], engine: EngineDescription, more: readonly CautionCode[] = []): Caution[] {
  const codes = new Set([...more, ...steps.flatMap((step) => codesFor(step, engine))])
  return ORDER.filter((code) => codes.has(code)).map(caution)
}
