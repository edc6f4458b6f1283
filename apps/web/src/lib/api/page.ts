/** One page of a list, as the API answers it. */
export interface Page<Item> {
  readonly items: Item[]
  readonly next: string | null
}
