import type { Job, JobEvaluation, LiveEvent, Quote, Session, SuggestionDecision } from '@evenbore/contract'
import { listSessions, listSuggestionDecisions, readEvaluation } from '#lib/api/evidence.ts'
import { readJob } from '#lib/api/jobs.ts'
import { Loaded } from '#lib/api/loaded.svelte.ts'
import { Pages } from '#lib/api/pages.svelte.ts'
import { readQuote } from '#lib/api/quotes.ts'
import { live } from '#lib/live/live.svelte.ts'

/** Everything about one job that its pages show, kept fresh by live events. Parts are fetched by who asks for them. */
export class JobFile {
  readonly id: string
  readonly job: Loaded<Job>
  readonly evaluation: Loaded<JobEvaluation>
  readonly sessions: Pages<Session>
  readonly decisions: Pages<SuggestionDecision>
  readonly quote: Loaded<Quote>
  /** Counts events of this job, for parts that fetch for themselves. */
  changes = $state(0)

  constructor(id: string) {
    this.id = id
    this.job = new Loaded(() => readJob(id))
    this.sessions = new Pages(() => listSessions(id))
    // verdict and faults first; the ranking of next tests may follow
    this.evaluation = new Loaded(() => readEvaluation(id), { later: true })
    this.decisions = new Pages(() => listSuggestionDecisions(id), { later: true })
    this.quote = new Loaded(() => readQuote(id), { later: true })
  }

  /** Follows the job's events while a page is open; made for `$effect`. */
  follow(): () => void {
    return live.on({ job: this.id }, (event) => this.#hear(event))
  }

  #hear({ kind }: LiveEvent): void {
    this.changes += 1
    void this.job.again()
    if (kind === 'reading.kept' || kind === 'session.opened' || kind === 'session.closed') {
      void this.sessions.again()
      void this.evaluation.again()
    }
    if (kind === 'suggestion.decided') {
      void this.decisions.again()
      void this.evaluation.again()
    }
    if (kind === 'quote.sent' || kind === 'quote.answered' || kind === 'authorisation.recorded') void this.quote.again()
  }
}
