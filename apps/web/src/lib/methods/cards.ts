import type { MethodCard, MethodName } from '#lib/words/en/methods.ts'

/** The card of a test, fetched when first opened (the service worker keeps it). English for now: the cards name their language. */
export async function cardOf(test: string): Promise<{ readonly card: MethodCard; readonly language: 'en' }> {
  const { methods } = await import('#lib/words/en/methods.ts')
  const name: MethodName = test === 'snap' ? 'running' : test in methods ? (test as MethodName) : 'observation'
  return { card: methods[name], language: 'en' }
}
