import type { TraceWords } from '@evenbore/words/en/trace.ts'
import type { Language } from '@evenbore/words/languages.ts'

const words: Record<Language, () => Promise<TraceWords>> = {
  en: () => import('@evenbore/words/en/trace.ts').then(({ trace }) => trace),
  de: () => import('@evenbore/words/de/trace.ts').then(({ trace }) => trace),
  es: () => import('@evenbore/words/es/trace.ts').then(({ trace }) => trace),
}

/** Words of the one screen that reads traces, fetched with it; the service worker has them, so it opens without network too. */
export const traceWords = (language: Language): Promise<TraceWords> => words[language]()
