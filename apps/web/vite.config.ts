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
  build: {
    target: 'es2023',
    // A slow line pays for each journey: what most pages need comes in few files instead of fifty small ones.
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            { name: 'runtime', test: /node_modules[\\/](svelte|@sveltejs|esm-env|devalue|clsx)[\\/]/, minShareCount: 8, priority: 3 },
            { name: 'common', test: /(apps[\\/]web[\\/]src|packages)[\\/]/, minShareCount: 16, priority: 2 },
            { name: 'shared', test: /(apps[\\/]web[\\/]src|packages)[\\/]/, minShareCount: 8, priority: 1 },
          ],
        },
      },
    },
  },
  server: { proxy: { '/v1': process.env['API'] ?? 'http://127.0.0.1:4080' } },
})
