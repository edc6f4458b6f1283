import type { Comparison, ComparisonObjection, Pair } from '@evenbore/contract'
import { admit } from './admission/admit.ts'
import { evaluate } from './evaluate.ts'
import { defaultKnowledge, type Knowledge } from './knowledge/knowledge.ts'
import { checkBaseline, type Side } from './retest/baseline.ts'
import { unreadSisters } from './retest/sisters.ts'
import { curedFaults, newHarm } from './retest/cured.ts'
import { cylinderChanges } from './retest/pressures.ts'
import { spreadChange } from './retest/spread.ts'

/**
 * A retest against its baseline: for each cylinder and for the spread the probabilities of improved, unchanged and worse, what was
 * cured, new harm, and what stands against comparing at all. Pure, like `evaluate`.
 *
 * @param pair two cases of one engine that passed the contract, and the operations done in between
 */
export function compare({ before, after, work = [] }: Pair, knowledge: Knowledge = defaultKnowledge): Comparison {
  const old: Side = { case: before, admission: admit(before) }
  const now: Side = { case: after, admission: admit(after) }
  const baseline = checkBaseline(old, now, work)
  const worked = work.some((operation) => operation !== 'run-on' && !operation.startsWith('look-'))
  const { cylinders, objections } = cylinderChanges(old, now, baseline.comparable, worked)
  const earlier = evaluate(before, knowledge, { ranking: false })
  const sisters = baseline.comparable ? unreadSisters(old, now, earlier.cylinders) : []
  const later = evaluate({ ...after, readings: [...after.readings, ...sisters] }, knowledge, { ranking: false })
  const without = evaluate({ ...after, readings: sisters }, knowledge, { ranking: false })
  const judge = before.engine.cycle !== 2
  const readAgain = new Set(after.readings.flatMap((r) => ('cylinder' in r && r.cylinder !== undefined ? [r.cylinder] : [])))
  return {
    model: later.model,
    comparable: baseline.comparable,
    cylinders,
    // where no cylinder may be compared (other strokes, no build-up) their spread may not either
    spread: spreadChange(old.admission, now.admission, baseline.comparable && cylinders.some(({ improved }) => improved !== null)),
    cured: judge ? curedFaults(earlier.cylinders, later.cylinders, without.cylinders, work, knowledge) : [],
    newHarm: judge ? newHarm(earlier.cylinders, later.cylinders, cylinders, readAgain) : [],
    objections: [...baseline.objections, ...objections, ...own('before', old), ...own('after', now)],
  }
}

function own(side: 'before' | 'after', { admission }: Side): ComparisonObjection[] {
  return admission.objections.map((each) => ({ ...each, in: side }))
}
