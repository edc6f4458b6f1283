import type { SuggestedTest, Suggestion } from '@evenbore/contract'
import type { Words } from '@evenbore/words/en.ts'
import { leakageManner } from '@evenbore/words/sentences/reading.ts'

/** A suggested test in words: "Leakage on 3 and 1, rockers of 3 slack". */
export function testWords(test: SuggestedTest, words: Words): string {
  const { tests, ui } = words
  const name = test.code ? tests.lookFor(tests.observations[test.code]) : test.wet && test.test === 'compression' ? tests.names.wet : test.snap ? tests.names.snap : test.running ? tests.names.running : tests.names[test.test]
  const parts = [
    test.cylinders?.length ? tests.on(name, ui.list(test.cylinders.map(String))) : name,
    test.repeat ? tests.again : '',
    ...(test.test === 'leakage' ? leakageManner(test, words) : []),
    test.first ? tests.first[test.first] : '',
  ]
  return parts.filter(Boolean).join(', ')
}

/** A suggestion of one test or a cheap combination. */
export function suggestionWords(suggestion: Suggestion, words: Words): string {
  return suggestion.tests.map((test) => testWords(test, words)).join('; ')
}

/** The test screen's name for a suggested test: what `?test=` of the session screen takes. */
export function screenOf(test: SuggestedTest): string {
  if (test.test !== 'compression') return test.test
  return test.wet ? 'wet' : test.snap ? 'snap' : test.running ? 'running' : 'compression'
}

/** Where a suggested test is noted: its screen, what is looked for, and of a leakage test the cylinder and how it is done. */
export function testAddress(job: string, test: SuggestedTest): string {
  const asked = new URLSearchParams({ test: screenOf(test) })
  if (test.code) asked.set('code', test.code)
  if (test.test === 'leakage' && test.cylinders?.length === 1) {
    asked.set('cylinder', String(test.cylinders[0]))
    if (test.rockersSlack?.length) asked.set('slack', test.rockersSlack.join('-'))
    if (test.wet) asked.set('oil', 'yes')
  }
  return `/jobs/${job}/test?${asked}`
}
