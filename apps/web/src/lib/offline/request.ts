import { transport } from '@evenbore/client'
import { asRefusal, type Answer } from '#lib/api/answer.ts'
import { client } from '#lib/api/client.ts'
import { contact } from './contact.svelte.ts'

/** One attempt and no waiting: the outbox and the kept answers have their own patience, and a bay without network must not wait for it. */
const send = transport({ tokens: client.session, patience: { attempts: 1, longestWaitMs: 0 } })

/** A request to /v1 with the sign-in of this page. Never throws for what the network did: a refusal with status 0 means that no answer came. */
export async function request<Value>(method: string, path: string, body?: unknown, options: { readonly timeoutMs?: number; readonly headers?: Readonly<Record<string, string>> } = {}): Promise<Answer<Value>> {
  const url = new URL(path, location.origin)
  const headers: Record<string, string> = { accept: 'application/json', ...options.headers }
  if (body !== undefined) headers['content-type'] = 'application/json'
  try {
    const sentAt = Date.now()
    const response = await send(
      new Request(url, { method, headers, body: body === undefined ? null : JSON.stringify(body), signal: AbortSignal.timeout(options.timeoutMs ?? 20_000), credentials: 'same-origin' }),
    )
    contact.heard(response, sentAt)
    const json: unknown = response.headers.get('content-type')?.includes('json') ? await response.json() : undefined
    if (!response.ok) return { refusal: asRefusal(json, response.status) }
    return { value: json as Value, etag: response.headers.get('etag') ?? undefined }
  } catch {
    contact.lost()
    return { refusal: { status: 0 } }
  }
}
