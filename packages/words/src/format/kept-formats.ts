// Making one of these takes a tenth of a millisecond and more; a floor of 200 jobs asks for some hundred at once.
const numbers = new Map<string, Intl.NumberFormat>()
const dates = new Map<string, Intl.DateTimeFormat>()

/** The browser's number format for a locale and options, made once. */
export function numberFormat(locale: string, options: Intl.NumberFormatOptions): Intl.NumberFormat {
  return once(numbers, locale, options, () => new Intl.NumberFormat(locale, options))
}

/** The browser's date format for a locale and options, made once. */
export function dateFormat(locale: string, options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  return once(dates, locale, options, () => new Intl.DateTimeFormat(locale, options))
}

function once<Format>(kept: Map<string, Format>, locale: string, options: object, make: () => Format): Format {
  const key = `${locale} ${JSON.stringify(options)}`
  let format = kept.get(key)
  if (!format) kept.set(key, (format = make()))
  return format
}
