/** Expected value of the best decision when nothing more is learned: the largest over decisions of the mean payoff. */
export function bestExpected(probabilities: readonly number[], payoffs: readonly (readonly number[])[]): number {
  return Math.max(...payoffs.map((row) => row.reduce((sum, value, state) => sum + value * probabilities[state]!, 0)))
}

/**
 * Expected value of the best decision after a free test: for each outcome the best decision under what is then believed.
 * `chance[state][outcome]` sums to one over outcomes; `payoffs[decision][state]`. What the test is worth is this less `bestExpected`.
 * Checked on Raiffa's oil wildcatter.
 */
export function bestExpectedAfter(probabilities: readonly number[], chance: readonly (readonly number[])[], payoffs: readonly (readonly number[])[]): number {
  const outcomes = chance[0]!.length
  let sum = 0
  for (let o = 0; o < outcomes; o++) {
    const joint = probabilities.map((p, state) => p * chance[state]![o]!)
    sum += bestExpected(joint, payoffs)
  }
  return sum
}
