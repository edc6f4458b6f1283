import type { SuggestedTest } from '@evenbore/contract'

/** Minutes of labour of each test: the published table of trade practice (all from memory), for each cylinder or for the engine. */
const PER_CYLINDER = { compression: 1.5, wet: 2, leakage: 5.5, plug: 0.5, borescope: 4, clearance: 3, 'valve-lift': 6, running: 4 } as const
const PER_ENGINE = { 'power-balance': 6, vacuum: 4, 'coolant-gas': 5, 'cooling-pressure': 12, 'cranking-current': 5 } as const
const CLEARANCE_SET_UP = 7
/** During leakage, while the tester is on: slacken that rocker, or oil and repeat. Soap on thread and joint stands in the list below. */
const ONE_MORE_LEAKAGE = 3
const FIRST = { 'warm-up': 12, 'run-engine': 12, 'swap-gauge': 3, 'set-clearances': 15, 'swap-plug-and-lead': 5 } as const
const OBSERVATIONS: Readonly<Record<string, number>> = {
  'weak-by-hand': 2.5,
  'locked-by-hand': 2.5,
  'smoke-blue-throttle': 3,
  'smoke-blue-overrun': 3,
  'smoke-white': 3,
  'smoke-black': 3,
  'breather-smoke': 2,
  'water-in-oil': 1,
  'petrol-in-oil': 1,
  'oil-in-water': 1,
  'oil-use-high': 0.2,
  'spits-back': 3,
  'bubbles-at-plug-thread': 2,
  'bubbles-at-joint': 2,
  'better-with-other-plug-and-lead': 5,
  'piston-low-at-top': 3,
}

/** Whether a test is done with the air of the leakage tester on that cylinder, after a plain leakage test of it. */
function duringLeakage(test: SuggestedTest): boolean {
  if (test.test === 'leakage') return test.wet === true || test.rockersSlack !== undefined
  return test.code === 'bubbles-at-plug-thread' || test.code === 'bubbles-at-joint'
}

/**
 * Minutes that one suggested test takes on an engine of so many cylinders.
 *
 * @param testerOn cylinder that the leakage tester stands on, where the test before was done with it: it need not be put on again
 */
export function minutesFor(test: SuggestedTest, cylinders: number, testerOn: number | null = null): number {
  const count = test.cylinders?.length ?? cylinders
  const putOn = duringLeakage(test) && !(count === 1 && test.cylinders?.[0] === testerOn) ? count * PER_CYLINDER.leakage : 0
  const first = test.first === undefined ? 0 : FIRST[test.first]
  switch (test.test) {
    case 'compression':
      return (
        first + count * (test.running === true ? PER_CYLINDER.running : test.wet === true ? PER_CYLINDER.wet : PER_CYLINDER.compression)
      )
    case 'leakage':
      return first + (duringLeakage(test) ? putOn + count * ONE_MORE_LEAKAGE : count * PER_CYLINDER.leakage)
    case 'clearance':
      return first + CLEARANCE_SET_UP + count * PER_CYLINDER.clearance
    case 'plug':
    case 'borescope':
    case 'valve-lift':
      return first + count * PER_CYLINDER[test.test]
    case 'observation':
      return first + putOn + (OBSERVATIONS[test.code ?? ''] ?? 3)
    default:
      return first + PER_ENGINE[test.test]
  }
}

/** The cylinder that the leakage tester stands on after a test. */
export function testerAfter(test: SuggestedTest): number | null {
  return test.test === 'leakage' || duringLeakage(test) ? (test.cylinders?.at(-1) ?? null) : null
}
