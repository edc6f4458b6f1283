import { cpus } from 'node:os'
import type { Case } from '@evenbore/contract'
import { evaluate } from '@evenbore/diagnosis'
import { sumChain } from '../../packages/diagnosis/src/model/chain.ts'

/**
 * Speed of one evaluation, with and without the ranking of next tests, and of the model's chain against a plain
 * forward-backward over arrays of the same size (the floor). Wall time and this process's own processor time are both
 * printed: on a busy machine the second is the fairer one.
 */
const WARM_UP = 15
const RUNS = 40
const psi = (value: number) => ({ value, unit: 'psi' as const })

function engineCase(cylinders: number, layout: 'inline' | 'v'): Case {
  const numbers = Array.from({ length: cylinders }, (_, i) => i + 1)
  const dry = [152, 149, 112, 150, 154, 147, 151, 148]
  const wet = [172, 168, 126, 170, 175, 166, 171, 169]
  return {
    engine: {
      fuel: 'petrol', layout, cylinders, boreMm: 84, strokeMm: 76, compressionRatio: 9, firingOrder: cylinders === 4 ? [1, 3, 4, 2] : [1, 8, 4, 3, 6, 5, 7, 2],
      banks: layout === 'v' ? [numbers.filter((n) => n % 2 === 1), numbers.filter((n) => n % 2 === 0)] : [numbers],
    },
    conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 6, crankingRpm: 200 },
    leakageTester: { supply: psi(80), restrictorMm: 1.016 },
    readings: numbers.flatMap((cylinder): Case['readings'] => [
      { test: 'compression', cylinder, pressure: psi(dry[cylinder - 1]!) },
      { test: 'compression', cylinder, wet: true, oilMl: 8, pressure: psi(wet[cylinder - 1]!) },
      { test: 'leakage', cylinder, percent: cylinder === 3 ? 34 : 5 + (cylinder % 3), heard: { intake: 0, exhaust: cylinder === 3 ? 3 : 0, crankcase: 1, coolant: 0 } },
      { test: 'plug', cylinder, appearance: cylinder === 3 ? 'white' : 'tan' },
    ]),
  }
}

interface Timing { readonly wall: number; readonly processor: number }

/** Median of wall and processor milliseconds of a call after warm-up. */
function time(call: () => unknown): Timing {
  for (let i = 0; i < WARM_UP; i++) call()
  const wall: number[] = [], processor: number[] = []
  for (let i = 0; i < RUNS; i++) {
    const used = process.cpuUsage()
    const start = performance.now()
    call()
    wall.push(performance.now() - start)
    const { user, system } = process.cpuUsage(used)
    processor.push((user + system) / 1000)
  }
  const middle = (list: number[]): number => list.sort((a, b) => a - b)[list.length >> 1]!
  return { wall: middle(wall), processor: middle(processor) }
}

/** The floor: forward-backward over the same arrays, every pair of bridge levels in a plain double loop. */
function plainForwardBackward(emissions: readonly Float64Array[], prior: Float64Array, cells: number): number {
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

function main(): void {
  const say = (text: string): void => void process.stdout.write(`${text}\n`)
  say(`${RUNS} runs after ${WARM_UP} to warm up, ${cpus().length} cores; milliseconds, median (wall / processor)`)
  for (const [name, value, most, quick] of [['four cylinders', engineCase(4, 'inline'), 15, 2], ['V8', engineCase(8, 'v'), 60, 8]] as const) {
    const full = time(() => evaluate(value))
    const plain = time(() => evaluate(value, undefined, { ranking: false }))
    say(`${name}: with ranking ${full.wall.toFixed(1)} / ${full.processor.toFixed(1)} (aim ${most}), without ${plain.wall.toFixed(1)} / ${plain.processor.toFixed(1)} (aim ${quick})`)
  }
  const cells = 2000, prior = Float64Array.of(0.98, 0.003, 0.004, 0.004, 0.004, 0.003, 0.001, 0.001)
  const emissions = Array.from({ length: 4 }, (_, j) => Float64Array.from({ length: prior.length * cells }, (_x, i) => ((i * 7919 + j * 104729) % 1000) / 1000))
  const ours = time(() => sumChain(emissions, prior, cells))
  const floor = time(() => plainForwardBackward(emissions, prior, cells))
  say(`chain of 4 over ${cells} cells: ours ${ours.processor.toFixed(2)}, plain ${floor.processor.toFixed(2)}, ratio ${(ours.processor / floor.processor).toFixed(2)} (aim at most 2.5)`)
  const before = process.memoryUsage().heapUsed + process.memoryUsage().arrayBuffers
  evaluate(engineCase(8, 'v'))
  say(`memory after one V8 evaluation: ${((process.memoryUsage().heapUsed + process.memoryUsage().arrayBuffers - before) / 2 ** 20).toFixed(1)} MiB more (aim 32)`)
}

main()
