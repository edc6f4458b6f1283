/// <reference types="@sveltejs/kit" />
import { version } from '$app/env'
import { assets, immutable } from '$app/manifest'
import { self } from '$app/service-worker'

// The app opens without network for as long as this cache lives. It holds the app, never an answer of /v1: those are kept by lib/offline,
// where they belong to a person's work and have an age.
const CACHE = `evenbore-${version}`
const SHELL = '/'
const FILES = [SHELL, ...immutable.map(({ path }) => rooted(path)), ...assets.map(({ path }) => rooted(path))]
/** Addresses that the server answers itself; a page of the app never lies below them. */
const SERVERS = ['/v1', '/docs', '/service-worker.js']

function rooted(path: string): string {
  return path.startsWith('/') ? path : `/${path}`
}

self.addEventListener('install', (event) => {
  event.waitUntil(
    caches.open(CACHE).then(async (cache) => {
      // one file after the other would take a slow line minutes; all at once would starve the page that installs us
      const left = [...FILES]
      const take = async () => {
        for (let path = left.shift(); path !== undefined; path = left.shift()) await cache.add(new Request(path, { cache: path === SHELL ? 'reload' : 'default' }))
      }
      await Promise.all([take(), take(), take()])
    }),
  )
})

self.addEventListener('activate', (event) => {
  event.waitUntil(
    caches.keys().then(async (names) => {
      await Promise.all(names.filter((name) => name.startsWith('evenbore-') && name !== CACHE).map((name) => caches.delete(name)))
      await self.clients.claim()
    }),
  )
})

self.addEventListener('message', (event) => {
  if (event.data === 'take-over') void self.skipWaiting()
})

self.addEventListener('fetch', (event) => {
  const { request } = event
  const url = new URL(request.url)
  if (request.method !== 'GET' || url.origin !== self.location.origin) return
  if (SERVERS.some((path) => url.pathname === path || url.pathname.startsWith(`${path}/`))) return
  if (request.mode === 'navigate') {
    event.respondWith(cachedElseNetwork(SHELL, request))
    return
  }
  if (FILES.includes(url.pathname)) event.respondWith(cachedElseNetwork(url.pathname, request))
})

async function cachedElseNetwork(path: string, request: Request): Promise<Response> {
  const cached = await (await caches.open(CACHE)).match(path)
  return cached ?? fetch(request)
}
