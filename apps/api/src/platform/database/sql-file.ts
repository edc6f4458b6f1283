import { readFileSync } from 'node:fs'
import type { Statement } from './database.ts'

/**
 * A statement from its own file, read once at the start: `sqlFile('keep-reading', new URL('./sql/keep-reading.sql', import.meta.url))`.
 * The name is what PostgreSQL knows the prepared statement by, so each must be used once only.
 */
export function sqlFile(name: string, file: URL): Statement {
  return { name, text: readFileSync(file, 'utf8') }
}
