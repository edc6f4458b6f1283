import type { DemoPerson } from './types.ts'

/** Invented people. Passwords and PINs are made at random for each install. */
export const OWNER: DemoPerson = { name: 'Ruth Ashgrove', email: 'ruth@evenbore.example', hasPin: true, roles: [{ garage: null, role: 'owner' }] }

export const PEOPLE: readonly DemoPerson[] = [
  { name: 'Petra Underhay', email: 'petra@evenbore.example', hasPin: true, roles: [{ garage: 'mill', role: 'manager', approvalLimitMinor: 200_000 }] },
  { name: 'Ines Fallowfield', email: 'ines@evenbore.example', hasPin: true, roles: [{ garage: 'mill', role: 'technician' }] },
  { name: 'Tomas Quillby', email: 'tomas@evenbore.example', hasPin: true, roles: [{ garage: 'mill', role: 'technician' }, { garage: 'harbour', role: 'technician' }] },
  { name: 'Milo Tarnwick', email: 'milo@evenbore.example', hasPin: false, roles: [{ garage: 'mill', role: 'front-desk' }] },
  { name: 'Sana Brackwater', email: 'sana@evenbore.example', hasPin: false, roles: [{ garage: 'harbour', role: 'manager', approvalLimitMinor: 250_000 }] },
  { name: 'Jonas Eldermoor', email: 'jonas@evenbore.example', hasPin: true, roles: [{ garage: 'harbour', role: 'technician' }] },
  { name: 'Wilma Ostrey', email: 'wilma@evenbore.example', hasPin: false, roles: [{ garage: 'harbour', role: 'front-desk' }] },
  { name: 'Greta Holmward', email: 'greta@evenbore.example', hasPin: true, roles: [{ garage: 'tannery', role: 'manager', approvalLimitMinor: 120_000 }, { garage: 'tannery', role: 'front-desk' }] },
  { name: 'Anton Lindgrove', email: 'anton@evenbore.example', hasPin: true, roles: [{ garage: 'tannery', role: 'technician' }] },
  { name: 'Edda Pennycote', email: null, hasPin: true, roles: [{ garage: 'tannery', role: 'technician' }] },
]

/** Another program that reads where jobs stand and posts readings from an instrument. */
export const APPS = [
  { name: 'Counter display', scopes: ['jobs:read', 'events:read'] },
  { name: 'Bench recorder', scopes: ['jobs:read', 'engines:read', 'readings:write', 'evaluate'] },
] as const
