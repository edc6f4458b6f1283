import { CAUSES, FAULTS, type FindingCode } from '@evenbore/contract'
import type { Words } from '../en.ts'

/** Everything that can be found at strip-down: faults, what holds for the whole engine, or nothing. */
export const findingCodes: readonly FindingCode[] = [...FAULTS, 'gasket-between', ...CAUSES.filter((cause) => cause !== 'none'), 'nothing']

/** A finding's code in words. */
export function findingWords(code: FindingCode, words: Words): string {
  if (code === 'nothing') return words.job.findingNothing
  return words.diagnosis.faults[code] ?? words.diagnosis.causes[code] ?? code
}
