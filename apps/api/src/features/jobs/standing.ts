import type { JobState, Standing } from '@evenbore/contract'

/** A quote version as far as it decides where the job stands. Times are milliseconds since 1970, UTC. */
export interface VersionFacts {
  readonly sentAt: number
  readonly totalMinor: number
  /** The manager's latest answer; null while unanswered. */
  readonly answer: 'approved' | 'sent-back' | 'refused' | 'withdrawn' | null
  readonly answeredAt: number | null
  /** The customer's latest word on this version. */
  readonly word: 'given' | 'declined' | null
  readonly wordAt: number | null
  /** The sum that the customer's latest permission on this version covers. */
  readonly givenMinor: number | null
}

/** Everything that decides where a job stands: gathered by `sql/facts.sql`, never stored. Times as in {@link VersionFacts}. */
export interface StandingFacts {
  readonly bookedAt: number
  readonly placedAt: number | null
  readonly inBay: boolean
  readonly promisedAt: number | null
  readonly customer: string
  readonly handedOverAt: number | null
  readonly cancelledAt: number | null
  readonly testingClosedAt: number | null
  readonly firstSessionAt: number | null
  /** When the server heard of the latest session of purpose `test`: testing goes on after it, whatever was closed before. */
  readonly lastTestSessionAt: number | null
  readonly sessionBy: string | null
  readonly draft: boolean
  /** In the order of their numbers. */
  readonly versions: readonly VersionFacts[]
  readonly toleranceBasisPoints: number
  /** The order that arrives last among those still awaited. */
  readonly parts: { readonly orderedAt: number; readonly expectedAt: number | null; readonly text: string } | null
  /** The latest repair. */
  readonly repair: { readonly startedAt: number; readonly finishedAt: number | null; readonly by: string | null } | null
  /** The latest release retest that was decided. */
  readonly release: { readonly outcome: 'passed' | 'failed' | 'waived'; readonly decidedAt: number } | null
  readonly unplaced: boolean
  readonly nextContactAt: number | null
}

/** What the facts say once those that a decided release retest has ended are left out. */
interface Present {
  readonly live: readonly VersionFacts[]
  readonly latest: VersionFacts | undefined
  readonly repair: StandingFacts['repair']
  /** The newest version that both manager and customer agreed to. */
  readonly agreed: VersionFacts | undefined
}

type Beside = Standing['beside'][number]
type Rest = Partial<Pick<Standing, 'waitsFor' | 'waitsOn'>> & { until?: number | null }

/**
 * Where a job stands: the first that fits counts, in the order of the states of `jobStateSchema`. Pure; the one place that says so,
 * used by job, list, floor and search alike.
 */
export function standingOf(facts: StandingFacts): Standing {
  const present = presentOf(facts)
  const { latest, repair, agreed } = present
  const stand = (state: JobState, since: number, rest: Rest = {}): Standing => ({
    state,
    since: new Date(since).toISOString(),
    waitsFor: rest.waitsFor ?? 'technician',
    waitsOn: rest.waitsOn ?? null,
    until: timeOf(rest.until === undefined ? facts.promisedAt : rest.until),
    beside: besideOf(facts, present),
  })
  if (facts.handedOverAt !== null) return stand('handed-over', facts.handedOverAt, { waitsFor: 'nobody', until: null })
  if (facts.cancelledAt !== null) return stand('cancelled', facts.cancelledAt, { waitsFor: 'nobody', until: null })
  const doneAt = completedAt(facts, present)
  if (doneAt !== null && !facts.unplaced) return stand('ready', doneAt, { waitsFor: 'front-desk' })
  if (facts.parts !== null) {
    return stand('waiting-for-parts', facts.parts.orderedAt, { waitsFor: 'parts', waitsOn: facts.parts.text, until: facts.parts.expectedAt })
  }
  if (latest !== undefined && unanswered(latest)) return stand('waiting-for-manager', latest.answeredAt ?? latest.sentAt, { waitsFor: 'manager' })
  if (latest !== undefined && wantsPermission(latest, facts, present)) {
    return stand('waiting-for-customer', latest.answeredAt ?? latest.sentAt, { waitsFor: 'customer', waitsOn: facts.customer, until: facts.nextContactAt ?? facts.promisedAt })
  }
  if (repair?.finishedAt != null) return stand('retest-due', repair.finishedAt)
  if (repair !== null) return stand('in-repair', repair.startedAt, { waitsOn: repair.by })
  if (agreed !== undefined) return stand('approved', Math.max(agreed.answeredAt ?? 0, agreed.wordAt ?? 0))
  if (facts.firstSessionAt !== null || facts.release !== null) return stand('testing', testingSince(facts, latest), { waitsOn: facts.sessionBy })
  if (facts.inBay) return stand('in-bay', facts.placedAt ?? facts.bookedAt)
  return stand('booked', facts.bookedAt)
}

/** What the customer has permitted so far, in minor units; null for nothing. A later permission names the whole sum, so the latest counts. */
export function permittedMinor(facts: Pick<StandingFacts, 'versions'>): number | null {
  return latestPermission(facts.versions)
}

/** A repair was started and its release retest not yet decided: the car cannot leave as it is. */
export function repairUnderWay(facts: StandingFacts): boolean {
  return presentOf(facts).repair !== null
}

/** Place among the versions of the newest one that manager and customer agreed to and that is not used up yet; -1 for none. */
export function agreedVersion(facts: StandingFacts): number {
  const { agreed } = presentOf(facts)
  return agreed === undefined ? -1 : facts.versions.indexOf(agreed)
}

function presentOf(facts: StandingFacts): Present {
  const end = endOf(facts)
  const live = facts.versions.filter(({ sentAt }) => sentAt > end)
  const repair = facts.repair !== null && facts.repair.startedAt > end ? facts.repair : null
  const permitted = latestPermission(live)
  const agreed = live.findLast((version) => version.answer === 'approved' && version.word !== 'declined' && covers(permitted, version, facts))
  return { live, latest: live.at(-1), repair, agreed }
}

/** A decided release retest ends approval, permission and repair: passed or waived they are used up, failed they are void. */
function endOf(facts: Pick<StandingFacts, 'release'>): number {
  return facts.release?.decidedAt ?? -Infinity
}

function latestPermission(versions: readonly VersionFacts[]): number | null {
  let latest: VersionFacts | null = null
  for (const version of versions) if (version.givenMinor !== null && (latest === null || (version.wordAt ?? 0) >= (latest.wordAt ?? 0))) latest = version
  return latest?.givenMinor ?? null
}

/** Does the permitted sum, with the garage's tolerance, cover this version's total? */
function covers(permitted: number | null, version: VersionFacts, facts: StandingFacts): boolean {
  return permitted !== null && version.totalMinor * 10_000 <= permitted * (10_000 + facts.toleranceBasisPoints)
}

/** A withdrawn approval leaves the version as it was sent: without an answer. */
function unanswered(version: VersionFacts): boolean {
  return version.answer === null || version.answer === 'withdrawn'
}

function wantsPermission(latest: VersionFacts, facts: StandingFacts, { live }: Present): boolean {
  return latest.answer === 'approved' && latest.word !== 'declined' && !covers(latestPermission(live), latest, facts)
}

/** When the work was over: release passed or waived, testing closed with nothing found, or the customer declined; null while it is not. */
function completedAt(facts: StandingFacts, { live, latest, repair, agreed }: Present): number | null {
  if (repair !== null || agreed !== undefined) return null
  const later = (at: number): boolean => (facts.lastTestSessionAt ?? 0) > at || (latest?.sentAt ?? 0) > at
  if (latest?.word === 'declined' && latest.wordAt !== null && !later(latest.wordAt)) return latest.wordAt
  if (facts.testingClosedAt !== null && facts.testingClosedAt > endOf(facts) && !later(facts.testingClosedAt)) return facts.testingClosedAt
  if (facts.release !== null && facts.release.outcome !== 'failed' && live.length === 0) return facts.release.decidedAt
  return null
}

function testingSince(facts: StandingFacts, latest: VersionFacts | undefined): number {
  const closed = Math.max(facts.testingClosedAt ?? 0, latest?.word === 'declined' ? (latest.wordAt ?? 0) : 0)
  const again = closed > 0 && (facts.lastTestSessionAt ?? 0) > closed ? facts.lastTestSessionAt : null
  const answered = latest?.answer === 'sent-back' || latest?.answer === 'refused' ? latest.answeredAt : null
  return Math.max(facts.firstSessionAt ?? 0, again ?? 0, answered ?? 0, facts.release?.decidedAt ?? 0)
}

function besideOf(facts: StandingFacts, present: Present): Beside[] {
  const { latest } = present
  const beside: Beside[] = []
  if (facts.draft) beside.push('draft')
  if (latest !== undefined && unanswered(latest)) beside.push('sent')
  if (latest?.answer === 'sent-back' || latest?.answer === 'refused') beside.push(latest.answer)
  if (latest?.word === 'declined') beside.push('declined')
  if (facts.testingClosedAt !== null && facts.testingClosedAt >= (facts.lastTestSessionAt ?? 0) && facts.testingClosedAt > endOf(facts)) beside.push('nothing-found')
  if (facts.release !== null) beside.push(`release-${facts.release.outcome}`)
  if (facts.unplaced) beside.push('unplaced-readings')
  if (latest !== undefined && wantsPermission(latest, facts, present) && latestPermission(present.live) !== null) beside.push('excess-needs-permission')
  return beside
}

function timeOf(at: number | null): string | null {
  return at === null ? null : new Date(at).toISOString()
}
