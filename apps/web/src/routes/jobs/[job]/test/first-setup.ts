import type { Conditions } from '@evenbore/contract'
import type { Bench } from './bench.svelte.ts'

/** What the form of conditions begins with, and whether anything of it is remembered. */
export interface FirstSetup {
  readonly remembered: boolean
  readonly conditions: Partial<Conditions>
  readonly gauge: string | null
  readonly tester: string | null
  readonly volts: string
  readonly altitude: string
}

/**
 * From the last session of this job, else the last one opened on this tablet. What belongs to the car and not to the bay
 * (clearances, torque) is taken only from this job; battery volts never, since they change with every crank.
 */
export function firstSetup(bench: Pick<Bench, 'sessions' | 'lastSetup' | 'gauges'>): FirstSetup {
  const last = bench.sessions.at(-1)
  const known = (id: string | null | undefined) => (id && bench.gauges.some((gauge) => gauge.id === id) ? id : null)
  if (last) {
    return { remembered: true, conditions: last.conditions, gauge: known(last.gauge?.id), tester: known(last.tester?.id), volts: '', altitude: String(last.conditions.altitudeM ?? '') }
  }
  const setup = bench.lastSetup
  if (!setup) return { remembered: false, conditions: {}, gauge: null, tester: null, volts: '', altitude: '' }
  const { engine, throttle, plugsOut, strokes, altitudeM } = setup.conditions
  return { remembered: true, conditions: { engine, throttle, plugsOut, ...(strokes === undefined ? {} : { strokes }) }, gauge: known(setup.gauge), tester: known(setup.tester), volts: '', altitude: String(altitudeM ?? '') }
}
