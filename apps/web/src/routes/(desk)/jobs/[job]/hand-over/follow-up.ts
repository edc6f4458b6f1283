import type { HandOver } from '@evenbore/contract'
import { parseNumber } from '@evenbore/words/format/number.ts'

/** A promise to measure again as it is being typed. */
export interface FollowUpDraft {
  reason: string
  latest: string
  odometer: string
  event: string
}
export const emptyFollowUp: FollowUpDraft = { reason: '', latest: '', odometer: '', event: '' }

/** The promise as the API takes it: a reason, and at least one of date, odometer or event; or which fields stand in the way. */
export function followUpInput(typed: FollowUpDraft): { readonly input: HandOver['followUps'][number]; readonly faults?: undefined } | { readonly faults: readonly ('reason' | 'due' | 'odometer')[]; readonly input?: undefined } {
  const odometer = typed.odometer.trim() === '' ? null : parseNumber(typed.odometer, 'km')
  const faults: ('reason' | 'due' | 'odometer')[] = []
  if (!typed.reason.trim()) faults.push('reason')
  if (odometer !== null && (odometer.error !== undefined || !Number.isInteger(odometer.value))) faults.push('odometer')
  if (!typed.latest && odometer === null && !typed.event.trim()) faults.push('due')
  if (faults.length) return { faults }
  return { input: { reason: typed.reason.trim(), latest: typed.latest || null, odometerKm: odometer?.value ?? null, event: typed.event.trim() || null } }
}
