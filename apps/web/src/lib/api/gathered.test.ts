import { expect, test } from 'vitest'
import { gathered } from './gathered.ts'

test('calls made while one runs share one more run, whose answer is the last', async () => {
  const answers: (() => void)[] = []
  const again = gathered(() => new Promise<void>((done) => answers.push(done)))
  const first = again()
  const others = Promise.all([again(), again(), again()])
  expect(answers).toHaveLength(1)
  answers[0]!()
  await expect.poll(() => answers.length, { timeout: 30_000 }).toBe(2)
  answers[1]!()
  await Promise.all([first, others])
  expect(answers).toHaveLength(2)
})

test('a run that fails tells its callers, and the next call runs again', async () => {
  let runs = 0
  const again = gathered(() => (++runs === 1 ? Promise.reject(new Error('no')) : Promise.resolve()))
  await expect(again()).rejects.toThrow('no')
  await again()
  expect(runs).toBe(2)
})

test('a call made in the very moment in which a run ends is not lost', async () => {
  let runs = 0
  const again = gathered(async () => void (runs += 1))
  // at every point of the run's end, from inside the queue that ends it
  for (let turns = 0; turns < 8; turns += 1) {
    const before = runs
    const first = again()
    for (let turn = 0; turn < turns; turn += 1) await Promise.resolve()
    await again()
    await first
    await expect.poll(() => runs, { timeout: 30_000 }).toBe(before + 2)
  }
})
