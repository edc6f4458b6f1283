import type { StateSpace } from './states.ts'

/** States that feel the same bridge, lose the same pressure and answer alike to tests of the whole engine: summed as one over the levels. */
export interface StateGroup {
  readonly bridgeLevel: number
  readonly lossRow: number
  readonly signature: number
  readonly states: Int32Array
}

const known = new WeakMap<StateSpace, Map<number, readonly StateGroup[]>>()

/** Groups of the state space for a mask of fault groups in question; made once for each. */
export function groupStates(states: StateSpace, signatures: Uint8Array, mask: number): readonly StateGroup[] {
  let byMask = known.get(states)
  if (byMask === undefined) known.set(states, (byMask = new Map()))
  let groups = byMask.get(mask)
  if (groups === undefined) {
    const lists = new Map<string, number[]>()
    for (let s = 0; s < states.count; s++) {
      const key = `${states.bridgeLevel[s]} ${states.lossRow[s]} ${signatures[s]! & mask}`
      const list = lists.get(key)
      if (list === undefined) lists.set(key, [s])
      else list.push(s)
    }
    groups = [...lists.values()].map((list) => ({
      bridgeLevel: states.bridgeLevel[list[0]!]!, lossRow: states.lossRow[list[0]!]!, signature: signatures[list[0]!]! & mask, states: Int32Array.from(list),
    }))
    byMask.set(mask, groups)
  }
  return groups
}
