/** A problem document (RFC 9457) as a screen shows it; status 0 means that no answer came. */
export interface Refusal {
  readonly status: number
  readonly type?: string
  readonly title?: string
  readonly detail?: string
  readonly errors?: readonly { readonly path: string; readonly expected: string; readonly got?: string }[]
}

/** What a refused field was told, by its JSON Pointer, for the line under that field. */
export function errorAt(problem: Refusal | undefined, path: string): string | undefined {
  return problem?.errors?.find((error) => error.path === path)?.expected
}
