import { ui } from './en/ui.ts'
import { bay } from './en/bay.ts'
import { session } from './en/session.ts'
import { tests } from './en/tests.ts'
import { cautions } from './en/cautions.ts'
import { diagnosis } from './en/diagnosis.ts'
import { desk } from './en/desk.ts'
import { job } from './en/job.ts'
import { photos } from './en/photos.ts'
import { quote } from './en/quote.ts'
import { office } from './en/office.ts'
import { settings } from './en/settings.ts'
import { setup } from './en/setup.ts'
import type { ReasonWords } from './reason-words.ts'

/** In English the model's own sentences stand. */
const reasons = undefined as ReasonWords | undefined

/** English, the pattern of every other dictionary: one file for each part of the interface. The others have the same keys or do not compile. */
export const en = { ui, bay, session, tests, cautions, diagnosis, desk, job, photos, quote, office, settings, setup, reasons }
export type Words = typeof en
