import { execFile } from 'node:child_process'
import { resolve } from 'node:path'
import { promisify } from 'node:util'
import type { LoadOrder, LoadResult } from './load.ts'

const run = promisify(execFile)
const LOAD = resolve(import.meta.dirname, 'load.ts')
const CONNECTIONS = 32
const WARM_UP_SECONDS = 2
const ROUNDS = 3

/** A side of a comparison: what is asked, and of whom. */
export type Side = { readonly name: string } & Pick<LoadOrder, 'url' | 'token' | 'puts'>
/** Medians of the rounds; `bad` counts every answer that was not 2xx. */
export type Measured = LoadResult & { readonly name: string; readonly rounds: readonly number[] }

/** Loads all sides in turn, three rounds, so that a machine that slows down slows both sides down. */
export async function measure(sides: readonly Side[], seconds: number): Promise<Measured[]> {
  for (const side of sides) await load(side, WARM_UP_SECONDS)
  const rounds: LoadResult[][] = sides.map(() => [])
  for (let round = 0; round < ROUNDS; round++) {
    for (const [at, side] of sides.entries()) rounds[at]?.push(await load(side, seconds))
  }
  return sides.map(({ name }, at) => {
    const results = rounds[at] ?? []
    const of = (pick: (result: LoadResult) => number) => median(results.map(pick))
    return { name, perSecond: of((one) => one.perSecond), p50: of((one) => one.p50), p99: of((one) => one.p99), bad: results.reduce((sum, one) => sum + one.bad, 0), rounds: results.map((one) => Math.round(one.perSecond)) }
  })
}

async function load({ url, token, puts }: Side, seconds: number): Promise<LoadResult> {
  const order: LoadOrder = { url, seconds, connections: CONNECTIONS, ...(token === undefined ? {} : { token }), ...(puts === undefined ? {} : { puts }) }
  const { stdout } = await run(process.execPath, [LOAD, JSON.stringify(order)])
  return JSON.parse(stdout) as LoadResult
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0
}
