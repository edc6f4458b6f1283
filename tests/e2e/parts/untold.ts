import type { Page } from 'playwright-core'

/** What a screen reader is not told on a page, or not yet: parts of a screen come one by one. */
export async function untold(page: Page, promised: readonly RegExp[]): Promise<RegExp[]> {
  const told = await page.locator('body').ariaSnapshot()
  return promised.filter((part) => !part.test(told))
}
