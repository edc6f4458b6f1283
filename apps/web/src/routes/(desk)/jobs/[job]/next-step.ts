import type { Action, JobState } from '@evenbore/contract'

/** What can be done to a job next. */
export type Step = 'test' | 'retest' | 'decide' | 'word' | 'start-repair' | 'finish-repair' | 'hand-over' | 'quote' | 'close-testing' | 'finding'

interface Offer {
  readonly step: Step
  readonly needs: Action
}

/** For each state, what may be done, the first thing first. */
const offers: Readonly<Record<JobState, readonly Offer[]>> = {
  booked: [{ step: 'test', needs: 'sessions.write' }],
  'in-bay': [{ step: 'test', needs: 'sessions.write' }],
  testing: [{ step: 'test', needs: 'sessions.write' }, { step: 'quote', needs: 'quotes.draft' }, { step: 'close-testing', needs: 'sessions.write' }],
  'waiting-for-manager': [{ step: 'decide', needs: 'quotes.answer' }, { step: 'test', needs: 'sessions.write' }, { step: 'quote', needs: 'quotes.draft' }],
  'waiting-for-customer': [{ step: 'word', needs: 'authorisations.write' }, { step: 'quote', needs: 'quotes.draft' }, { step: 'decide', needs: 'quotes.answer' }],
  approved: [{ step: 'start-repair', needs: 'repairs.write' }, { step: 'word', needs: 'authorisations.write' }, { step: 'quote', needs: 'quotes.draft' }],
  'waiting-for-parts': [{ step: 'start-repair', needs: 'repairs.write' }, { step: 'finish-repair', needs: 'repairs.write' }, { step: 'finding', needs: 'findings.write' }],
  'in-repair': [{ step: 'finish-repair', needs: 'repairs.write' }, { step: 'finding', needs: 'findings.write' }, { step: 'quote', needs: 'quotes.draft' }],
  'retest-due': [{ step: 'retest', needs: 'sessions.write' }, { step: 'finding', needs: 'findings.write' }],
  ready: [{ step: 'hand-over', needs: 'jobs.hand-over' }, { step: 'finding', needs: 'findings.write' }],
  'handed-over': [],
  cancelled: [],
}

/**
 * What this person may do to a job that stands so: the first is the one filled button, the rest stand beside it.
 * @example nextSteps('ready', () => true)[0] // 'hand-over'
 */
export function nextSteps(state: JobState, may: (action: Action) => boolean): Step[] {
  return offers[state].filter(({ needs }) => may(needs)).map(({ step }) => step)
}
