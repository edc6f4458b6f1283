/** One thing that could be tried: what it costs and the probability that it cures. */
export interface Action {
  readonly cures: number
  readonly cost: number
  /** What it costs once the look has been taken, where looking is part of the work; `cost` when absent. */
  readonly costAfterLook?: number
}

/**
 * The order that makes the expected cost least when one thing is wrong and each action cures its own share: greatest
 * probability over cost first (Heckerman, Breese and Rommelse 1995). Equal ratios keep their order; a free action comes first.
 * @example orderByYield([{ cures: 0.5, cost: 4 }, { cures: 0.3, cost: 1 }]) // [1, 0]
 */
export function orderByYield(actions: readonly Action[]): number[] {
  const ratio = (i: number): number => (actions[i]!.cost <= 0 ? Infinity : actions[i]!.cures / actions[i]!.cost)
  return actions.map((_, i) => i).sort((a, b) => (ratio(b) === ratio(a) ? a - b : ratio(b) - ratio(a)))
}

/** Expected cost of doing the actions in an order until one cures: each is paid only if none before it cured. */
export function expectedCost(actions: readonly Action[], order: readonly number[]): number {
  let left = 1, sum = 0
  for (const i of order) {
    sum += left * actions[i]!.cost
    left -= actions[i]!.cures
  }
  return sum
}

/**
 * Whether a look that shows what is wrong pays before the first action: its cost plus the cost of the one right action
 * against the expected cost of trying in the best order. The look shows the truth with probability `shows`.
 */
export function lookPays(actions: readonly Action[], lookCost: number, shows: number): boolean {
  const order = orderByYield(actions)
  const blind = expectedCost(actions, order)
  const known = actions.reduce((sum, a) => sum + a.cures * (a.costAfterLook ?? a.cost), 0)
  return lookCost + shows * known + (1 - shows) * blind < blind
}
