import type { Database } from '../platform/database/database.ts'
import { newId } from '../platform/ids.ts'
import { keyHash, newEnrolmentCode, normalCode } from './secrets.ts'

/** True while a tablet's one-time code waits to be typed. */
export async function isUnusedCode(database: Database, code: string): Promise<boolean> {
  return (await database.prisma.tablet.count({ where: { enrolmentCodeHash: keyHash(normalCode(code)), revokedAt: null, enrolmentExpiresAt: { gt: new Date() } } })) > 0
}

/** A further demo tablet for a bay whose tablet has been enrolled; the enrolled one goes on. */
export async function replaceUsedCode(database: Database, bay: string): Promise<{ readonly bay: string; readonly enrolmentCode: string }> {
  const code = newEnrolmentCode()
  const { garageId, name } = await database.prisma.bay.findUniqueOrThrow({ where: { id: bay } })
  const enrolmentExpiresAt = new Date(Date.now() + 365 * 86_400_000)
  await database.prisma.tablet.create({ data: { id: newId(), garageId, bayId: bay, name: `Tablet for ${name}`, enrolmentCodeHash: keyHash(normalCode(code)), enrolmentExpiresAt } })
  return { bay, enrolmentCode: code }
}
