import type { Database } from '../platform/database/database.ts'
import { newId } from '../platform/ids.ts'
import { keyHash, newEnrolmentCode, normalCode } from './secrets.ts'

// Like the keys not through Prisma, since every start of a demo asks.
const UNUSED = { name: 'unused-code', text: 'SELECT 1 FROM tablet WHERE enrolment_code_hash = $1 AND revoked_at IS NULL AND enrolment_expires_at > now()' }

/** True while a tablet's one-time code waits to be typed. */
export async function isUnusedCode(database: Database, code: string): Promise<boolean> {
  return (await database.run(UNUSED, [keyHash(normalCode(code))])).length > 0
}

/** A further demo tablet for a bay whose tablet has been enrolled; the enrolled one goes on. */
export async function replaceUsedCode(database: Database, bay: string): Promise<{ readonly bay: string; readonly enrolmentCode: string }> {
  const code = newEnrolmentCode()
  const { garageId, name } = await database.prisma.bay.findUniqueOrThrow({ where: { id: bay } })
  const enrolmentExpiresAt = new Date(Date.now() + 365 * 86_400_000)
  await database.prisma.tablet.create({ data: { id: newId(), garageId, bayId: bay, name: `Tablet for ${name}`, enrolmentCodeHash: keyHash(normalCode(code)), enrolmentExpiresAt } })
  return { bay, enrolmentCode: code }
}
