import { z } from 'zod'

/** A number within bounds, both included; the error says the bounds. */
export function quantity(from: number, to: number, unit = '') {
  const error = `a number from ${from} to ${to}${unit && ` ${unit}`}`
  return z.number({ error }).min(from, { error }).max(to, { error })
}

/** A number above zero, up to a bound. */
export function positive(to: number, unit = '') {
  const error = `a number above 0 and at most ${to}${unit && ` ${unit}`}`
  return z.number({ error }).gt(0, { error }).max(to, { error })
}

/** A whole number within bounds. */
export function whole(from: number, to: number) {
  const error = `a whole number from ${from} to ${to}`
  return z.int({ error }).min(from, { error }).max(to, { error })
}

/** One word of a closed list. */
export function word<const T extends readonly string[]>(words: T) {
  return z.enum(words, { error: words.length === 1 ? `"${words[0]}"` : `one of ${words.join(', ')}` })
}

/** True or false. */
export function flag() {
  return z.boolean({ error: 'true or false' })
}

/** A list of up to so many entries. */
export function list<T extends z.ZodType>(entry: T, most: number, what: string, least = 0) {
  const error = `a list of ${least > 0 ? `${least} to ${most}` : `at most ${most}`} ${what}`
  return z.array(entry, { error }).min(least, { error }).max(most, { error })
}
