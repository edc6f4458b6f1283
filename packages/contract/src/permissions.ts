import type { Role, Scope } from './access.ts'

/** Who acts: a person, a tablet (with the person signed in on it, if any), or an outside app. */
export type Actor =
  | { readonly kind: 'person'; readonly person: string; readonly roles: readonly HeldRole[]; readonly deputyFor: readonly Deputising[] }
  | { readonly kind: 'tablet'; readonly tablet: string; readonly garage: string; readonly bay: string; readonly person: string | null; readonly roles: readonly HeldRole[] }
  | { readonly kind: 'app'; readonly app: string; readonly scopes: readonly Scope[]; readonly garages: readonly string[] }
/** `garage` null: every garage (owners). `limitMinor`: the total with tax that a manager may approve; null: none of his own. */
export interface HeldRole { readonly garage: string | null; readonly role: Role; readonly limitMinor?: number | null }
/** Standing in for a manager, today, in one garage, within that manager's limit. */
export interface Deputising { readonly manager: string; readonly garage: string; readonly limitMinor: number | null }

/** What is acted on. Fields that an action does not ask for are left out. */
export interface Subject {
  /** Garage of the record; null or absent: a record of the whole chain (engines, sessions, readings, findings, trails). */
  readonly garage?: string | null
  /** Bay the job stands in: what a tablet without a person, and a customer's record on a tablet, is asked for. */
  readonly bay?: string | null
  /** Author of a quote, or the manager whose deputy or approval is meant. */
  readonly author?: string | null
  readonly totalMinor?: number
  /** The author is the only owner and no manager could answer: he may, with a reason. */
  readonly loneOwner?: boolean
  /** Outside apps the session was opened for. */
  readonly apps?: readonly string[]
}

type Cell = 'own-garage' | 'chain' | 'own' | 'any'
interface Row { readonly roles: Partial<Record<Role, Cell>>; readonly tablet?: 'garage' | 'own-bay' | 'chain'; readonly tabletAlone?: true; readonly scope?: Scope; readonly namedApp?: true }

const STAFF = { technician: 'own-garage', 'front-desk': 'own-garage', manager: 'own-garage', owner: 'any' } as const
const CHAIN = { technician: 'chain', 'front-desk': 'chain', manager: 'chain', owner: 'any' } as const
const DESK = { 'front-desk': 'own-garage', manager: 'own-garage', owner: 'any' } as const
const BENCH = { technician: 'own-garage', manager: 'own-garage', owner: 'any' } as const
const OFFICE = { manager: 'own-garage', owner: 'any' } as const
const OWNER = { owner: 'any' } as const

/** The one table. An action that does not stand here is refused. */
export const PERMISSIONS = {
  'garages.read': { roles: STAFF, tablet: 'garage', tabletAlone: true, scope: 'jobs:read' },
  'jobs.read': { roles: STAFF, tablet: 'garage', tabletAlone: true, scope: 'jobs:read' },
  'jobs.write': { roles: DESK, scope: 'jobs:write' },
  'jobs.place': { roles: STAFF, tablet: 'garage' },
  'jobs.cancel': { roles: DESK },
  'jobs.hand-over': { roles: DESK },
  'jobs.note': { roles: STAFF, tablet: 'garage' },
  'customers.read': { roles: STAFF, tablet: 'own-bay', scope: 'jobs:read' },
  'customers.write': { roles: DESK, scope: 'jobs:write' },
  'vehicles.read': { roles: STAFF, tablet: 'own-bay', tabletAlone: true, scope: 'jobs:read' },
  'vehicles.write': { roles: DESK, scope: 'jobs:write' },
  'engines.read': { roles: CHAIN, tablet: 'chain', scope: 'engines:read' },
  'engines.write': { roles: DESK, scope: 'jobs:write' },
  'trail.read': { roles: CHAIN, tablet: 'chain', scope: 'engines:read' },
  'sessions.read': { roles: CHAIN, tablet: 'chain', tabletAlone: true, scope: 'engines:read' },
  'sessions.write': { roles: BENCH, tablet: 'garage' },
  'readings.write': { roles: BENCH, tablet: 'garage', scope: 'readings:write', namedApp: true },
  'photos.read': { roles: STAFF, tablet: 'garage' },
  'photos.write': { roles: BENCH, tablet: 'garage' },
  'papers.read': { roles: STAFF, tablet: 'garage' },
  'suggestions.decide': { roles: BENCH, tablet: 'garage' },
  'findings.write': { roles: BENCH, tablet: 'garage' },
  'retests.decide': { roles: BENCH, tablet: 'garage' },
  'quotes.read': { roles: STAFF, tablet: 'garage' },
  'quotes.draft': { roles: BENCH, tablet: 'garage' },
  'quotes.send': { roles: BENCH },
  'quotes.answer': { roles: OFFICE },
  'approvals.withdraw': { roles: { manager: 'own', owner: 'any' } },
  'retests.waive': { roles: OFFICE },
  'authorisations.write': { roles: DESK },
  'repairs.write': { roles: BENCH, tablet: 'garage' },
  'parts.write': { roles: STAFF, tablet: 'garage' },
  'retests.read': { roles: STAFF, tablet: 'garage', scope: 'jobs:read' },
  'retests.write': { roles: DESK, scope: 'retests:write' },
  'evaluate': { roles: CHAIN, tablet: 'chain', scope: 'evaluate' },
  'events.read': { roles: STAFF, tablet: 'garage', tabletAlone: true, scope: 'events:read' },
  'settings.read': { roles: OFFICE },
  'settings.write': { roles: OWNER },
  'deputies.write': { roles: { manager: 'own', owner: 'any' } },
  'reports.read': { roles: OFFICE },
  'export': { roles: OFFICE },
  'me': { roles: CHAIN, tablet: 'chain', tabletAlone: true, scope: undefined },
} as const satisfies Record<string, Row>

export type Action = keyof typeof PERMISSIONS

/** Why an actor may not: `not-found` where he may not even know of the record. */
export type Refusal = 'not-found' | 'not-allowed' | 'own-quote' | 'above-limit'

/** May `actor` do `action` to `subject`? Pure; nothing named means refused. */
export function may(actor: Actor, action: Action, subject: Subject = {}): boolean {
  return whyNot(actor, action, subject) === null
}

/**
 * The reason for a refusal, or null where the action is allowed.
 * Another garage's record is `not-found`, so that its existence is not told.
 */
export function whyNot(actor: Actor, action: Action, subject: Subject = {}): Refusal | null {
  const row: Row = PERMISSIONS[action]
  if (actor.kind === 'app') return appRefusal(actor, row, subject, action)
  if (actor.kind === 'tablet') return tabletRefusal(actor, row, subject)
  return personRefusal(actor, action, row, subject)
}

function personRefusal(actor: Extract<Actor, { kind: 'person' }>, action: Action, row: Row, subject: Subject): Refusal | null {
  const here = actor.roles.filter((held) => held.garage === null || subject.garage == null || held.garage === subject.garage)
  const chainWide = Object.values(row.roles).includes('chain')
  const candidates = chainWide ? actor.roles : here
  if (candidates.length === 0) return actor.roles.length === 0 ? 'not-allowed' : 'not-found'
  if (action === 'quotes.answer') return answerRefusal(actor, here, subject)
  for (const held of candidates) {
    const cell = row.roles[held.role]
    if (!cell) continue
    if (cell === 'own' && subject.author != null && subject.author !== actor.person) continue
    return null
  }
  return 'not-allowed'
}

/** Approve, send back, refuse: never one's own (a lone owner excepted), and within the limit. */
function answerRefusal(actor: Extract<Actor, { kind: 'person' }>, here: readonly HeldRole[], subject: Subject): Refusal | null {
  const total = subject.totalMinor ?? 0
  const own = subject.author != null && subject.author === actor.person
  let refusal: Refusal = 'not-allowed'
  const offer = (next: Refusal | null): boolean => {
    if (next === null) return true
    refusal = next
    return false
  }
  for (const held of here) {
    if (held.role === 'owner' && offer(own && !subject.loneOwner ? 'own-quote' : null)) return null
    if (held.role === 'manager' && offer(own ? 'own-quote' : total > (held.limitMinor ?? 0) ? 'above-limit' : null)) return null
  }
  for (const standIn of actor.deputyFor) {
    if (subject.garage != null && standIn.garage !== subject.garage) continue
    const principalsOwn = subject.author === standIn.manager
    if (offer(own || principalsOwn ? 'own-quote' : total > (standIn.limitMinor ?? 0) ? 'above-limit' : null)) return null
  }
  return refusal
}

/** A tablet with somebody signed in does bay work in its garage and nothing else, as far as he may himself; alone it reads its bay's job. */
function tabletRefusal(actor: Extract<Actor, { kind: 'tablet' }>, row: Row, subject: Subject): Refusal | null {
  const elsewhere = subject.garage != null && subject.garage !== actor.garage
  if (elsewhere && row.tablet !== 'chain') return 'not-found'
  if (!row.tablet) return 'not-allowed'
  const ownBay = subject.bay != null && subject.bay === actor.bay
  if (actor.person === null) return row.tabletAlone ? (subject.bay === undefined || ownBay ? null : 'not-found') : 'not-allowed'
  if (row.tablet === 'own-bay' && subject.bay !== undefined && !ownBay) return 'not-found'
  // rights that were withdrawn since he took it over are gone at once
  const may = actor.roles.some((held) => row.roles[held.role] && (row.tablet === 'chain' || held.garage === null || held.garage === actor.garage))
  return may ? null : 'not-allowed'
}

function appRefusal(actor: Extract<Actor, { kind: 'app' }>, row: Row, subject: Subject, action: Action): Refusal | null {
  if (action === 'me') return null
  if (!row.scope || !actor.scopes.includes(row.scope)) return 'not-allowed'
  if (subject.garage != null && actor.garages.length > 0 && !actor.garages.includes(subject.garage)) return 'not-found'
  if (row.namedApp && subject.apps !== undefined && !subject.apps.includes(actor.app)) return 'not-allowed'
  return null
}
