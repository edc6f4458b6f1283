/** The floor: forward-backward over arrays of the same sizes, every pair of bridge levels in a plain double loop. */
export function plainForwardBackward(emissions: readonly Float64Array[], prior: Float64Array, cells: number): number {
  const levels = prior.length
  const pass = (list: readonly Float64Array[]): Float64Array => {
    let state = new Float64Array(levels * cells)
    state.fill(1, 0, cells)
    for (const own of list) {
      const next = new Float64Array(levels * cells)
      for (let right = 0; right < levels; right++) for (let left = 0; left < levels; left++) {
        const felt = Math.max(left, right) * cells
        for (let k = 0; k < cells; k++) next[right * cells + k]! += prior[right]! * state[left * cells + k]! * own[felt + k]!
      }
      state = next
    }
    return state
  }
  return pass(emissions)[0]! + pass(emissions.toReversed())[0]!
}
