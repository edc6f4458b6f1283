export const languages = ['en', 'de', 'es'] as const
export type Language = (typeof languages)[number]
/** Each language in its own words, as it stands in a list to choose from. */
export const languageNames: Readonly<Record<Language, string>> = { en: 'English', de: 'Deutsch', es: 'Español' }
/** Where numbers, money and times of a language are written as (BCP 47). */
export const locales: Readonly<Record<Language, string>> = { en: 'en-GB', de: 'de-DE', es: 'es-ES' }
