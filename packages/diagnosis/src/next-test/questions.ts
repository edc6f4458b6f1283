import { CAUSES } from '../knowledge/causes.ts'
import type { Inference } from '../model/posterior.ts'
import { beliefOf, type Question } from './information.ts'
import type { Stakes } from './stakes.ts'

/** Where "nothing common to all cylinders" is less likely than this, what they have in common is an open question. */
const OPEN = 0.75

/** Whether what all cylinders have in common is no question any more. */
export function nothingCommon({ causes }: Pick<Inference, 'causes'>): boolean {
  return causes[CAUSES.indexOf('none')]! >= OPEN
}

/** What is to be learned of each cylinder. */
export function questionsOf(inference: Inference, stakes: Stakes): Question[] {
  const { own, bridges, causes, states, worn, space, gauge } = inference
  const { settled, settledBlur } = space.knowledge.stopping
  const none = causes[CAUSES.indexOf('none')]!, even = causes[CAUSES.indexOf('worn-evenly')]!
  const tight = bridges.reduce((least, list) => list.reduce((low, p) => Math.min(low, 1 - p), least), 1)
  const faults = own.map((p) => p.slice(1).reduce((most, x) => Math.max(most, x), 0))
  const cause = causes.reduce((most, p, e) => (CAUSES[e] === 'none' ? most : Math.max(most, p)), 0)
  const leading = Math.max(...faults, 1 - tight, cause, Math.min(none, tight, ...own.map((p) => p[0]!)))
  const unread = gauge.flatMap(({ dry }, i) => (dry === null ? [i] : []))
  return own.map((_, i) => ({
    belief: beliefOf(space.states, states[i]!, worn[i]!), stakes,
    othersSound: unread.some((j) => j !== i) ? 0 : own.reduce((least, p, j) => (j === i ? least : Math.min(least, p[0]!)), tight),
    unread: unread.includes(i),
    otherCause: even >= 1 ? 0 : Math.min(1, Math.max(0, (1 - none - even) / (1 - even))),
    elsewhere: faults.reduce((most, p, j) => (j === i ? most : Math.max(most, p)), cause),
    settled: leading >= settled.value ? null : { at: settled.value, blur: settledBlur.value },
  }))
}

/** The question for a test that leaves the pressure of an unread cylinder unread: it may find a fault, but cannot settle that nothing is wrong. */
export function leftUnread(question: Question): Question {
  return question.unread ? { ...question, othersSound: 0 } : question
}
