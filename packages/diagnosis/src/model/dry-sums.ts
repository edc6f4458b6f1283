import type { StateGroup } from './groups.ts'
import type { Tables } from './state-sums.ts'
import { OWN_COUNT } from './states.ts'
import type { Cells, KeptCells, Workspace } from './workspace.ts'

/**
 * Sums of a cylinder on which oil and air were not tried: its states differ in the loss of pressure and in the prior of their class
 * alone, so a group is one row of weights by class, and what stands inside a column is all alike.
 */
export type DryTables = Pick<Tables, 'dry' | 'weight' | 'live' | 'prior'>

/** As `sumStates`: blocks [signature * bridge levels + level] over the kept cells, null where no state is. */
export function sumDry(tables: DryTables, { cells, from }: Cells, { grid, grouping, states }: Workspace): (Float64Array | null)[] {
  const levels = states.bridgePrior.length
  const columns: (Float64Array | null)[] = new Array<null>(grouping.signatures.length * levels).fill(null)
  const byClass = new Float64Array(grid.classes.length), byOwn = new Float64Array(OWN_COUNT)
  for (const group of tables.dry === null ? grouping.unread : grouping.read) {
    if (!weighClasses(group, tables, states.own, byOwn, byClass)) continue
    const into = (columns[group.signature * levels + group.bridgeLevel] ??= new Float64Array(grid.columns))
    const at = group.lossRow * grid.ladderFrom[grid.families.length]!
    for (let q = 0; q < grid.columns; q++) into[q]! += byClass[grid.classOf[q]!]! * (tables.dry === null ? 1 : tables.dry[at + grid.levelOf[q]!]!)
  }
  return columns.map((column) => {
    if (column === null) return null
    const block = new Float64Array(cells.length)
    for (let q = 0; q < grid.columns; q++) block.fill(column[q]!, from[q]!, from[q + 1]!)
    return block
  })
}

/** Weight x prior of a group's live states for each class; false when none is live. */
function weighClasses({ states: list }: StateGroup, { weight, live, prior }: DryTables, own: Uint8Array, byOwn: Float64Array, byClass: Float64Array): boolean {
  let any = false
  byOwn.fill(0)
  for (let i = 0; i < list.length; i++) {
    const s = list[i]!
    if (live[s] === 0) continue
    any = true
    byOwn[own[s]!]! += weight[s]!
  }
  byClass.fill(0)
  for (let o = 0; o < OWN_COUNT; o++) {
    const w = byOwn[o]!
    if (w > 0) for (let c = 0; c < byClass.length; c++) byClass[c]! += w * prior[c * OWN_COUNT + o]!
  }
  return any
}

/** As `weighStates`: adds the weight of each state to `out`, or to `worn` where the class is evenly worn. */
export function weighDry(tables: DryTables, around: readonly Float64Array[], kept: KeptCells, { grid, grouping, states }: Workspace, out: Float64Array, worn: Float64Array): void {
  const { dry, weight, live, prior } = tables
  const count = kept.cells.length
  const columns = around.map((cells) => {
    const sums = new Float64Array(cells.length / count * grid.columns)
    for (let b = 0; b * count < cells.length; b++) {
      for (let q = 0; q < grid.columns; q++) {
        let sum = 0
        for (let at = kept.from[q]!; at < kept.from[q + 1]!; at++) sum += cells[b * count + at]!
        sums[b * grid.columns + q] = sum
      }
    }
    return sums
  })
  const byClass = new Float64Array(grid.classes.length), all = new Float64Array(OWN_COUNT), even = new Float64Array(OWN_COUNT)
  const isWorn = Uint8Array.from(grid.classes, ({ commonLoss }) => (commonLoss > 0 ? 1 : 0))
  for (const group of dry === null ? grouping.unread : grouping.read) {
    const from = columns[group.signature]!, at = group.bridgeLevel * grid.columns, row = group.lossRow * grid.ladderFrom[grid.families.length]!
    byClass.fill(0)
    for (let q = 0; q < grid.columns; q++) byClass[grid.classOf[q]!]! += from[at + q]! * (dry === null ? 1 : dry[row + grid.levelOf[q]!]!)
    // a group has few of the own states
    all.fill(-1)
    for (let i = 0; i < group.states.length; i++) {
      const s = group.states[i]!
      if (live[s] === 0) continue
      const own = states.own[s]!
      if (all[own]! < 0) {
        let plain = 0, tired = 0
        for (let c = 0; c < byClass.length; c++) {
          if (isWorn[c] === 1) tired += byClass[c]! * prior[c * OWN_COUNT + own]!
          else plain += byClass[c]! * prior[c * OWN_COUNT + own]!
        }
        all[own] = plain
        even[own] = tired
      }
      out[s]! += weight[s]! * all[own]!
      worn[s]! += weight[s]! * even[own]!
    }
  }
}
