import type { Grid } from './grid.ts'
import { OWN_COUNT } from './states.ts'

/**
 * The prior of own states by class, factored. Classes of one family read alike and differ in the prior alone, so states are
 * summed once for each family and kind, a kind being own states whose prior goes the same way from class to class:
 * prior[class][own] = lead[family][own] * ratio[family][kind][class of the family].
 */
export interface Kinds {
  /** [family * OWN_COUNT + own] */
  readonly lead: Float64Array
  readonly kindOf: Uint8Array
  /** [family][kind][class in the order of the family] */
  readonly ratios: ReadonlyArray<readonly Float64Array[]>
  /** Largest number of kinds in a family. */
  readonly most: number
}

/** Factors a prior, [class * OWN_COUNT + own]. */
export function kindsOf(prior: Float64Array, grid: Grid): Kinds {
  const { families } = grid
  const lead = new Float64Array(families.length * OWN_COUNT)
  const kindOf = new Uint8Array(families.length * OWN_COUNT)
  const ratios = families.map((classes, f) => {
    const list: Float64Array[] = []
    for (let own = 0; own < OWN_COUNT; own++) {
      let most = 0
      for (const c of classes) if (prior[c * OWN_COUNT + own]! > most) most = prior[c * OWN_COUNT + own]!
      const ratio = Float64Array.from(classes, (c) => (most > 0 ? prior[c * OWN_COUNT + own]! / most : 1))
      const found = list.findIndex((other) => other.every((x, i) => Math.abs(x - ratio[i]!) <= 1e-12))
      lead[f * OWN_COUNT + own] = most
      kindOf[f * OWN_COUNT + own] = found >= 0 ? found : list.push(ratio) - 1
    }
    return list
  })
  return { lead, kindOf, ratios, most: ratios.reduce((most, list) => Math.max(most, list.length), 0) }
}
