import { parseArgs } from 'node:util'
import { STAGES, type Stage } from '../../simulator/stages.ts'

export type Options = {
  readonly engines: number
  /** How many of them are judged after every test too: the most readings, and the slowest evaluations. */
  readonly enginesAll: number
  /** Engines on which minutes of testing are measured: each needs some dozens of evaluations. */
  readonly settlings: number
  readonly worlds: readonly string[]
  readonly stages: readonly Stage[]
  readonly seed: number
  readonly workers: number
  readonly dump: string | undefined
  readonly handOnly: boolean
}

export const USAGE = `npm run bench:diagnosis -- [--engines 500] [--engines-all 100] [--settlings 20] [--world A|B] [--stages dry,wet,leakage,all] [--seed 20] [--workers 2] [--dump FILE] [--hand-only]
--dump writes case after leakage, all, and truth, one engine a line; --hand-only leaves the model out.`

/** Reads the command line; what it cannot understand is an error that says what was expected. */
export function readOptions(args: readonly string[]): Options {
  const { values } = parseArgs({
    args: [...args],
    options: {
      engines: { type: 'string', default: '500' },
      'engines-all': { type: 'string', default: '100' },
      settlings: { type: 'string', default: '20' },
      world: { type: 'string' },
      stages: { type: 'string', default: STAGES.join(',') },
      seed: { type: 'string', default: '20' },
      workers: { type: 'string', default: '2' },
      dump: { type: 'string' },
      'hand-only': { type: 'boolean', default: false },
    },
  })
  const whole = (name: 'engines' | 'engines-all' | 'settlings' | 'seed' | 'workers', low: number, high: number): number => {
    const value = Number(values[name])
    if (!Number.isInteger(value) || value < low || value > high)
      throw new Error(`--${name}: got "${values[name]}", expected a whole number from ${low} to ${high}`)
    return value
  }
  if (values.world !== undefined && values.world !== 'A' && values.world !== 'B')
    throw new Error(`--world: got "${values.world}", expected A or B`)
  const stages = values.stages.split(',').map((name): Stage => {
    const stage = STAGES.find((known) => known === name)
    if (stage === undefined) throw new Error(`--stages: got "${name}", expected some of ${STAGES.join(',')}`)
    return stage
  })
  return {
    stages,
    engines: whole('engines', 1, 100_000),
    enginesAll: whole('engines-all', 0, 100_000),
    settlings: whole('settlings', 0, 10_000),
    seed: whole('seed', 0, 2 ** 31 - 1),
    workers: whole('workers', 1, 64),
    worlds: values.world === undefined ? ['A', 'B'] : [values.world],
    dump: values.dump,
    handOnly: values['hand-only'],
  }
}
