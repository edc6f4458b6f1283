import { database } from './database.ts'

/** What is typed is stored once the digit is on the screen: storing takes longer than showing. */
const AFTER_SHOWN_MS = 40

const waiting = new Map<string, unknown>()
let timer: ReturnType<typeof setTimeout> | undefined

/** Half-entered things of the bench, e.g. the digits typed so far: kept at each key, so that a killed tab or a locked screen loses nothing. */
export function putDraft(key: string, value: unknown): void {
  waiting.set(key, value)
  timer ??= setTimeout(() => void store(), AFTER_SHOWN_MS)
}

/** What was half-entered under this key, or undefined. */
export async function getDraft<T>(key: string): Promise<T | undefined> {
  if (waiting.has(key)) return waiting.get(key) as T | undefined
  try {
    return (await (await database()).get('drafts', key))?.value as T | undefined
  } catch {
    return undefined
  }
}

async function store(): Promise<void> {
  clearTimeout(timer)
  timer = undefined
  const now = [...waiting]
  waiting.clear()
  try {
    const db = await database()
    for (const [key, value] of now) {
      if (value === undefined) await db.delete('drafts', key)
      else await db.put('drafts', { key, value: JSON.parse(JSON.stringify(value)) as unknown })
    }
  } catch {
    // refused storage: kept on the screen only
  }
}

// a page that is left, locked or put aside may not come back
if (typeof document !== 'undefined') document.addEventListener('visibilitychange', () => void (waiting.size > 0 && store()))
