import { createHash, randomUUID } from 'node:crypto'
import { mkdir, open, readdir, readFile, rename, rm } from 'node:fs/promises'
import { join } from 'node:path'

const NAME = /^[0-9a-f]{64}$/

/**
 * Files outside the database, each named by the SHA-256 of its content: the same content is kept once, a name can lead nowhere but to its
 * own content, and what was kept never changes. The folder is not below anything that is served.
 */
export type KeptFiles = {
  /** Keeps a content and answers its name once it is on the disk. */
  readonly keep: (content: Uint8Array) => Promise<string>
  /** The content of a name; undefined where the file is missing or no longer what its name says. */
  readonly read: (name: string) => Promise<Buffer | undefined>
  /** Names of all that is kept. */
  readonly names: () => Promise<string[]>
}

/** The files of a folder, which is made when the first one is kept. */
export function keptFiles(folder: string): KeptFiles {
  const placeOf = (name: string) => join(folder, name.slice(0, 2))

  async function read(name: string): Promise<Buffer | undefined> {
    if (!NAME.test(name)) return undefined
    const content = await readFile(join(placeOf(name), name)).catch(unlessMissing)
    return content !== undefined && sha256(content) === name ? content : undefined
  }

  async function keep(content: Uint8Array): Promise<string> {
    const name = sha256(content)
    if ((await read(name)) !== undefined) return name
    const place = placeOf(name)
    await mkdir(place, { recursive: true, mode: 0o700 })
    // Under another name until it is whole and on the disk: nobody ever sees half a file.
    const unfinished = join(place, `${randomUUID()}.part`)
    try {
      const file = await open(unfinished, 'wx', 0o600)
      try {
        await file.writeFile(content)
        await file.sync()
      } finally {
        await file.close()
      }
      await rename(unfinished, join(place, name))
    } catch (error) {
      await rm(unfinished, { force: true })
      throw error
    }
    await syncFolder(place)
    return name
  }

  async function names(): Promise<string[]> {
    const places = (await readdir(folder).catch(unlessMissing)) ?? []
    const lists = await Promise.all(places.map(async (place) => (await readdir(join(folder, place)).catch(() => undefined)) ?? []))
    return lists.flat().filter((name) => NAME.test(name)).sort()
  }

  return { keep, read, names }
}

/** A new name is on the disk only when its folder is. */
async function syncFolder(folder: string): Promise<void> {
  // Windows opens no folders, and needs none of this.
  const handle = await open(folder, 'r').catch(() => undefined)
  await handle?.sync().catch(() => undefined)
  await handle?.close()
}

function sha256(content: Uint8Array): string {
  return createHash('sha256').update(content).digest('hex')
}

function unlessMissing(error: NodeJS.ErrnoException): undefined {
  if (error.code === 'ENOENT') return undefined
  throw error
}
