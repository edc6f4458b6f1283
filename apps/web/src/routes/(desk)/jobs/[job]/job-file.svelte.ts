import type { Job, JobEvaluation, LiveEvent, Photo, Quote, Session, SuggestionDecision } from '@evenbore/contract'
import { listSessions, listSuggestionDecisions, readEvaluation } from '#lib/api/evidence.ts'
import { listPhotos } from '#lib/api/photos.ts'
import { readJob } from '#lib/api/jobs.ts'
import { Loaded } from '#lib/api/loaded.svelte.ts'
import { Pages } from '#lib/api/pages.svelte.ts'
import { readQuote } from '#lib/api/quotes.ts'
import { live } from '#lib/live/live.svelte.ts'
import { readingOf, withReading } from './live-reading.ts'

/** Readings come one after the other: sessions and evaluation are fetched once they pause for this long. */
const SETTLED_MS = 250

/** Everything about one job that its pages show, kept fresh by live events. Parts are fetched by who asks for them. */
export class JobFile {
  readonly id: string
  readonly job: Loaded<Job>
  readonly evaluation: Loaded<JobEvaluation>
  readonly sessions: Pages<Session>
  readonly decisions: Pages<SuggestionDecision>
  readonly quote: Loaded<Quote>
  readonly photos: Pages<Photo>
  /** Counts events of this job, for parts that fetch for themselves. */
  changes = $state(0)

  constructor(id: string) {
    this.id = id
    this.job = new Loaded(() => readJob(id))
    this.sessions = new Pages(() => listSessions(id), { later: true })
    // verdict and faults first; the ranking of next tests may follow
    this.evaluation = new Loaded(() => readEvaluation(id), { later: true })
    this.decisions = new Pages(() => listSuggestionDecisions(id), { later: true })
    this.photos = new Pages(() => listPhotos(id), { later: true })
    this.quote = new Loaded(() => readQuote(id), { later: true })
  }

  /** Follows the job's events while a page is open; made for `$effect`. */
  follow(): () => void {
    return live.on({ job: this.id }, (event) => this.#hear(event))
  }

  #hear(event: LiveEvent): void {
    const { kind } = event
    this.changes += 1
    if (kind === 'photo.changed') return void this.photos.again()
    if (kind === 'reading.kept') this.#show(event)
    else void this.job.again()
    if (kind === 'session.opened' || kind === 'session.closed') this.#freshen()
    if (kind === 'suggestion.decided') {
      void this.decisions.again()
      this.#freshen()
    }
    if (kind === 'quote.sent' || kind === 'quote.answered' || kind === 'authorisation.recorded') void this.quote.again()
  }

  /** A reading is on the screen as soon as its event is here; what the server makes of it follows. */
  #show(event: LiveEvent): void {
    const kept = readingOf(event)
    const shown = kept && withReading(this.sessions.items ?? [], kept, event.body['takenById'])
    if (shown) this.sessions.items = shown
    this.#freshen(shown ? SETTLED_MS : 0)
  }

  #timer: ReturnType<typeof setTimeout> | undefined
  #freshen(after = 0): void {
    clearTimeout(this.#timer)
    this.#timer = setTimeout(() => {
      void this.sessions.again()
      void this.evaluation.again()
    }, after)
  }
}
