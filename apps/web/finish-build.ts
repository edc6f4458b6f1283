import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { brotliCompressSync, constants, gzipSync } from 'node:zlib'

/**
 * The last step of a build. The start page is the same for every address, so it cannot name the files of the page asked for: a browser
 * would learn of them only after it has fetched and run the router, one more journey over a slow line. A small script in the start page
 * names them by address. Then every file gets compressed copies beside it, which the server sends as they are.
 */
const WEB = import.meta.dirname
const BUILD = join(WEB, 'build')
const CLIENT = join(WEB, '.svelte-kit', 'output', 'client', '.vite', 'manifest.json')
const ROUTES = join(WEB, '.svelte-kit', 'generated', 'build', 'client-optimized', 'app.js')
/** Pages that are opened from outside (a bookmark, a tablet's home screen, a reload), by what their addresses look like. */
const ENTRIES: readonly (readonly [route: string, address: RegExp])[] = [
  ['/(desk)', /^\/$/],
  ['/bay', /^\/bay$/],
  ['/sign-in', /^\/sign-in$/],
  ['/jobs/[job]/test', /^\/jobs\/[^/]+\/test$/],
  ['/jobs/[job]/test/verdict', /^\/jobs\/[^/]+\/test\/verdict$/],
  ['/(desk)/jobs/[job]', /^\/jobs\/[^/]+$/],
  ['/(desk)/jobs/[job]/decide', /^\/jobs\/[^/]+\/decide$/],
]

interface Chunk {
  readonly file: string
  readonly imports?: readonly string[]
  readonly css?: readonly string[]
}
const manifest = JSON.parse(readFileSync(CLIENT, 'utf8')) as Record<string, Chunk>
const names = Object.keys(manifest)
const dictionary = new Map([...readFileSync(ROUTES, 'utf8').matchAll(/"(\/[^"]*)": \[~?(\d+)(?:,\[([\d,]*)\])?/g)].map(([, path, leaf, layouts]) => [path!, [Number(leaf), ...(layouts ?? '').split(',').filter(Boolean).map(Number)]]))

/** Everything that a page of the app needs at once, layouts included. */
function filesOf(route: string): Set<string> {
  const nodes = dictionary.get(route)
  if (!nodes) throw new Error(`No route ${route}; there are ${[...dictionary.keys()].join(', ')}`)
  const files = new Set<string>()
  const take = (name: string | undefined): void => {
    const chunk = name === undefined ? undefined : manifest[name]
    if (!chunk || files.has(chunk.file)) return
    files.add(chunk.file)
    chunk.css?.forEach((file) => files.add(file))
    chunk.imports?.forEach(take)
  }
  for (const node of nodes) take(names.find((name) => manifest[name]!.file.includes(`/nodes/${node}.`)))
  return files
}

const page = join(BUILD, 'index.html')
const html = readFileSync(page, 'utf8')
const routes = ENTRIES.map(([route, address]) => [address, [...filesOf(route)].filter((file) => !html.includes(file))] as const)
// files that several pages need are named once
const files = [...new Set(routes.flatMap(([, of]) => of))].map((file) => file.replace('_app/immutable/', ''))
const table = routes.map(([address, of]) => `[${String(address)},${JSON.stringify(of.map((file) => files.indexOf(file.replace('_app/immutable/', ''))))}]`).join(',')
const script = `<script>{const f=${JSON.stringify(files)};for(const[a,n]of[${table}])if(a.test(location.pathname)){for(const i of n){const l=document.createElement('link');l.href='/_app/immutable/'+f[i];if(f[i].endsWith('.css'))l.rel='preload',l.as='style',l.crossOrigin='';else l.rel='modulepreload';document.head.append(l)}break}}</script>`
const marked = html.replace('<!-- files of this page -->', script)
if (marked === html) throw new Error('The start page has lost the place where the files of a page are named.')
writeFileSync(page, marked)

/** Smaller files fit into one packet as they are. */
const LEAST_BYTES = 1000
for (const entry of readdirSync(BUILD, { recursive: true, withFileTypes: true })) {
  if (!entry.isFile() || !/[.](js|css|html|svg|json|webmanifest)$/.test(entry.name)) continue
  const path = join(entry.parentPath, entry.name)
  const content = readFileSync(path)
  if (content.length < LEAST_BYTES) continue
  writeFileSync(`${path}.br`, brotliCompressSync(content, { params: { [constants.BROTLI_PARAM_SIZE_HINT]: content.length } }))
  writeFileSync(`${path}.gz`, gzipSync(content, { level: 9 }))
}
