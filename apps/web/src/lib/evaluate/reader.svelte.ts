import { deviceSettings } from '#lib/format/device-settings.svelte.ts'
import { text } from '#lib/words/text.svelte.ts'
import type { Reader } from '@evenbore/words/reader.ts'

/** The person at this device as a reader of figures; read inside a component it follows every change of settings. */
export function readerHere(): Reader {
  return { unit: deviceSettings.now.pressureUnit, locale: deviceSettings.now.locale, words: text.now }
}
