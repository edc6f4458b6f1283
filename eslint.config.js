import { readdirSync } from 'node:fs'
import js from '@eslint/js'
import svelte from 'eslint-plugin-svelte'
import { defineConfig, globalIgnores } from 'eslint/config'
import tseslint from 'typescript-eslint'

/** Names that say nothing: a folder is a noun, a file is one idea. */
const EMPTY_NAMES = new Set(['utils', 'util', 'helpers', 'helper', 'common', 'misc'])
const MOST_LINES = 400

/** Files and folders whose names say nothing are refused where they are made. */
const namesSaySomething = {
  meta: { type: 'problem', messages: { empty: 'The name "{{name}}" says nothing: name the one idea that is in it.' }, schema: [] },
  create: (context) => ({
    Program(node) {
      const parts = context.filename.slice(context.cwd.length).split(/[/\\]/).map((part) => part.split('.', 1)[0])
      const name = parts.find((part) => EMPTY_NAMES.has(part))
      if (name !== undefined) context.report({ node, messageId: 'empty', data: { name } })
    },
  }),
}

export default defineConfig(
  globalIgnores(['**/node_modules/', '**/build/', '**/.svelte-kit/', 'apps/api/src/generated/', 'packages/client/src/openapi.ts', 'tests/shots/', '.data/', '.cache/', '**/*.d.ts', ...workFolders()]),
  js.configs.recommended,
  tseslint.configs.recommended,
  svelte.configs.recommended,
  {
    plugins: { house: { rules: { 'names-say-something': namesSaySomething } } },
    rules: {
      'house/names-say-something': 'error',
      'max-lines': ['error', { max: MOST_LINES }],
      eqeqeq: ['error', 'always', { null: 'ignore' }],
      'no-console': 'error',
      'no-var': 'error',
      'prefer-const': 'error',
      'object-shorthand': 'error',
      'no-restricted-exports': ['error', { restrictDefaultExports: { direct: false } }],
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports', disallowTypeAnnotations: false }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_', caughtErrorsIgnorePattern: '^_' }],
      '@typescript-eslint/no-explicit-any': 'error',
      // Coefficients are copied with all the digits of their source.
      'no-loss-of-precision': 'off',
      // Types of TypeScript and of browsers are checked by tsc.
      'no-undef': 'off',
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: tseslint.parser } },
    // `let { of } = $props()` is the idiom; and the pages are served from the root of their own address, so paths need no resolving.
    rules: { 'prefer-const': 'off', 'svelte/prefer-const': 'error', 'svelte/no-navigation-without-resolve': 'off', 'svelte/prefer-svelte-reactivity': 'off', 'svelte/no-unused-svelte-ignore': 'off' },
  },
  // The command lines, the loader and the benches speak on standard output.
  { files: ['apps/evaluate/**', 'tests/**', 'deploy/**', 'demo-data/**', 'apps/api/src/verify-trail.ts', 'apps/api/src/write-openapi.ts'], rules: { 'no-console': 'off' } },
)

/** Folders of the checkout that belong to no part of the project. */
function workFolders() {
  const ours = new Set(['apps', 'packages', 'demo-data', 'tests', 'deploy', 'prisma', 'docs'])
  return readdirSync(import.meta.dirname, { withFileTypes: true }).filter((entry) => entry.isDirectory() && !ours.has(entry.name)).map(({ name }) => `${name}/`)
}
