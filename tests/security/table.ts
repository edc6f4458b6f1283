/**
 * Who may do what, typed from the table of the design by hand and from nothing in the code: the test that walks every route
 * compares the service with this.
 */

/** The people of one garage, the chain's owner, a tablet of the garage with its technician signed in and without anybody. */
export type Caller = 'technician' | 'front desk' | 'manager' | 'owner' | 'tablet' | 'tablet alone'

/** One kind of thing that is done. `scope`: the one scope with which an outside app may. */
export type Rule = {
  readonly callers: readonly Caller[]
  readonly scope?: string
  /**
   * What people of another garage find: nothing (404), or the same as the garage's own people. `staff`: people find the same, and
   * what is no staff of the chain (a tablet with nobody signed in, an outside app) finds nothing.
   */
  readonly elsewhere: 'not found' | 'the same' | 'staff'
}

const STAFF = ['technician', 'front desk', 'manager', 'owner'] as const
const DESK = ['front desk', 'manager', 'owner'] as const
const BENCH = ['technician', 'manager', 'owner'] as const

export const RULES = {
  'who I am': { callers: [...STAFF, 'tablet', 'tablet alone'], scope: 'any', elsewhere: 'the same' },
  // "book in, customers, vehicles": technician reads, the others write; a tablet reads its own bay; apps by scope
  'list garages': { callers: [...STAFF, 'tablet', 'tablet alone'], scope: 'jobs:read', elsewhere: 'the same' }, // each his own
  'read the garage': { callers: [...STAFF, 'tablet', 'tablet alone'], scope: 'jobs:read', elsewhere: 'not found' },
  'read the job in the bay': { callers: [...STAFF, 'tablet', 'tablet alone'], scope: 'jobs:read', elsewhere: 'not found' },
  'read jobs': { callers: [...STAFF, 'tablet'], scope: 'jobs:read', elsewhere: 'not found' },
  'read customers of the bay': { callers: [...STAFF, 'tablet'], scope: 'jobs:read', elsewhere: 'not found' },
  'list customers': { callers: STAFF, scope: 'jobs:read', elsewhere: 'not found' },
  'book in': { callers: DESK, scope: 'jobs:write', elsewhere: 'not found' },
  // an engine belongs to no garage: any desk of the chain writes it, everybody of the chain reads it
  'write engines': { callers: DESK, scope: 'jobs:write', elsewhere: 'the same' },
  // the vehicle it goes into or comes out of belongs to a garage
  'fit engines': { callers: DESK, scope: 'jobs:write', elsewhere: 'not found' },
  'read engines': { callers: [...STAFF, 'tablet'], scope: 'engines:read', elsewhere: 'the same' },
  'read trails of jobs': { callers: [...STAFF, 'tablet'], scope: 'engines:read', elsewhere: 'staff' },
  // "sessions, readings, suggestions, findings": the front desk reads; readable by staff of the whole chain
  'read sessions': { callers: [...STAFF, 'tablet', 'tablet alone'], scope: 'engines:read', elsewhere: 'staff' },
  'write sessions': { callers: [...BENCH, 'tablet'], elsewhere: 'not found' },
  'write readings': { callers: [...BENCH, 'tablet'], scope: 'readings:write', elsewhere: 'not found' },
  // a photo may show more than the engine: it stays in its garage, and no outside app gets it
  'read photos': { callers: [...STAFF, 'tablet'], elsewhere: 'not found' },
  'attach photos': { callers: [...BENCH, 'tablet'], elsewhere: 'not found' },
  // a sheet holds what those of the garage may read anyway: job, quote, readings
  'read papers': { callers: [...STAFF, 'tablet'], elsewhere: 'not found' },
  // "quote: draft / send to the manager": a tablet drafts only
  'read quotes': { callers: [...STAFF, 'tablet'], elsewhere: 'not found' },
  'draft quotes': { callers: [...BENCH, 'tablet'], elsewhere: 'not found' },
  'send quotes': { callers: BENCH, elsewhere: 'not found' },
  // "approve, send back, refuse, waive a retest"
  'answer quotes': { callers: ['manager', 'owner'], elsewhere: 'not found' },
  'withdraw approvals': { callers: ['manager', 'owner'], elsewhere: 'not found' },
  'waive retests': { callers: ['manager', 'owner'], elsewhere: 'not found' },
  'record permission': { callers: DESK, elsewhere: 'not found' },
  'repair': { callers: [...BENCH, 'tablet'], elsewhere: 'not found' },
  'hand over': { callers: DESK, elsewhere: 'not found' },
  'cancel': { callers: DESK, elsewhere: 'not found' },
  // "people, tablets, gauges, catalogues, rates, outside apps, audit": the manager reads his own garage, the owner writes
  'read settings': { callers: ['manager', 'owner'], elsewhere: 'not found' },
  'list settings': { callers: ['manager', 'owner'], elsewhere: 'the same' },
  'write settings': { callers: ['owner'], elsewhere: 'not found' },
  'name deputies': { callers: ['manager', 'owner'], elsewhere: 'not found' },
  'read retests': { callers: [...STAFF, 'tablet'], scope: 'jobs:read', elsewhere: 'not found' },
  'book retests': { callers: DESK, scope: 'retests:write', elsewhere: 'not found' },
  'place and parts': { callers: [...STAFF, 'tablet'], elsewhere: 'not found' },
  'evaluate': { callers: [...STAFF, 'tablet'], scope: 'evaluate', elsewhere: 'the same' },
  'hear events': { callers: [...STAFF, 'tablet', 'tablet alone'], scope: 'events:read', elsewhere: 'the same' },
  'report and export': { callers: ['manager', 'owner'], elsewhere: 'not found' },
} as const satisfies Record<string, Rule>

export type RuleName = keyof typeof RULES

/** Every scope that an outside app can have. */
export const SCOPES = ['jobs:read', 'jobs:write', 'engines:read', 'readings:write', 'retests:write', 'evaluate', 'events:read'] as const

/** With the right to write jobs comes that to read them: the answer to a booking is the job. */
export const INCLUDES: Readonly<Record<string, string>> = { 'jobs:write': 'jobs:read' }
