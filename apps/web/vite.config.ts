import adapter from '@sveltejs/adapter-static'
import { sveltekit } from '@sveltejs/kit/vite'
import { defineConfig } from 'vite'

// One page for every address: the API server answers each unknown GET outside /v1 with build/index.html.
export default defineConfig({
  plugins: [
    sveltekit({
      adapter: adapter({ pages: 'build', fallback: 'index.html' }),
      compilerOptions: { runes: true },
      serviceWorker: { register: false }, // registered by lib/offline, which also listens for a new version
      version: { pollInterval: 0 },
      // 'hash' writes the hash of the one inline start script into the page itself
      csp: { mode: 'hash', directives: { 'script-src': ['self'], 'worker-src': ['self', 'blob:'], 'object-src': ['none'], 'base-uri': ['self'] } },
    }),
  ],
  build: { target: 'es2023' },
  server: { proxy: { '/v1': process.env['API'] ?? 'http://127.0.0.1:4080' } },
})
