/** A table over a few yes-or-no variables: the value for an assignment. */
export interface Factor {
  readonly variables: readonly string[]
  readonly value: (assignment: Readonly<Record<string, boolean>>) => number
}

/** P(child = true | parents) as a factor. */
export function conditional(child: string, parents: readonly string[], chance: (given: Readonly<Record<string, boolean>>) => number): Factor {
  return { variables: [child, ...parents], value: (a) => (a[child]! ? chance(a) : 1 - chance(a)) }
}

/** Sum of the product of all factors over everything not fixed: plain enumeration, the oracle of the inference checks. */
export function totalWeight(factors: readonly Factor[], fixed: Readonly<Record<string, boolean>>): number {
  const names = [...new Set(factors.flatMap((f) => f.variables))]
  const free = names.filter((n) => !(n in fixed))
  let sum = 0
  for (let bits = 0; bits < 2 ** free.length; bits++) {
    const assignment: Record<string, boolean> = { ...fixed }
    free.forEach((n, i) => { assignment[n] = ((bits >> i) & 1) === 1 })
    sum += factors.reduce((product, f) => product * f.value(assignment), 1)
  }
  return sum
}

/** P(variable = true | evidence). */
export function posterior(factors: readonly Factor[], variable: string, evidence: Readonly<Record<string, boolean>> = {}): number {
  return totalWeight(factors, { ...evidence, [variable]: true }) / totalWeight(factors, evidence)
}
