/** Probabilities that something got better, stayed the same or got worse; null where the two may not be compared. */
interface Change {
  readonly improved: number | null
  readonly unchanged: number | null
  readonly worse: number | null
}

/** The likeliest of the three and how sure it is; undefined where nothing may be said. */
export function changeWord(change: Change): { readonly word: 'improved' | 'unchanged' | 'worse'; readonly probability: number } | undefined {
  const { improved, unchanged, worse } = change
  if (improved === null || unchanged === null || worse === null) return undefined
  const all = [{ word: 'improved', probability: improved }, { word: 'unchanged', probability: unchanged }, { word: 'worse', probability: worse }] as const
  return all.reduce((best, each) => (each.probability > best.probability ? each : best))
}
