import type { Problem } from '@evenbore/contract'

/** The data of a call that must succeed; a refusal stops the load with the problem's own words. */
export async function need<T>(call: Promise<{ data?: T; error?: unknown; response: Response }>): Promise<T> {
  const { data, error, response } = await call
  if (error === undefined) return data as T
  const problem = error as Partial<Problem>
  const fields = problem.errors?.map((field) => `${field.path}: expected ${field.expected}`).join('; ')
  throw new Error(`${response.status} at ${new URL(response.url).pathname}: ${problem.title ?? 'refused'}${problem.detail ? `. ${problem.detail}` : ''}${fields ? ` (${fields})` : ''}`)
}
