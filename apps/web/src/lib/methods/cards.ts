import type { MethodCard, MethodName } from '#lib/words/en/methods.ts'
import type { Language } from '#lib/words/text.svelte.ts'

const cards: Record<Language, () => Promise<Readonly<Record<MethodName, MethodCard>>>> = {
  en: () => import('#lib/words/en/methods.ts').then(({ methods }) => methods),
  de: () => import('#lib/words/de/methods.ts').then(({ methods }) => methods),
  es: () => import('#lib/words/es/methods.ts').then(({ methods }) => methods),
}

/** The card of a test, fetched when first opened; the service worker has it, so it opens without network too. */
export async function cardOf(test: string, language: Language): Promise<MethodCard> {
  const methods = await cards[language]()
  const name = test === 'snap' ? 'running' : test
  return name in methods ? methods[name as MethodName] : methods.observation
}
