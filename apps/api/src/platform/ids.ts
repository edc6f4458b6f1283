import { v7 } from 'uuid'

/** A new identifier: UUID version 7 (RFC 9562), which sorts by time. */
export function newId(): string {
  return v7()
}
