import { cpus, loadavg } from 'node:os'
import { evaluate } from '@evenbore/diagnosis'
import { chainTotal, sumChain } from '../../packages/diagnosis/src/model/chain.ts'
import { inferTwo, soundByBruteForce } from './evaluation/brute-force.ts'
import { caseFor, ENGINES, STAGES } from './evaluation/cases.ts'
import { plainForwardBackward } from './evaluation/floor.ts'
import { peakMemoryMiB } from './evaluation/memory.ts'
import { time } from './evaluation/time.ts'

/** The chain may take so many times the plain forward-backward over arrays of the same sizes. */
const MOST_OVER_FLOOR = 2.5
/** Going through everything must cost at least so many times the model's own way. */
const LEAST_UNDER_BRUTE_FORCE = 20
const MOST_MEMORY_MIB = 32

/**
 * Speed of one evaluation, with and without the ranking of next tests and the reasons; of the model's chain against a plain
 * forward-backward; of the inference against brute force on an engine of two; and the peak memory of one evaluation. Times are printed
 * with the aims, ratios and memory are asserted: the exit is 1 when one misses. On a busy machine the least of the times is the fairer one.
 */
function main(): number {
  const say = (text: string): void => void process.stdout.write(`${text}\n`)
  const misses: string[] = []
  const assert = (holds: boolean, text: string): void => {
    say(`${holds ? 'holds' : 'MISSED'}: ${text}`)
    if (!holds) misses.push(text)
  }
  say(`${cpus().length} cores, load ${loadavg()[0]!.toFixed(1)}; milliseconds an evaluation: p50 (least)`)
  for (const engine of ENGINES) {
    for (const stage of STAGES) {
      const value = caseFor(engine, stage)
      const ranked = time(() => evaluate(value))
      const plain = time(() => evaluate(value, undefined, { ranking: false }))
      say(`${engine.name.padEnd(4)} ${stage.padEnd(10)} with ranking ${ranked.p50.toFixed(1)} (${ranked.least.toFixed(1)}), aim ${engine.ranked}; without ${plain.p50.toFixed(1)} (${plain.least.toFixed(1)}), aim ${engine.plain}`)
    }
  }
  const cells = 2000, prior = Float64Array.of(0.98, 0.003, 0.004, 0.004, 0.004, 0.003, 0.001, 0.001)
  const emissions = Array.from({ length: 4 }, (_, j) => Float64Array.from({ length: prior.length * cells }, (_x, i) => ((i * 7919 + j * 104729) % 1000) / 1000))
  const ours = time(() => ({ ...sumChain(emissions, prior, cells), total: chainTotal(emissions, prior, cells, new Float64Array(cells)) })), floor = time(() => plainForwardBackward(emissions, prior, cells))
  const over = ours.least / floor.least
  assert(over <= MOST_OVER_FLOOR, `chain of 4 over ${cells} cells ${ours.least.toFixed(2)} ms, plain ${floor.least.toFixed(2)} ms: ratio ${over.toFixed(2)}, at most ${MOST_OVER_FLOOR}`)
  const two = inferTwo()
  const own = time(() => inferTwo())
  const start = performance.now()
  const sound = soundByBruteForce(two)
  const brute = performance.now() - start
  assert(Math.abs(sound - two.own[1]![0]!) < 2e-5, `brute force on two cylinders agrees: sound ${sound.toFixed(6)} and ${two.own[1]![0]!.toFixed(6)}`)
  assert(brute / own.least >= LEAST_UNDER_BRUTE_FORCE, `brute force ${brute.toFixed(0)} ms, the model ${own.least.toFixed(2)} ms: ratio ${(brute / own.least).toFixed(0)}, at least ${LEAST_UNDER_BRUTE_FORCE}`)
  for (const engine of ENGINES) {
    for (const stage of STAGES) {
      const peak = peakMemoryMiB(engine, stage)
      assert(peak < MOST_MEMORY_MIB, `peak memory ${engine.name} ${stage} with ranking ${peak.toFixed(1)} MiB, below ${MOST_MEMORY_MIB}`)
    }
  }
  return misses.length === 0 ? 0 : 1
}

process.exitCode = main()
