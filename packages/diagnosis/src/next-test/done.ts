import type { Case } from '@evenbore/contract'
import { gaugeBehind } from '../model/other-gauge.ts'

/**
 * What was done and may stay as it is, by name and cylinder ("leakage 3", "vacuum"), with how often. "other-gauge": with how many
 * more than one dry readings were taken, told apart by their specifications since a case names no gauge, or by the sessions in which one cylinder was read.
 *
 * @param weighed dry and plain leakage readings that the model reasons from: others are to be taken again
 */
export function doneTests(given: Case, weighed: ReadonlySet<number>): Map<string, number> {
  const done = new Map<string, number>()
  const mark = (key: string): void => { done.set(key, (done.get(key) ?? 0) + 1) }
  given.readings.forEach((r, reading) => {
    if (!weighed.has(reading) && (r.test === 'leakage' || (r.test === 'compression' && !r.wet && !r.running && !r.snap))) return
    if (r.test === 'compression') mark(r.running || r.snap ? `running ${r.cylinder}` : `${r.wet ? 'wet' : 'dry'} ${r.cylinder}`)
    else if (r.test === 'leakage') {
      if (r.wet === true) mark(`wet leakage ${r.cylinder}`)
      else if (r.rockersSlack?.includes(r.cylinder)) mark(`slack ${r.cylinder}`)
      else if (r.rockersSlack?.length && done.has(`leakage ${r.cylinder}`)) for (const other of r.rockersSlack) mark(`slack ${other} for ${r.cylinder}`)
      else if (done.has(`leakage ${r.cylinder}`)) mark(`retest ${r.cylinder}`)
      else mark(`leakage ${r.cylinder}`)
    } else if (r.test === 'observation') mark(r.cylinder === undefined ? r.code : `${r.code} ${r.cylinder}`)
    else if ('cylinder' in r) mark(`${r.test} ${r.cylinder}`)
    else mark(r.test)
  })
  const gauges = new Set(given.readings.flatMap((r) => (r.test === 'compression' && !r.wet && !r.running && !r.snap ? [gaugeBehind(given, r)] : [])))
  // gauges that are described alike, or not at all, cannot be told apart: a cylinder read dry in so many more sessions was read with others
  const sessions = new Map<number, Set<string>>()
  for (const r of given.readings) {
    if (r.test !== 'compression' || r.wet || r.running || r.snap) continue
    sessions.set(r.cylinder, (sessions.get(r.cylinder) ?? new Set()).add(r.session ?? ''))
  }
  const others = Math.max(gauges.size, ...[...sessions.values()].map((ids) => ids.size)) - 1
  if (others > 0) done.set('other-gauge', others)
  return done
}
