import { createContext } from 'svelte'
import type { Bench } from './bench.svelte.ts'

/** The bench of the job that this page and its parts work on. */
export const [benchHere, setBench] = createContext<Bench>()
