import type { StateSpace } from './states.ts'

/** States that feel the same bridge, lose the same pressure and answer alike to tests of the whole engine: summed as one over the levels. */
export interface StateGroup {
  readonly bridgeLevel: number
  readonly lossRow: number
  /** Place of the signature in the list of `Grouping`. */
  readonly signature: number
  /** Ordered by what oil gives back. */
  readonly states: Int32Array
  /** Where a run of states of equal return with oil begins in `states`, and at last their number. */
  readonly runs: Int32Array
}

/** The state space in groups, and the signatures (bits of fault groups in question) that occur, the empty one first. */
export interface Grouping {
  readonly signatures: readonly number[]
  /** Bridge levels that occur with each signature: all, or the first alone. */
  readonly levels: readonly number[]
  /** For cylinders whose pressure was read. Groups of one signature and bridge level stand together, here and in `unread`. */
  readonly read: readonly StateGroup[]
  /** For those whose pressure was not: states of all losses are one. */
  readonly unread: readonly StateGroup[]
}

/** States that lose the same pressure, whatever else they differ in. */
export type LossGroup = Pick<StateGroup, 'lossRow' | 'states' | 'runs'>

const known = new WeakMap<StateSpace, Map<number, Grouping>>()
const byLossAlone = new WeakMap<StateSpace, readonly LossGroup[]>()

/** All states by the pressure that they lose; made once. */
export function lossGroups(states: StateSpace): readonly LossGroup[] {
  let groups = byLossAlone.get(states)
  if (groups === undefined) {
    groups = [...Map.groupBy(Array.from({ length: states.count }, (_, s) => s), (s) => states.lossRow[s]!)].map(([lossRow, list]) => ({ lossRow, ...inRuns(list, states) }))
    byLossAlone.set(states, groups)
  }
  return groups
}

/** States ordered by what oil gives back, and where a run of equal return begins. */
function inRuns(list: readonly number[], { sealRow }: StateSpace): Pick<StateGroup, 'states' | 'runs'> {
  const ordered = list.toSorted((a, b) => sealRow[a]! - sealRow[b]! || a - b)
  const runs = [...ordered.keys()].filter((i) => i === 0 || sealRow[ordered[i]!] !== sealRow[ordered[i - 1]!])
  return { states: Int32Array.from(ordered), runs: Int32Array.of(...runs, ordered.length) }
}

/** Groups of the state space for a mask of fault groups in question; made once for each. */
export function groupStates(states: StateSpace, signatures: Uint8Array, mask: number): Grouping {
  let byMask = known.get(states)
  if (byMask === undefined) known.set(states, (byMask = new Map()))
  let grouping = byMask.get(mask)
  if (grouping === undefined) {
    const own = Uint8Array.from(signatures, (bits) => bits & mask)
    const occurring = [...new Set([0, ...own])].sort((a, b) => a - b)
    const levels = occurring.map((bits) => (own.some((b, s) => b === bits && states.bridgeLevel[s]! > 0) ? states.bridgePrior.length : 1))
    grouping = { signatures: occurring, levels, read: groupsBy(states, own, occurring, true), unread: groupsBy(states, own, occurring, false) }
    byMask.set(mask, grouping)
  }
  return grouping
}

function groupsBy(states: StateSpace, signatures: Uint8Array, occurring: readonly number[], byLoss: boolean): StateGroup[] {
  const lists = new Map<string, number[]>()
  for (let s = 0; s < states.count; s++) {
    const key = `${states.bridgeLevel[s]} ${byLoss ? states.lossRow[s] : ''} ${signatures[s]}`
    const list = lists.get(key)
    if (list === undefined) lists.set(key, [s])
    else list.push(s)
  }
  const groups = [...lists.values()].map((list) => {
    const first = list[0]!
    return { bridgeLevel: states.bridgeLevel[first]!, lossRow: states.lossRow[first]!, signature: occurring.indexOf(signatures[first]!), ...inRuns(list, states) }
  })
  return groups.sort((a, b) => a.signature - b.signature || a.bridgeLevel - b.bridgeLevel)
}
