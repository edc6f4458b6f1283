import { sumDry, weighDry } from './dry-sums.ts'
import type { StateGroup } from './groups.ts'
import type { Kinds } from './kinds.ts'
import { OWN_COUNT } from './states.ts'
import type { Box, Cells, Emission, KeptCells, Workspace } from './workspace.ts'

/** What the sums need of a cylinder. */
export type Tables = Pick<Emission, 'dry' | 'wet' | 'leak' | 'leakAt' | 'leakRow' | 'weight' | 'prior' | 'live' | 'kinds'>

/** Room for the sums over one group, for each kind: by healthy leak; by rise and healthy leak; and over the groups by level as well. */
interface Scratch { readonly byLeak: Float64Array; readonly byCell: Float64Array; readonly byLevel: Float64Array; readonly touched: Uint8Array; readonly inGroup: Uint8Array; readonly inBlock: Uint8Array }

function scratchFor(kinds: Kinds, { boxes }: Cells, { grid }: Workspace): Scratch {
  const most = (of: (box: Box, f: number) => number): number => boxes.reduce((largest, box, f) => Math.max(largest, of(box, f)), 0)
  return {
    byLeak: new Float64Array(kinds.most * most(({ leaks }) => leaks)), byCell: new Float64Array(kinds.most * most(({ rises, leaks }) => rises * leaks)),
    byLevel: new Float64Array(kinds.most * most(({ rises, leaks }, f) => grid.ladders[f]!.count * rises * leaks)),
    touched: new Uint8Array(kinds.most), inGroup: new Uint8Array(kinds.most), inBlock: new Uint8Array(kinds.most),
  }
}

/** Live groups of one signature and bridge level. */
interface Block { readonly signature: number; readonly bridgeLevel: number; readonly groups: readonly StateGroup[] }

function liveBlocks({ dry, live }: Tables, { grouping }: Workspace): Block[] {
  const blocks: { signature: number; bridgeLevel: number; groups: StateGroup[] }[] = []
  for (const group of dry === null ? grouping.unread : grouping.read) {
    if (!group.states.some((s) => live[s] === 1)) continue
    const last = blocks.at(-1)
    if (last !== undefined && last.signature === group.signature && last.bridgeLevel === group.bridgeLevel) last.groups.push(group)
    else blocks.push({ signature: group.signature, bridgeLevel: group.bridgeLevel, groups: [group] })
  }
  return blocks
}

/**
 * Sums the likelihood of a cylinder's readings over its own states: blocks [signature * bridge levels + level], each over the
 * kept cells; null where no state is.
 *
 * @param room arrays of an earlier sum over the same cells that nobody needs any more: taken for the blocks, and grown by what is missing
 */
export function sumStates(tables: Tables, kept: Cells, space: Workspace, room: Float64Array[] = []): (Float64Array | null)[] {
  if (tables.wet === null && tables.leak === null) return sumDry(tables, kept, space)
  const { grid, grouping, states } = space
  const levels = states.bridgePrior.length
  const out: (Float64Array | null)[] = new Array<null>(grouping.signatures.length * levels).fill(null)
  const scratch = scratchFor(tables.kinds, kept, space)
  let taken = 0
  for (const { signature, bridgeLevel, groups } of liveBlocks(tables, space)) {
    const block = (room[taken++] ??= new Float64Array(kept.cells.length)).fill(0)
    out[signature * levels + bridgeLevel] = block
    for (let f = 0; f < grid.families.length; f++) {
      const box = kept.boxes[f]!
      if (box.rises * box.leaks === 0) continue
      scratch.inBlock.fill(0)
      for (const group of groups) {
        innerOf(group, f, tables, space, box, scratch)
        addLevels(group, f, tables, space, box, scratch)
      }
      spread(f, tables, space, kept, scratch, block)
    }
  }
  return out
}

/** Weight x wet x leak likelihood of a group's states over rise and healthy leak, for each kind, into `byCell`. */
function innerOf(group: StateGroup, f: number, { wet, leak, leakAt, leakRow, weight, live, kinds }: Tables, { grid, states }: Workspace, box: Box, scratch: Scratch): void {
  const { byLeak, byCell, touched, inGroup } = scratch
  const { rises, leaks: width } = box
  const from = grid.leakFrom[grid.families[f]![0]!]! + box.leak, count = rises * width
  const kindCount = kinds.ratios[f]!.length
  byLeak.fill(0, 0, kindCount * width)
  inGroup.fill(0)
  const { states: list, runs } = group
  for (let r = 0; r + 1 < runs.length; r++) {
    let any = 0
    for (let i = runs[r]!; i < runs[r + 1]!; i++) {
      const s = list[i]!
      if (live[s] === 0) continue
      const own = f * OWN_COUNT + states.own[s]!
      const kind = kinds.kindOf[own]!, at = kind * width
      const w = weight[s]! * kinds.lead[own]!
      touched[kind] = 1
      any = 1
      if (leak === null) for (let l = 0; l < width; l++) byLeak[at + l]! += w
      else {
        const row = leakAt[f]! + leakRow[s]! * grid.leakCount + from
        for (let l = 0; l < width; l++) byLeak[at + l]! += w * leak[row + l]!
      }
    }
    if (any === 0) continue
    const wetAt = (f * states.sealRows.length + states.sealRow[list[runs[r]!]!]!) * grid.rises.length + box.rise
    for (let kind = 0; kind < kindCount; kind++) {
      if (touched[kind] === 0) continue
      touched[kind] = 0
      const at = kind * width
      let cell = kind * count
      if (inGroup[kind] === 0) byCell.fill(0, cell, cell + count)
      inGroup[kind] = 1
      for (let v = 0; v < rises; v++) {
        const factor = wet === null ? 1 : wet[wetAt + v]!
        for (let l = 0; l < width; l++) byCell[cell++]! += factor * byLeak[at + l]!
      }
      byLeak.fill(0, at, at + width)
    }
  }
}

/** Adds a group to the sums by level: its cells times the dry likelihood of its loss. */
function addLevels(group: StateGroup, f: number, { dry, kinds }: Tables, { grid }: Workspace, { rises, leaks }: Box, { byCell, byLevel, inGroup, inBlock }: Scratch): void {
  const count = rises * leaks
  const levels = grid.ladders[f]!.count
  const dryAt = group.lossRow * grid.ladderFrom[grid.families.length]! + grid.ladderFrom[f]!
  for (let kind = 0; kind < kinds.ratios[f]!.length; kind++) {
    if (inGroup[kind] === 0) continue
    if (inBlock[kind] === 0) byLevel.fill(0, kind * levels * count, (kind + 1) * levels * count)
    inBlock[kind] = 1
    const from = kind * count
    for (let j = 0, to = kind * levels * count; j < levels; j++) {
      const factor = dry === null ? 1 : dry[dryAt + j]!
      for (let k = 0; k < count; k++) byLevel[to++]! += factor * byCell[from + k]!
    }
  }
}

/** Gives each class its part of each kind. */
function spread(f: number, { kinds }: Tables, { grid }: Workspace, { boxes, from, inner }: Cells, { byLevel, inBlock }: Scratch, block: Float64Array): void {
  const count = boxes[f]!.rises * boxes[f]!.leaks
  const levels = grid.ladders[f]!.count
  grid.families[f]!.forEach((c, i) => {
    for (let kind = 0; kind < kinds.ratios[f]!.length; kind++) {
      const ratio = kinds.ratios[f]![kind]![i]!
      if (inBlock[kind] === 0 || ratio === 0) continue
      for (let q = grid.columnFrom[c]!; q < grid.columnFrom[c + 1]!; q++) {
        const level = (kind * levels + grid.levelOf[q]! - grid.ladderFrom[f]!) * count
        for (let at = from[q]!; at < from[q + 1]!; at++) block[at]! += ratio * byLevel[level + inner[at]!]!
      }
    }
  })
}

/**
 * Weight of each state of a cylinder: the sum over the kept cells of prior x likelihood x all else. `around` holds what is not this
 * cylinder's own, for each signature: [bridge level * kept cells + cell].
 *
 * @param worn takes, if given, the part of each weight that lies in evenly worn engines
 */
export function weighStates(tables: Tables, scale: number, around: readonly Float64Array[], kept: KeptCells, space: Workspace, worn?: Float64Array): Float64Array {
  const { grid, states } = space
  const out = new Float64Array(states.count)
  if (tables.wet === null && tables.leak === null) weighDry(tables, around, kept, space, out, worn ?? out)
  else {
    const into = grid.families.map((classes) => (worn !== undefined && grid.classes[classes[0]!]!.commonLoss > 0 ? worn : out))
    const scratch = scratchFor(tables.kinds, kept, space)
    for (const { signature, bridgeLevel, groups } of liveBlocks(tables, space)) {
      for (let f = 0; f < grid.families.length; f++) {
        markKinds(groups, f, tables, space, scratch.inBlock)
        if (!gatherLevels(f, bridgeLevel, tables, space, around[signature]!, kept, scratch)) continue
        for (const group of groups) {
          gatherCells(group, f, tables, space, kept.boxes[f]!, scratch)
          outOf(group, f, tables, space, kept.boxes[f]!, scratch, into[f]!)
        }
      }
    }
  }
  for (let s = 0; s < out.length; s++) {
    if (worn !== undefined) {
      worn[s]! *= scale
      out[s]! *= scale
      out[s]! += worn[s]!
    } else out[s]! *= scale
  }
  return out
}

/** Marks the kinds in a family of which these groups have a live state. */
function markKinds(groups: readonly StateGroup[], f: number, { live, kinds }: Tables, { states }: Workspace, marks: Uint8Array): void {
  marks.fill(0)
  for (const { states: list } of groups) {
    for (let i = 0; i < list.length; i++) if (live[list[i]!] === 1) marks[kinds.kindOf[f * OWN_COUNT + states.own[list[i]!]!]!] = 1
  }
}

/** What is not the cylinder's own for each marked kind by level and cell, the classes of a family summed into `byLevel`; false when nothing is kept there. */
function gatherLevels(f: number, bridgeLevel: number, { kinds }: Tables, { grid }: Workspace, around: Float64Array, kept: KeptCells, { byLevel, inBlock }: Scratch): boolean {
  const { rises, leaks } = kept.boxes[f]!
  const count = rises * leaks
  if (count === 0) return false
  const levels = grid.ladders[f]!.count
  const ratios = kinds.ratios[f]!
  const base = bridgeLevel * kept.cells.length
  for (let kind = 0; kind < ratios.length; kind++) if (inBlock[kind] === 1) byLevel.fill(0, kind * levels * count, (kind + 1) * levels * count)
  grid.families[f]!.forEach((c, i) => {
    const first = grid.columnFrom[c]!, last = grid.columnFrom[c + 1]!
    if (kept.from[first] === kept.from[last]) return
    for (let kind = 0; kind < ratios.length; kind++) {
      const ratio = ratios[kind]![i]!
      if (inBlock[kind] === 0 || ratio === 0) continue
      for (let q = first; q < last; q++) {
        const to = (kind * levels + grid.levelOf[q]! - grid.ladderFrom[f]!) * count
        for (let at = kept.from[q]!; at < kept.from[q + 1]!; at++) byLevel[to + kept.inner[at]!]! += ratio * around[base + at]!
      }
    }
  })
  return true
}

/** Sums the levels with the dry likelihood of a group, for each kind that the group has, into `byCell`. */
function gatherCells(group: StateGroup, f: number, tables: Tables, space: Workspace, { rises, leaks }: Box, { byCell, byLevel, inGroup }: Scratch): void {
  const { dry, kinds } = tables, { grid } = space
  const count = rises * leaks
  const levels = grid.ladders[f]!.count
  const dryAt = group.lossRow * grid.ladderFrom[grid.families.length]! + grid.ladderFrom[f]!
  markKinds([group], f, tables, space, inGroup)
  for (let kind = 0; kind < kinds.ratios[f]!.length; kind++) {
    if (inGroup[kind] === 0) continue
    const to = kind * count
    byCell.fill(0, to, to + count)
    for (let j = 0, from = kind * levels * count; j < levels; j++) {
      const factor = dry === null ? 1 : dry[dryAt + j]!
      for (let k = 0; k < count; k++) byCell[to + k]! += factor * byLevel[from++]!
    }
  }
}

/** Multiplies wet and leak likelihood in, run by run, and adds to the states. */
function outOf(group: StateGroup, f: number, { wet, leak, leakAt, leakRow, weight, live, kinds }: Tables, { grid, states }: Workspace, box: Box, { byCell, byLeak, inGroup }: Scratch, out: Float64Array): void {
  const { rises, leaks: width } = box
  const from = grid.leakFrom[grid.families[f]![0]!]! + box.leak, count = rises * width
  const { states: list, runs } = group
  for (let r = 0; r + 1 < runs.length; r++) {
    let summed = 0
    for (let i = runs[r]!; i < runs[r + 1]!; i++) {
      const s = list[i]!
      if (live[s] === 0) continue
      if (summed === 0) {
        summed = 1
        const wetAt = (f * states.sealRows.length + states.sealRow[s]!) * grid.rises.length + box.rise
        for (let kind = 0; kind < inGroup.length; kind++) {
          if (inGroup[kind] === 0) continue
          const at = kind * width
          byLeak.fill(0, at, at + width)
          let cell = kind * count
          for (let v = 0; v < rises; v++) {
            const factor = wet === null ? 1 : wet[wetAt + v]!
            for (let l = 0; l < width; l++) byLeak[at + l]! += factor * byCell[cell++]!
          }
        }
      }
      const own = f * OWN_COUNT + states.own[s]!
      const at = kinds.kindOf[own]! * width
      let sum = 0
      if (leak === null) for (let l = 0; l < width; l++) sum += byLeak[at + l]!
      else {
        const row = leakAt[f]! + leakRow[s]! * grid.leakCount + from
        for (let l = 0; l < width; l++) sum += leak[row + l]! * byLeak[at + l]!
      }
      out[s]! += weight[s]! * kinds.lead[own]! * sum
    }
  }
}
