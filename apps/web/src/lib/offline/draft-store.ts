import { database } from './database.ts'

/** Half-entered things of the bench, e.g. the digits typed so far: kept at each key, so that a killed tab or a locked screen loses nothing. */
export async function putDraft(key: string, value: unknown): Promise<void> {
  try {
    const db = await database()
    if (value === undefined) await db.delete('drafts', key)
    else await db.put('drafts', { key, value: JSON.parse(JSON.stringify(value)) as unknown })
  } catch {
    // refused storage: kept on the screen only
  }
}

/** What was half-entered under this key, or undefined. */
export async function getDraft<T>(key: string): Promise<T | undefined> {
  try {
    return (await (await database()).get('drafts', key))?.value as T | undefined
  } catch {
    return undefined
  }
}
