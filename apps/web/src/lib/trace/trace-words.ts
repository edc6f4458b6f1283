import type { TraceWords } from '#lib/words/en/trace.ts'
import type { Language } from '#lib/words/text.svelte.ts'

const words: Record<Language, () => Promise<TraceWords>> = {
  en: () => import('#lib/words/en/trace.ts').then(({ trace }) => trace),
  de: () => import('#lib/words/de/trace.ts').then(({ trace }) => trace),
  es: () => import('#lib/words/es/trace.ts').then(({ trace }) => trace),
}

/** Words of the one screen that reads traces, fetched with it; the service worker has them, so it opens without network too. */
export const traceWords = (language: Language): Promise<TraceWords> => words[language]()
