import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { keptFiles } from './kept-files.ts'

const folder = mkdtempSync(join(tmpdir(), 'evenbore-files-'))
const files = keptFiles(folder)
afterAll(() => rmSync(folder, { recursive: true }))

test('a content is kept once, under the name that its hash gives, also when it comes several times at once', async () => {
  const names = await Promise.all([1, 2, 3].map(() => files.keep(Buffer.from('abc'))))
  // FIPS 180-4, the worked example of SHA-256 for the message "abc".
  expect(new Set(names)).toEqual(new Set(['ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad']))
  expect(await files.names()).toEqual([names[0]])
  expect((await files.read(names[0]!))?.toString()).toBe('abc')
  expect(readdirSync(join(folder, 'ba'))).toHaveLength(1)
})

test('a name that is none leads nowhere', async () => {
  for (const name of ['', '../../etc/passwd', 'BA7816', 'f'.repeat(64), `${'a'.repeat(63)}/`]) expect(await files.read(name)).toBeUndefined()
})

test('a file that was changed behind our back is not given out, and is mended when its content comes again', async () => {
  const name = await files.keep(Buffer.from('a plug'))
  writeFileSync(join(folder, name.slice(0, 2), name), 'another')
  expect(await files.read(name)).toBeUndefined()
  await files.keep(Buffer.from('a plug'))
  expect((await files.read(name))?.toString()).toBe('a plug')
})
