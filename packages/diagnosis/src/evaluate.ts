import type { Case, Caution, Evaluation, Objection } from '@evenbore/contract'
import { admit } from './admission/admit.ts'
import { cautionsFor } from './admission/cautions.ts'
import type { Admission } from './admission/types.ts'
import { because } from './explain/because.ts'
import { turns } from './explain/turns.ts'
import { whatIf } from './explain/what-if.ts'
import { CAUSES } from './knowledge/causes.ts'
import { FAULTS } from './knowledge/faults.ts'
import { KNOWLEDGE_VERSION, defaultKnowledge, knowledgeHash, type Knowledge } from './knowledge/knowledge.ts'
import { gather } from './model/gather.ts'
import { ignitionOf } from './model/ignition.ts'
import { pairsOf } from './model/pairs.ts'
import { pastCures } from './model/past.ts'
import { infer, type Inference } from './model/posterior.ts'
import { nextTests } from './next-test/rank.ts'
import type { EngineSize } from './repairs/minutes.ts'
import { repairs } from './repairs/rank.ts'
import { consistency } from './rules/consistency.ts'
import { expectedWindow } from './rules/expected.ts'
import { leakageResults } from './rules/leakage.ts'
import { currentEvidence } from './waveform/current-evidence.ts'

/** Version of the code of the model; goes up when answers change. */
export const MODEL_VERSION = '16'

/** What to leave out when an answer is wanted at once. */
export interface EvaluateOptions {
  /** `false` leaves out `because`, `turns` and `next`, which take most of the time. Default true. */
  readonly ranking?: boolean
}

/**
 * The second opinion on a case that passed the contract: rules of the trade, what each cylinder and the engine may suffer from,
 * why, what to test next, what to repair. Pure: the same case, knowledge and version give the same answer.
 *
 * @param knowledge priors, likelihoods, minutes and costs; its hash is in `model`
 */
export function evaluate(given: Case, knowledge: Knowledge = defaultKnowledge, options: EvaluateOptions = {}): Evaluation {
  const admission = admit(given)
  const twoStroke = given.engine.cycle === 2
  const { evidence, notWeighed } = gather(twoStroke ? { ...given, readings: [] } : given, twoStroke ? withoutReadings(admission) : admission, knowledge)
  const inference = infer(evidence, knowledge)
  const even = consistency(admission)
  const ranking = options.ranking !== false && !twoStroke
  const ranked = ranking ? nextTests(given, inference, sizeOf(admission), { consistency: even, objections: admission.objections }) : { next: [], enough: twoStroke ? { says: "Go by the maker's procedure: this model does not know two-strokes." } : null }
  const expected = expectedWindow(admission)
  const ask = whatIf(inference)
  const turned = ranking ? turns(given, inference, ask) : undefined
  const traces = currentEvidence(admission).objections
  return {
    model: `${MODEL_VERSION}+knowledge.${KNOWLEDGE_VERSION}+${knowledgeHash(knowledge)}`,
    consistency: even,
    ...(expected === undefined ? {} : { expected }),
    cylinders: beliefs(inference),
    neighbours: neighbours(inference),
    engine: CAUSES.map((cause, e) => ({ cause, probability: inference.causes[e]! })),
    leakage: leakageResults(admission),
    because: ranking ? because(given, inference, ask) : [],
    ...(turned === undefined ? {} : { turns: turned }),
    next: ranked.next,
    enough: ranked.enough,
    repairs: twoStroke ? [] : repairs(inference, sizeOf(admission), pastCures(given.engine, admission.sessions[admission.judged?.session ?? 0]!.conditions, knowledge)),
    objections: [...admission.objections, ...traces, ...unweighed(notWeighed.filter((reading) => !traces.some((each) => each.readings.includes(reading))))],
    cautions: allCautions(admission.cautions, cautionsFor(ranked.next.flatMap((s) => s.tests), given.engine)),
  }
}

function beliefs(inference: Inference): Evaluation['cylinders'] {
  return inference.own.map((own, i) => {
    const pairs = pairsOf(inference, i)
    const ignition = ignitionOf(inference, i)
    return {
      cylinder: i + 1,
      sound: own[0]!,
      faults: FAULTS.map((fault, f) => ({ fault, probability: own[f + 1]! })).sort((a, b) => b.probability - a.probability),
      ...(pairs.length > 0 ? { pairs } : {}),
      ...(ignition === null ? {} : { ignitionOrMixture: ignition }),
    }
  })
}

function neighbours(inference: Inference): Evaluation['neighbours'] {
  return inference.evidence.gaskets.flatMap((list, g) => Array.from(inference.bridges[g]!, (probability, j) => ({
    cylinders: [list[j]! + 1, list[j + 1]! + 1] as [number, number], fault: 'gasket-between' as const, probability,
  })))
}

function withoutReadings(admission: Admission): Admission {
  return { ...admission, compression: [], leakage: [], currents: [], judged: null }
}

function sizeOf({ engine, layout }: Admission): EngineSize {
  const bankOf = Array.from({ length: engine.cylinders }, (_, i) => Math.max(0, layout.banks.findIndex((bank) => bank.includes(i + 1))))
  return { layout: engine.layout, cylinders: engine.cylinders, bankOf }
}

function unweighed(readings: readonly number[]): Objection[] {
  if (readings.length === 0) return []
  return [{ code: 'not-weighed', readings: [...readings], says: 'These readings are kept and shown, but the model does not weigh them here.', do: 'Judge them yourself beside the rest; they change no probability.' }]
}

function allCautions(first: readonly Caution[], second: readonly Caution[]): Caution[] {
  const codes = new Set(first.map((c) => c.code))
  return [...first, ...second.filter((c) => !codes.has(c.code))]
}
