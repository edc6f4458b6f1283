import type { Reading, SuggestedTest } from '@evenbore/contract'
import { cylinderNumbers } from '../population/design.ts'
import { measureCompression, measureRunningCompression } from './compression.ts'
import { testCoolantGas, testCoolingPressure } from './coolant.ts'
import { recordCrankingCurrent } from './cranking-current.ts'
import { measureLeakage } from './leakage.ts'
import { checkClearance, lookAtPlug, lookThroughBorescope, measureValveLift } from './looks.ts'
import { ENGINE_SIGN_CODES, observe } from './observations.ts'
import { measurePowerBalance, readVacuum } from './running.ts'
import { furtherSession, type Visit } from './visit.ts'

const STICKY_PASSES = 0.5

/** Does what a suggestion asks for on the simulated engine and returns the readings; what it asks first changes engine or session. */
export function perform(visit: Visit, test: SuggestedTest): Reading[] {
  if (test.first !== undefined) prepare(visit, test)
  const numbers = test.cylinders ?? cylinderNumbers(visit.engine.design)
  switch (test.test) {
    case 'compression':
      return numbers.map((number) =>
        test.running === true
          ? measureRunningCompression(visit, number, test.snap === true)
          : measureCompression(visit, number, test.wet === true).reading,
      )
    case 'leakage':
      return numbers.map((number) =>
        measureLeakage(visit, number, { wet: test.wet === true, ...(test.rockersSlack ? { rockersSlack: test.rockersSlack } : {}) }),
      )
    case 'plug':
      return numbers.map((number) => lookAtPlug(visit, number))
    case 'power-balance':
      return cylinderNumbers(visit.engine.design).map((number) => measurePowerBalance(visit, number))
    case 'vacuum':
      return [readVacuum(visit)]
    case 'coolant-gas':
      return [testCoolantGas(visit)]
    case 'cooling-pressure':
      return [testCoolingPressure(visit)]
    case 'borescope':
      return numbers.map((number) => lookThroughBorescope(visit, number))
    case 'clearance':
      return numbers.flatMap((number) => [checkClearance(visit, number, 'intake'), checkClearance(visit, number, 'exhaust')])
    case 'valve-lift':
      return numbers.flatMap((number) => [measureValveLift(visit, number, 'intake'), measureValveLift(visit, number, 'exhaust')])
    case 'cranking-current':
      return [recordCrankingCurrent(visit)]
    case 'observation': {
      const code = test.code
      if (code === undefined) return []
      return ENGINE_SIGN_CODES.includes(code) ? [observe(visit, code)] : numbers.map((number) => observe(visit, code, number))
    }
  }
}

function prepare(visit: Visit, test: SuggestedTest): void {
  const concerned = test.cylinders ?? cylinderNumbers(visit.engine.design)
  switch (test.first) {
    case 'warm-up':
    case 'run-engine':
      for (const cylinder of visit.engine.cylinders) if (visit.random.chance(STICKY_PASSES)) visit.freed.add(cylinder.number)
      furtherSession(visit, { hot: true })
      return
    case 'swap-gauge':
      furtherSession(visit, { otherGauge: true })
      return
    case 'set-clearances':
      for (const number of concerned) visit.adjusted.add(number)
      furtherSession(visit, {})
      return
    case 'swap-plug-and-lead':
      for (const number of concerned) visit.replugged.add(number)
      return
    case undefined:
      return
  }
}
