import type { Objection } from '@evenbore/contract'
import type { Admission } from '../admission/types.ts'
import { analyseCurrent, type CurrentAnalysis, type CurrentTrace } from './cranking-current.ts'

/** What a cranking-current trace says of one cylinder: its compression as part of the better half's. */
export interface RelativeCompression {
  readonly reading: number
  readonly cylinder: number
  readonly relative: number
  readonly sd: number
}

/** Cranking speed that a trace shows, all plugs in, rpm. */
export interface TraceSpeed {
  readonly reading: number
  readonly rpm: number
}

/** Reading a trace takes a while, and more of them than this is no engine. */
const MOST_TRACES = 16

/** Traces are long and asked about more than once in an evaluation: the last answer to each is remembered. */
const analysed = new WeakMap<object, { readonly key: string; readonly analysis: CurrentAnalysis }>()

function analyse(samples: Omit<CurrentTrace, 'cylinderOneAt'>, cylinderOneAt: number | undefined, cylinders: number, firingOrder: readonly number[] | null, rpm: number | undefined): CurrentAnalysis {
  const key = JSON.stringify([cylinderOneAt, cylinders, firingOrder, rpm])
  const known = analysed.get(samples)
  if (known?.key === key) return known.analysis
  const analysis = analyseCurrent({ ...samples, ...(cylinderOneAt === undefined ? {} : { cylinderOneAt }) }, cylinders, firingOrder, rpm)
  analysed.set(samples, { key, analysis })
  return analysis
}

/** Relative compression and cranking speed from every trace of a case, and objections to traces that cannot be used or do not name their cylinders. */
export function currentEvidence({ currents, engine, layout, sessions }: Admission): { evidence: RelativeCompression[]; speeds: TraceSpeed[]; objections: Objection[] } {
  const evidence: RelativeCompression[] = []
  const speeds: TraceSpeed[] = []
  const objections: Objection[] = []
  for (const { reading } of currents.slice(MOST_TRACES)) objections.push({ code: 'not-weighed', readings: [reading], says: `Only the first ${MOST_TRACES} traces are read.`, do: 'Leave out the traces that are not needed.' })
  for (const { reading, session, trace } of currents.slice(0, MOST_TRACES)) {
    const { samples, cylinderOneAt } = trace
    const known = sessions[session]!.conditions.crankingRpm
    const analysis = engine.cycle === 2
      ? { flaw: 'two-stroke' as const, says: 'Traces of two-strokes are not read.', do: 'Use the gauge.' }
      : analyse(samples, cylinderOneAt, engine.cylinders, layout.firingOrder, known)
    if (analysis.flaw !== null) {
      objections.push({ code: 'not-weighed', readings: [reading], says: analysis.says, do: analysis.do })
      continue
    }
    speeds.push({ reading, rpm: analysis.rpm })
    if (analysis.humps.some(({ cylinder }) => cylinder === null)) {
      const weak = analysis.humps.filter(({ relative, sd }) => relative + 2 * sd < 1).length
      objections.push({
        code: 'not-weighed', readings: [reading],
        says: `The trace shows ${weak === 0 ? 'no weak cylinder' : weak === 1 ? 'one weak cylinder' : `${weak} weak cylinders`}, but not which ones: cylinder one's time or the firing order is missing.`,
        do: 'Record when cylinder one fires beside the current, and enter the firing order.',
      })
      continue
    }
    for (const { cylinder, relative, sd } of analysis.humps) evidence.push({ reading, cylinder: cylinder!, relative, sd })
  }
  return { evidence, speeds, objections }
}
