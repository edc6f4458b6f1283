import type { NewPerson, Person, Role } from '@evenbore/contract'
import { parseMoney, typedMoney } from '@evenbore/words/format/money.ts'

export interface RoleForm {
  role: Role
  garage: string
  limit: string
}
/** A person as typed; password and PIN stay empty unless they are changed. */
export interface PersonForm {
  name: string
  email: string
  password: string
  pin: string
  roles: RoleForm[]
}

export function emptyPerson(garage = ''): PersonForm {
  return { name: '', email: '', password: '', pin: '', roles: [{ role: 'technician', garage, limit: '' }] }
}

export function personForm({ name, email, roles }: Person, currency: string): PersonForm {
  return {
    name, email: email ?? '', password: '', pin: '',
    roles: roles.map(({ role, garage, approvalLimitMinor }) => ({ role, garage: garage ?? '', limit: approvalLimitMinor == null ? '' : typedMoney(approvalLimitMinor, currency) })),
  }
}

/** The person as the API takes it; undefined while something cannot be read. */
export function personBody(form: PersonForm, currency: string): NewPerson | undefined {
  const limits = form.roles.map(({ limit }) => (limit.trim() === '' ? null : parseMoney(limit, currency)))
  if (!form.name.trim() || form.roles.length === 0 || limits.includes(undefined)) return undefined
  const { email, password, pin } = form
  return {
    name: form.name.trim(),
    ...(email.trim() ? { email: email.trim() } : {}),
    ...(password ? { password } : {}),
    ...(pin ? { pin } : {}),
    roles: form.roles.map(({ role, garage }, i) => ({ role, garage: role === 'owner' ? null : garage, ...(role === 'manager' ? { approvalLimitMinor: limits[i] ?? null } : {}) })),
  }
}
