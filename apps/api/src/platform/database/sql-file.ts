import { readFileSync } from 'node:fs'

/**
 * A statement kept in a file of its own beside its store: `sqlFile(import.meta.url, './sql/floor.sql')`.
 * Read once, when the module is loaded; a line `--name` is replaced by the text that `parts` holds under that name.
 */
export function sqlFile(base: string, path: string, parts: Readonly<Record<string, string>> = {}): string {
  return readFileSync(new URL(path, base), 'utf8').replace(/^ *--(\w+)$/gm, (line, name: string) => parts[name] ?? line)
}

/** A pattern for LIKE that finds `text` anywhere; its own signs for "anything" are taken as they stand. */
export function anywhere(text: string): string {
  return `%${text.replace(/[\\%_]/g, '\\$&')}%`
}
