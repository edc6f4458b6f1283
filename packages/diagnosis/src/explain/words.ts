import type { Fault } from '../knowledge/faults.ts'
import type { Cause } from '../knowledge/causes.ts'

/** Faults in a technician's words. */
export const FAULT_WORDS: Readonly<Record<Fault | 'gasket-between' | 'sound', string>> = {
  sound: 'a sound cylinder', 'exhaust-valve-leak': 'a leaking exhaust valve', 'intake-valve-leak': 'a leaking intake valve', 'ring-wear': 'worn rings',
  'ring-broken-or-stuck': 'a broken or stuck ring', 'piston-damage': 'a damaged piston', 'valve-not-opening': 'a valve that does not open properly',
  'clearance-tight': 'a tight clearance', 'carbon-build-up': 'carbon', 'fuel-wash': 'fuel wash', 'gasket-to-coolant': 'a gasket leaking to coolant',
  'gasket-to-outside': 'a gasket leaking to the outside', 'cracked-head': 'a cracked head', 'valve-sticking': 'a sticking valve', 'rod-bent': 'a bent rod',
  'plug-thread-leak': 'a leak at the plug thread', 'gasket-between': 'a gasket leaking between the two',
}

/** Engine-wide causes in a technician's words. */
export const CAUSE_WORDS: Readonly<Record<Cause, string>> = {
  'throttle-closed': 'a closed throttle', 'slow-cranking': 'slow cranking', 'valve-timing': 'valve timing', 'worn-evenly': 'even wear',
  'gauge-error': 'a gauge that reads wrong', none: 'nothing common to all cylinders',
}
