import { ui } from './en/ui.ts'
import { bay } from './en/bay.ts'
import { session } from './en/session.ts'
import { tests } from './en/tests.ts'
import { diagnosis } from './en/diagnosis.ts'

/** English, the pattern of every other dictionary: one file for each part of the interface. */
export const en = { ui, bay, session, tests, diagnosis }
