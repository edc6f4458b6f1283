import type { Conditions, EnteredReading, GarageGauge, Job, NewSession, ReadingPut, Session, SessionPurpose, StoredReading, Suggestion } from '@evenbore/contract'
import { gathered } from '#lib/api/gathered.ts'
import { keptParts } from '#lib/api/kept-parts.ts'
import { caseOf } from '#lib/evaluate/case-of.ts'
import { Evaluator } from '#lib/evaluate/evaluator.svelte.ts'
import { contact } from '#lib/offline/contact.svelte.ts'
import { newId } from '#lib/offline/identifier.ts'
import { getKept, keep, recall } from '#lib/offline/kept.ts'
import { outbox } from '#lib/offline/outbox.svelte.ts'
import { photoPath } from '#lib/offline/outbox-photos.ts'
import { currentReadings, doubles, overlay, type BenchSession, type LocalNames } from '#lib/offline/overlay.ts'
import { signedIn } from '#lib/signed-in/signed-in.svelte.ts'
import { present } from '#lib/offline/present.svelte.ts'
import type { Refusal } from '#lib/ui/refusal.ts'
import { whenIdle } from '#lib/ui/when-idle.ts'

interface List<Item> {
  readonly items: readonly Item[]
}

/** What the next session will be opened with. */
export interface Setup {
  readonly conditions: Conditions
  readonly gauge: string | null
  readonly tester: string | null
}

const LAST_SETUP = 'last-setup'
const ANSWERED = 'answered-doubles'

/**
 * One job at the bench, with or without network: what the server has, what waits in the outbox, and what the diagnosis makes of both.
 * Every change goes through the outbox; nothing here waits for an answer.
 */
export class Bench {
  readonly jobId: string
  job = $state.raw<Job | undefined>(undefined)
  gauges = $state.raw<readonly GarageGauge[]>([])
  refusal = $state.raw<Refusal | undefined>(undefined)
  /** Set when the job comes from this tablet's store. */
  keptAt = $state<number | undefined>(undefined)
  lastSetup = $state.raw<Setup | undefined>(undefined)
  readonly evaluator = new Evaluator()
  #served = $state.raw<readonly Session[]>([])
  #answered = $state.raw<ReadonlySet<string>>(new Set())

  readonly #names = $derived<LocalNames>({
    engine: this.job?.engine ?? '',
    person: present.now ? { id: present.now.id, name: present.now.name } : null,
    gauges: new Map(this.gauges.map((gauge) => [gauge.id, gauge])),
  })
  /** Every session of the job, oldest first, with what waits laid over. */
  readonly sessions = $derived<BenchSession[]>(overlay(this.#served, outbox.entries.filter((entry) => entry.job === this.jobId), this.#names))
  /** What a session opened now is for: a repaired engine is retested, all else is tested. */
  readonly purpose = $derived<SessionPurpose>(this.job?.standing.state === 'retest-due' ? 'release' : 'test')
  readonly session = $derived(this.sessions.findLast((session) => session.closedAt === null && session.purpose === this.purpose))
  readonly readings = $derived<StoredReading[]>(this.session ? currentReadings(this.session) : [])
  readonly #inQuestion = $derived(this.sessions.filter((session) => session.purpose === this.purpose))
  /** Every session of this purpose: what the verdict weighs. */
  readonly caseOf = $derived(this.job ? caseOf(this.job.engineRecord, this.#inQuestion) : undefined)
  /** The verdict page may be asked for the open session alone, where the model judges another one. */
  alone = $state(false)
  /** The open session alone: what the sentence beside the pad speaks of. */
  readonly caseOfSession = $derived(this.job && this.session ? caseOf(this.job.engineRecord, [this.session]) : undefined)
  readonly doubles = $derived(this.session ? doubles(this.session, this.#answered) : [])
  /** Readings of this job that the server keeps until somebody places them, or that it refused. */
  readonly unsettled = $derived(outbox.conflicts.filter((entry) => entry.job === this.jobId))

  constructor(job: string) {
    this.jobId = job
  }

  /** Shows what is kept at once, and asks the server once that stands. */
  async open(): Promise<void> {
    await outbox.start()
    const [job, sessions, setup, answered] = await Promise.all([
      recall<Job>(`/v1/jobs/${this.jobId}`),
      recall<List<Session>>(`/v1/jobs/${this.jobId}/sessions`),
      recall<Setup>(LAST_SETUP),
      recall<string[]>(ANSWERED),
    ])
    if (job) this.job = job.value
    if (sessions) this.#served = sessions.value.items
    this.lastSetup = setup?.value
    this.#answered = new Set(answered?.value ?? [])
    if (job) void this.#recallGauges(job.value.garage)
    await signedIn.start()
    // a session is open and the hand at its keys: answers drawn in between would make it wait
    if (this.session) await new Promise<void>(whenIdle)
    await this.refresh()
  }

  /** Asks the server for job, sessions and gauges; without network what is kept stays. */
  async refresh(): Promise<void> {
    await Promise.all([this.#refreshJob(), this.refreshSessions()])
  }

  readonly #refreshJob = gathered(async () => {
    const job = await getKept<Job>(`/v1/jobs/${this.jobId}`)
    this.refusal = job.refusal
    if (job.refusal !== undefined) return
    this.job = keptParts(this.job, job.value)
    this.keptAt = job.keptAt
    await this.#openGauges(job.value.garage)
  })

  /** Sessions alone: after something was sent, or a live event told of another's reading. An older list never takes the place of a newer one. */
  readonly refreshSessions = gathered(async () => {
    const sessions = await getKept<List<Session>>(`/v1/jobs/${this.jobId}/sessions`)
    if (sessions.refusal === undefined) this.#serve(sessions.value.items)
  })

  /** Opens a session; conditions and instruments of an open one never change, another one is opened instead. */
  async begin(setup: Setup): Promise<void> {
    const body: Omit<NewSession, 'apps'> = { id: newId(), purpose: this.purpose, conditions: setup.conditions, gauge: setup.gauge, tester: setup.tester, openedAt: new Date().toISOString() }
    this.lastSetup = setup
    await keep(LAST_SETUP, setup)
    await this.#add({ kind: 'session', method: 'POST', path: `/v1/jobs/${this.jobId}/sessions`, body, id: body.id!, session: body.id, says: '' })
  }

  /** Keeps a reading in the open session, or in place of another one with a reason. Returns its id. */
  async record(reading: EnteredReading, says: string, correction?: { readonly replaces: string; readonly reason: string; readonly session?: string }): Promise<string | undefined> {
    const session = correction?.session ?? this.session?.id
    if (!session) return undefined
    const entry = await this.#putReading(session, { reading, ...this.#taken(), ...(correction ? { replaces: correction.replaces, reason: correction.reason } : {}) }, says)
    return entry.id
  }

  /** Takes a reading back: dropped when it never left this tablet, else withdrawn with the reason. */
  async withdraw(stored: Pick<StoredReading, 'id' | 'session'>, reason: string, says: string): Promise<void> {
    if (await outbox.takeBack(stored.id)) return
    await this.#putReading(stored.session, { ...this.#taken(), replaces: stored.id, withdrawn: true, reason }, says)
  }

  /** Attaches a photo to a reading: the picture is stored here first, and sent after its reading. */
  async attach(reading: string, picture: Blob, says: string): Promise<void> {
    const id = newId()
    const { storePicture } = await import('#lib/offline/photo-store.ts')
    await storePicture(id, picture)
    await this.#add({ kind: 'photo', method: 'PUT', path: photoPath(reading, id), body: this.#taken(), id, session: undefined, reading, says })
  }

  /** Takes a photo back: dropped when it never left this tablet, else withdrawn with the reason. */
  async withdrawPhoto(photo: string, reason: string, says: string): Promise<void> {
    if (await outbox.takeBack(photo)) return
    await this.#add({ kind: 'photo-withdrawn', method: 'POST', path: `/v1/photos/${photo}/withdrawal`, body: { reason }, session: undefined, reading: photo, says })
  }

  /** What the technician made of a suggestion; declining needs a reason. */
  async decide(suggestion: Suggestion, decision: { readonly taken: true } | { readonly reason: string; readonly instead: string | null }, says: string): Promise<void> {
    const body = 'taken' in decision ? { decision: 'taken', suggestion } : { decision: 'declined', suggestion, reason: decision.reason, instead: decision.instead }
    await this.#add({ kind: 'suggestion', method: 'POST', path: `/v1/jobs/${this.jobId}/suggestions`, body, session: undefined, says })
  }

  /** Two readings of two people are both to count: they are not asked about again. */
  async bothCount(a: string, b: string): Promise<void> {
    this.#answered = new Set([...this.#answered, `${a} ${b}`])
    await keep(ANSWERED, [...this.#answered].slice(-200))
  }

  async closeSession(): Promise<void> {
    if (!this.session) return
    await this.#add({ kind: 'close', method: 'POST', path: `/v1/sessions/${this.session.id}/close`, body: {}, session: this.session.id, says: '' })
  }

  /** Takes a fetched list; what was sent and is in it need not be remembered here any longer. */
  #serve(sessions: readonly Session[]): void {
    this.#served = keptParts(this.#served, sessions)
    const ids = new Set(sessions.flatMap((session) => [session.id, ...session.readings.map(({ id }) => id)]))
    const closed = new Set(sessions.filter(({ closedAt }) => closedAt !== null).map(({ id }) => id))
    void outbox.forget((entry) => entry.job === this.jobId && (entry.kind === 'close' ? closed.has(entry.session ?? '') : ids.has(entry.id)))
  }

  async #recallGauges(garage: string): Promise<void> {
    const gauges = await recall<List<GarageGauge>>(`/v1/garages/${garage}/gauges`)
    if (gauges) this.gauges = gauges.value.items.filter((gauge) => gauge.retiredAt === null)
  }

  async #openGauges(garage: string): Promise<void> {
    const gauges = await getKept<List<GarageGauge>>(`/v1/garages/${garage}/gauges`)
    if (gauges.refusal === undefined) this.gauges = keptParts(this.gauges, gauges.value.items.filter((gauge) => gauge.retiredAt === null))
  }

  #taken(): Pick<ReadingPut, 'takenAt' | 'takenBy' | 'offline'> {
    return { takenAt: new Date().toISOString(), ...(present.now ? { takenBy: present.now.id } : {}), ...(contact.online ? {} : { offline: true as const }) }
  }

  #putReading(session: string, body: ReadingPut, says: string) {
    const id = newId()
    return this.#add({ kind: 'reading', method: 'PUT', path: `/v1/sessions/${session}/readings/${id}`, body, id, session, says })
  }

  #add(entry: Pick<Parameters<typeof outbox.add>[0], 'kind' | 'method' | 'path' | 'body' | 'session' | 'reading' | 'says'> & { readonly id?: string }) {
    return outbox.add({ ...entry, job: this.jobId, person: present.now?.id })
  }
}
