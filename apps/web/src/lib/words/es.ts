import type { Words } from './text.svelte.ts'
import { ui } from './es/ui.ts'
import { bay } from './es/bay.ts'
import { session } from './es/session.ts'
import { tests } from './es/tests.ts'
import { cautions } from './es/cautions.ts'
import { diagnosis } from './es/diagnosis.ts'
import { desk } from './es/desk.ts'
import { job } from './es/job.ts'
import { quote } from './es/quote.ts'
import { office } from './es/office.ts'
import { settings } from './es/settings.ts'

export const es: Words = { ui, bay, session, tests, cautions, diagnosis, desk, job, quote, office, settings }
