import type { MethodCard, MethodName } from '@evenbore/words/en/methods.ts'
import type { Language } from '@evenbore/words/languages.ts'

const cards: Record<Language, () => Promise<Readonly<Record<MethodName, MethodCard>>>> = {
  en: () => import('@evenbore/words/en/methods.ts').then(({ methods }) => methods),
  de: () => import('@evenbore/words/de/methods.ts').then(({ methods }) => methods),
  es: () => import('@evenbore/words/es/methods.ts').then(({ methods }) => methods),
}

/** The card of a test, fetched when first opened; the service worker has it, so it opens without network too. */
export async function cardOf(test: string, language: Language): Promise<MethodCard> {
  const methods = await cards[language]()
  const name = test === 'snap' ? 'running' : test
  return name in methods ? methods[name as MethodName] : methods.observation
}
