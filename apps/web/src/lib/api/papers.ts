import { asRefusal, type Answer } from './answer.ts'
import { client } from './client.ts'

/** Sheets that the server makes as PDF. */
export type PaperKind = 'test-record' | 'quote' | 'release'

/** A sheet of a job as PDF, in a language. */
export async function fetchPaper(job: string, kind: PaperKind, language: string): Promise<Answer<Blob>> {
  try {
    const response = await client.send(new Request(new URL(`/v1/jobs/${job}/${kind}.pdf?language=${language}`, location.origin), { credentials: 'same-origin' }))
    if (response.ok) return { value: await response.blob(), etag: undefined }
    return { refusal: asRefusal(await response.json().catch(() => undefined), response.status) }
  } catch {
    return { refusal: { status: 0 } }
  }
}
