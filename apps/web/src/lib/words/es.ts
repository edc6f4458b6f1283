import type { Words } from './text.svelte.ts'
import { ui } from './es/ui.ts'
import { bay } from './es/bay.ts'
import { session } from './es/session.ts'
import { tests } from './es/tests.ts'
import { diagnosis } from './es/diagnosis.ts'

export const es: Words = { ui, bay, session, tests, diagnosis }
