import type { PressureUnit } from '@evenbore/contract'
import type { Words } from './en.ts'

/** How a person reads figures. */
export interface Reader {
  readonly unit: PressureUnit
  readonly locale: string
  readonly words: Words
}
