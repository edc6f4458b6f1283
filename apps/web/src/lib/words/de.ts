import type { Words } from './text.svelte.ts'
import { ui } from './de/ui.ts'
import { bay } from './de/bay.ts'
import { session } from './de/session.ts'
import { tests } from './de/tests.ts'
import { diagnosis } from './de/diagnosis.ts'

export const de: Words = { ui, bay, session, tests, diagnosis }
