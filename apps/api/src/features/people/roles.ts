import type { RoleHeld } from '@evenbore/contract'
import type { Transaction } from '../../platform/database/database.ts'
import { badField } from '../../platform/problems/problem.ts'
import { knownGarages } from './store.ts'

/**
 * Roles as they may be held: an owner's in every garage, every other in one that exists, each once, a limit only a manager's.
 * @throws problem `invalid-request` at the role's place
 */
export async function demandRoles(tx: Transaction, roles: readonly RoleHeld[]): Promise<void> {
  const garages = await knownGarages(tx, roles.flatMap(({ garage }) => (garage === null ? [] : [garage])))
  const seen = new Set<string>()
  roles.forEach(({ garage, role, approvalLimitMinor }, at) => {
    const path = `/roles/${at}`
    if (role === 'owner' && garage !== null) throw badField(`${path}/garage`, 'null: an owner holds the role in every garage', garage)
    if (role !== 'owner' && (garage === null || !garages.has(garage))) throw badField(`${path}/garage`, 'a garage of the chain', String(garage))
    if (role !== 'manager' && approvalLimitMinor != null) throw badField(`${path}/approvalLimitMinor`, 'no limit: only a manager approves within one', String(approvalLimitMinor))
    const key = `${garage}:${role}`
    if (seen.has(key)) throw badField(path, 'each role once in a garage', role)
    seen.add(key)
  })
}
