import type { Knowledge } from '../knowledge/knowledge.ts'
import type { Mixture } from './mixture.ts'

/** Valve timing that is off on one bank: its cylinders all read lower by `loss` (logarithm), with this part of the engines whose timing is off. */
export interface LowBank {
  readonly cylinders: ReadonlySet<number>
  readonly loss: number
  readonly share: number
}

/** Readings that a bank needs before it can be set against the other. */
const LEAST_READ = 2
/** Losses on either side of the difference between the banks at which the sum is taken, and their step: about the scatter of a bank's middle. */
const STEPS = 4
const STEP = 0.015

/**
 * Losses of one bank that the dry readings leave any room for: about the difference between the middles of the two banks, where it is more than
 * sisters differ.
 */
export function lowBanks(banks: readonly (readonly number[])[], dry: readonly (Mixture | null)[], knowledge: Knowledge): LowBank[] {
  const { median, spread, least } = knowledge.oneBank.loss.value
  const middles = banks.map((bank) => {
    const logs = bank.flatMap((i) => dry[i]?.[1] ?? []).sort((a, b) => a - b)
    return logs.length < LEAST_READ ? null : (logs[(logs.length - 1) >> 1]! + logs[logs.length >> 1]!) / 2
  })
  if (banks.length !== 2 || middles[0] == null || middles[1] == null) return []
  const difference = middles[0] - middles[1]
  if (Math.abs(difference) < least) return []
  const cylinders = new Set(banks[difference < 0 ? 0 : 1])
  const losses = Array.from({ length: 2 * STEPS + 1 }, (_, k) => Math.abs(difference) + (k - STEPS) * STEP).filter((loss) => loss > 0)
  // half: either bank may be the one
  const density = (loss: number): number => Math.exp(-0.5 * (Math.log(loss / median) / spread) ** 2) / (loss * spread * Math.sqrt(2 * Math.PI))
  return losses.map((loss) => ({ cylinders, loss, share: 0.5 * STEP * density(loss) * knowledge.oneBank.part.value }))
}

/** What a cylinder of this class reads below the common level, its own state apart. */
export function bankLoss({ lowBank }: { readonly lowBank: LowBank | null }, cylinder: number): number {
  return lowBank !== null && lowBank.cylinders.has(cylinder) ? lowBank.loss : 0
}
