import type { Words } from './text.svelte.ts'
import { ui } from './de/ui.ts'
import { bay } from './de/bay.ts'
import { session } from './de/session.ts'
import { tests } from './de/tests.ts'
import { cautions } from './de/cautions.ts'
import { diagnosis } from './de/diagnosis.ts'
import { desk } from './de/desk.ts'
import { job } from './de/job.ts'
import { quote } from './de/quote.ts'
import { office } from './de/office.ts'
import { settings } from './de/settings.ts'

export const de: Words = { ui, bay, session, tests, cautions, diagnosis, desk, job, quote, office, settings }
