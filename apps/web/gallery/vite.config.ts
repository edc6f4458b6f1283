// The parts on one page, with sample values, to look at: `vite --config gallery/vite.config.ts`. Not in the build of the app.
import { svelte } from '@sveltejs/vite-plugin-svelte'
import { defineConfig } from 'vite'

export default defineConfig({ root: import.meta.dirname, plugins: [svelte()], server: { fs: { allow: ['../../..'] } } })
