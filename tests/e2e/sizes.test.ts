import { readFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { gzipSync } from 'node:zlib'
import { beforeAll, expect, test } from 'vitest'
import { demandBuild } from './parts/walk.ts'

/**
 * What a browser must fetch of JavaScript before a screen works, compressed, from the build as it is served: the start, the layouts, the page,
 * and all they import at once. What is fetched later (other languages, the worker, pictures of codes) does not count.
 */
const WEB = resolve(import.meta.dirname, '../../apps/web')
interface Chunk {
  readonly file: string
  readonly imports?: readonly string[]
}
let manifest: Record<string, Chunk>
let pages: Map<string, readonly number[]>

beforeAll(() => {
  demandBuild()
  manifest = JSON.parse(readFileSync(join(WEB, '.svelte-kit/output/client/.vite/manifest.json'), 'utf8')) as Record<string, Chunk>
  const app = readFileSync(join(WEB, '.svelte-kit/generated/build/client-optimized/app.js'), 'utf8')
  pages = new Map([...app.matchAll(/"(\/[^"]*)": \[~?(\d+)(?:,\[([\d,]*)\])?/g)].map(([, path, leaf, layouts]) => [path!, [Number(leaf), ...(layouts ?? '').split(',').filter(Boolean).map(Number)]]))
})

/** Compressed bytes of everything that the named chunks import at once. */
function bytes(names: readonly string[]): number {
  const files = new Set<string>()
  const take = (name: string) => {
    const chunk = manifest[name]
    if (!chunk || files.has(chunk.file)) return
    if (chunk.file.endsWith('.js')) files.add(chunk.file)
    chunk.imports?.forEach(take)
  }
  names.forEach(take)
  return [...files].reduce((sum, file) => sum + gzipSync(readFileSync(join(WEB, 'build', file))).length, 0)
}

function screenBytes(path: string): number {
  const nodes = pages.get(path)
  if (!nodes) throw new Error(`No page ${path} in the build; there are ${[...pages.keys()].join(', ')}`)
  const names = Object.keys(manifest)
  const node = (n: number) => names.find((name) => manifest[name]!.file.includes(`/nodes/${n}.`))
  const start = names.filter((name) => /\/entry\/(start|app)\./.test(manifest[name]!.file))
  return bytes([...start, node(0), ...nodes.map(node)].filter((name) => name !== undefined))
}

test.each([
  ['/sign-in', 90],
  ['/(desk)', 90],
  ['/bay', 90],
  ['/(desk)/book-in', 100],
  ['/(desk)/jobs/[job]', 150],
  ['/(desk)/jobs/[job]/decide', 150],
  ['/jobs/[job]/test', 150],
  ['/jobs/[job]/test/verdict', 150],
])('%s needs at most %i kB of JavaScript', (path, most) => {
  expect(screenBytes(path) / 1000).toBeLessThanOrEqual(most)
  // a page that seems to need nothing was not found
  expect(screenBytes(path) / 1000).toBeGreaterThan(20)
})
