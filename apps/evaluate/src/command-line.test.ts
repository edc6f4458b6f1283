import { spawn } from 'node:child_process'
import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'

const PROGRAMS = import.meta.dirname
const good = {
  engine: { fuel: 'petrol', layout: 'inline', cylinders: 4, firingOrder: [1, 3, 4, 2] },
  conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all', strokes: 6 },
  readings: [155, 160, 140, 145].map((value, index) => ({ test: 'compression', cylinder: index + 1, pressure: { value, unit: 'psi' } })),
}
const withHighest = (value: number): string => JSON.stringify({ ...good, readings: good.readings.map((reading, index) => (index === 1 ? { ...reading, pressure: { value, unit: 'psi' } } : reading)) })

let folder: string
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'command-line-'))
})
afterAll(() => rm(folder, { recursive: true }))

interface Ended {
  readonly out: string
  readonly error: string
  readonly code: number | null
}

function run(program: string, args: string[], input = ''): Promise<Ended> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [join(PROGRAMS, program), ...args], { env: { ...process.env, INIT_CWD: folder } })
    let [out, error] = ['', '']
    child.stdout.on('data', (text: Buffer) => (out += text.toString()))
    child.stderr.on('data', (text: Buffer) => (error += text.toString()))
    child.on('error', reject)
    child.on('close', (code) => resolve({ out, error, code }))
    child.stdin.on('error', () => {})
    child.stdin.end(input)
  })
}

const file = async (name: string, text: string): Promise<string> => {
  await writeFile(join(folder, name), text)
  return name
}

describe('one case from a file', () => {
  it('prints the evaluation; paths start where the user stands', async () => {
    const { out, code } = await run('evaluate.ts', [await file('case.json', JSON.stringify(good))])
    expect(code).toBe(0)
    expect(JSON.parse(out).consistency).toMatchObject({ spreadPercent: 12.5, asRead: 'outside' })
  }, 60_000)
  it('a bad case: its errors on standard error, exit 2', async () => {
    const { out, error, code } = await run('evaluate.ts', [await file('bad.json', JSON.stringify({ ...good, engine: { ...good.engine, cylinders: 3 } }))])
    expect([out, code]).toEqual(['', 2])
    expect(JSON.parse(error).error.errors.map(({ path }: { path: string }) => path)).toContain('/readings/3/cylinder')
  }, 60_000)
  it('broken JSON is a bad case', async () => {
    const { error, code } = await run('evaluate.ts', [await file('broken.json', '{"engine":')])
    expect(code).toBe(2)
    expect(JSON.parse(error).error.errors[0].path).toBe('')
  }, 60_000)
  it('a file that cannot be opened, or wrong usage: exit 3', async () => {
    const ends = await Promise.all([run('evaluate.ts', ['none.json']), run('evaluate.ts', []), run('evaluate.ts', ['--line']), run('compare.ts', []), run('compare.ts', ['none.json'])])
    expect(ends.map(({ code }) => code)).toEqual([3, 3, 3, 3, 3])
    for (const { error, out } of ends) {
      expect(error).toMatch(/Cannot open|Usage/)
      expect(out).toBe('')
    }
  }, 60_000)
})

describe('a case a line', () => {
  it('answers in order, bad lines on their line, blank lines skipped, exit 0', async () => {
    const highest = Array.from({ length: 30 }, (_, index) => 160 + index)
    const lines = [...highest.map(withHighest), '', '{"engine":', '   ', '[]', JSON.stringify(good)]
    const { out, code } = await run('evaluate.ts', ['--lines'], lines.join('\r\n'))
    expect(code).toBe(0)
    const answers = out.trimEnd().split('\n').map((line) => JSON.parse(line))
    expect(answers).toHaveLength(33)
    expect(answers.slice(0, 30).map((answer) => Math.round(answer.consistency.highest.pressure.value))).toEqual(highest)
    expect(answers[30].error.errors[0]).toMatchObject({ path: '', expected: 'JSON' })
    expect(answers[31].error.errors[0]).toMatchObject({ path: '', expected: 'an object' })
    expect(answers[32].consistency.spreadPercent).toBe(12.5)
  }, 120_000)
  it('no input, no output', async () => expect(await run('evaluate.ts', ['--lines'])).toEqual({ out: '', error: '', code: 0 }), 60_000)
})

describe('two sessions from a file', () => {
  it('prints the comparison', async () => {
    const { out, code } = await run('compare.ts', [await file('pair.json', JSON.stringify({ before: good, after: good }))])
    expect(code).toBe(0)
    expect(JSON.parse(out).cylinders).toHaveLength(4)
  }, 60_000)
  it('a bad pair names the side', async () => {
    const { error, code } = await run('compare.ts', [await file('bad-pair.json', JSON.stringify({ before: good }))])
    expect(code).toBe(2)
    expect(JSON.parse(error).error.errors[0].path).toBe('/after')
  }, 60_000)
})
