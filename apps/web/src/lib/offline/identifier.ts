import { v7 } from 'uuid'

/** A record's id made on this device: UUID version 7, so that the order of making shows in it. */
export function newId(): string {
  return v7()
}
