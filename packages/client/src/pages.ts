/** One page of a list, as the API answers it. */
export interface Page<Item> {
  readonly items: readonly Item[]
  readonly next: string | null
}

/**
 * Every item of a paged list, page by page as it is asked for.
 * @param fetchPage reads the page after a cursor (undefined: the first)
 * @throws what `fetchPage` throws
 * @example for await (const job of pages((after) => jobsOf(garage, after))) console.log(job.code)
 */
export async function* pages<Item>(fetchPage: (after: string | undefined) => Promise<Page<Item>>): AsyncGenerator<Item, void, undefined> {
  let after: string | undefined
  do {
    const page: Page<Item> = await fetchPage(after)
    yield* page.items
    after = page.next ?? undefined
  } while (after !== undefined)
}
