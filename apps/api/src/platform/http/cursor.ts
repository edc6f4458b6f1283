import type { z } from 'zod'
import { badField } from '../problems/problem.ts'

/** A page of a list as it goes on the wire. */
export type Page<T> = { readonly items: T[]; readonly next: string | null }

/** A place in an ordered list as opaque text: the sort values of the last record shown. */
export function encodeCursor(values: readonly (string | number)[]): string {
  return Buffer.from(JSON.stringify(values)).toString('base64url')
}

/**
 * Reads a cursor back; `shape` says what its values must be, e.g. `z.tuple([z.iso.datetime(), z.uuid()])`.
 * @throws problem `invalid-request` at /query/after when it is none of ours
 */
export function decodeCursor<T extends z.ZodType>(text: string | undefined, shape: T): z.infer<T> | undefined {
  if (text === undefined) return undefined
  try {
    return shape.parse(JSON.parse(Buffer.from(text, 'base64url').toString('utf8')))
  } catch {
    throw badField('/query/after', 'the `next` of an earlier page of this list', text.slice(0, 80))
  }
}

/**
 * Cuts rows into a page. The store reads one row more than `limit`; where it came, there is a next page.
 * @param cursorOf the sort values of a row, in the list's order
 */
export function toPage<Row, T>(rows: readonly Row[], limit: number, cursorOf: (row: Row) => readonly (string | number)[], show: (row: Row) => T): Page<T> {
  const shown = rows.slice(0, limit)
  const last = shown.at(-1)
  return { items: shown.map(show), next: rows.length > limit && last !== undefined ? encodeCursor(cursorOf(last)) : null }
}
