/** Gives an array of so many zeros. */
export type Take = (length: number) => Float64Array

/** A new array each time. */
export const fresh: Take = (length) => new Float64Array(length)

/** Lends arrays and takes them all back at once, so that the same work done again needs no new memory. */
export class Room {
  readonly #lent = new Map<number, { arrays: Float64Array[]; count: number }>()

  readonly take: Take = (length) => {
    let shelf = this.#lent.get(length)
    if (shelf === undefined) this.#lent.set(length, (shelf = { arrays: [], count: 0 }))
    const found = shelf.arrays[shelf.count++]
    if (found !== undefined) return found.fill(0)
    const made = new Float64Array(length)
    shelf.arrays.push(made)
    return made
  }

  /** Nobody may use any longer what was lent. */
  takeBack(): void {
    for (const shelf of this.#lent.values()) shelf.count = 0
  }
}
