import { languages, locales } from '@evenbore/words/languages.ts'

/** How this person, on this device, reads numbers and words. Set from the person's record at sign-in, kept for the next start. */
export interface DeviceSettings {
  readonly language: 'en' | 'de' | 'es'
  /** BCP 47 locale for numbers, money and times; follows the language unless the person chose another. */
  readonly locale: string
  readonly pressureUnit: 'psi' | 'kPa' | 'bar' | 'kgf/cm2'
  /** IANA zone of the garage; times are shown in it wherever the device stands. */
  readonly timeZone: string
}

const KEY = 'evenbore.settings'

function deviceLanguage(): DeviceSettings['language'] {
  const tags = typeof navigator === 'undefined' ? [] : (navigator.languages ?? [])
  for (const tag of tags) {
    const language = languages.find((code) => tag.toLowerCase().startsWith(code))
    if (language) return language
  }
  return 'en'
}

function initial(): DeviceSettings {
  const language = deviceLanguage()
  const fresh: DeviceSettings = { language, locale: locales[language], pressureUnit: 'psi', timeZone: 'UTC' }
  try {
    const stored: unknown = JSON.parse(localStorage.getItem(KEY) ?? '{}')
    return typeof stored === 'object' && stored !== null ? { ...fresh, ...stored } : fresh
  } catch {
    return fresh
  }
}

/** The settings as state: `deviceSettings.now.pressureUnit`; a changed language brings its locale along. */
class Settings {
  now = $state.raw<DeviceSettings>(initial())

  change(change: Partial<DeviceSettings>): void {
    const locale = change.locale ?? (change.language ? locales[change.language] : this.now.locale)
    const next = { ...this.now, ...change, locale }
    // told the same at every start: nothing is worked out anew for it
    if ((Object.keys(next) as (keyof DeviceSettings)[]).every((key) => next[key] === this.now[key])) return
    this.now = next
    try {
      localStorage.setItem(KEY, JSON.stringify(this.now))
    } catch {
      // storage refused: the settings last until the page is closed
    }
  }
}

export const deviceSettings = new Settings()
