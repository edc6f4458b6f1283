import type { Words } from './text.svelte.ts'
import { ui } from './de/ui.ts'
import { bay } from './de/bay.ts'
import { session } from './de/session.ts'
import { tests } from './de/tests.ts'
import { cautions } from './de/cautions.ts'
import { diagnosis } from './de/diagnosis.ts'
import { desk } from './en/desk.ts'
import { job } from './en/job.ts'
import { quote } from './en/quote.ts'
import { office } from './en/office.ts'
import { settings } from './en/settings.ts'

export const de: Words = { ui, bay, session, tests, cautions, diagnosis, desk, job, quote, office, settings }
