/** What the line at the head of the screen says; a page sets it while it is open. */
interface Said {
  readonly code?: string
  readonly title?: string
  readonly subtitle?: string
  /** Where the code leads. */
  readonly href?: string
}

class Heading {
  now = $state.raw<Said>({})
}
export const heading = new Heading()

/** Says what a page is about as long as it is open; called while the page's component starts. */
export function useHeading(said: () => Said): void {
  $effect(() => {
    heading.now = said()
    return () => {
      heading.now = {}
    }
  })
}
