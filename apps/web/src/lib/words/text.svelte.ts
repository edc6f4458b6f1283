import { en, type Words } from '@evenbore/words/en.ts'
import type { Language } from '@evenbore/words/languages.ts'
import { deviceSettings } from '#lib/format/device-settings.svelte.ts'

const others: Record<Exclude<Language, 'en'>, () => Promise<Words>> = {
  de: () => import('@evenbore/words/de.ts').then((module) => module.de),
  es: () => import('@evenbore/words/es.ts').then((module) => module.es),
}

/**
 * The dictionary in use, as state: `{text.now.bay.takeOver}`.
 * German and Spanish are fetched when chosen (the service worker keeps them), so English alone is in the first load.
 */
class Texts {
  now = $state.raw<Words>(en)
  language = $state<Language>('en')

  /** Changes the language; resolves once the dictionary is there. A dictionary that cannot be fetched leaves English. */
  async use(language: Language): Promise<void> {
    deviceSettings.change({ language })
    const words = language === 'en' ? en : await others[language]().catch(() => undefined)
    if (!words || deviceSettings.now.language !== language) return
    this.now = words
    this.language = language
  }
}

export const text = new Texts()
