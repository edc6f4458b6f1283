import { newId, TEST_PIN, type TestChain } from '../support/index.ts'
import { CASE, GREY_SQUARE, type Records } from './records.ts'
import type { RuleName } from './table.ts'

/** A request to one route about a record at Mill Lane: the rule that governs it, the path's ids and a body that is well formed. */
export type RouteRequest = { readonly rule: RuleName | 'open'; readonly params?: Readonly<Record<string, string>>; readonly query?: string; readonly body?: object; readonly headers?: Readonly<Record<string, string>>; readonly needsDraft?: true }

const EDIT = { 'if-match': '"1"' }
const WHEN = '2026-05-06T10:20:00.000Z'
const psi = (value: number) => ({ value, unit: 'psi' })

/** A fresh request for each route. Routes in the order of the design's list; a route that is missing here fails the test. */
export function requests({ mill }: TestChain, { job, ids }: Records): Readonly<Record<string, () => RouteRequest>> {
  const id = (name: string) => ids[name] ?? ''
  const garage = { garage: mill.id }
  const ofJob = { job: job.id }
  const key = () => ({ 'idempotency-key': newId() })
  const line = { kind: 'part', text: 'gasket', quantity: 1, rateMinor: 10_000, taxBasisPoints: 2_000 }
  return {
    'POST /v1/sign-in': () => ({ rule: 'open' }),
    'POST /v1/sign-in/refresh': () => ({ rule: 'open' }),
    'POST /v1/owner-setup': () => ({ rule: 'open' }),
    'POST /v1/owner-setup/way-back-in': () => ({ rule: 'open' }),
    'POST /v1/tablets/enrol': () => ({ rule: 'open' }),
    'POST /v1/token': () => ({ rule: 'open' }),
    'GET /v1/keys': () => ({ rule: 'open' }),
    'GET /v1/me': () => ({ rule: 'who I am' }),
    'GET /v1/events': () => ({ rule: 'hear events' }),

    'GET /v1/garages': () => ({ rule: 'list garages' }),
    'POST /v1/garages': () => ({ rule: 'write settings', body: { name: `Garage ${newId()}`, codeLetter: 'Z', timeZone: 'UTC', currency: 'EUR', pressureUnit: 'psi', labourRateMinor: 1, taxBasisPoints: 0 } }),
    'GET /v1/garages/{garage}': () => ({ rule: 'read the garage', params: garage }),
    'PATCH /v1/garages/{garage}': () => ({ rule: 'write settings', params: garage, body: { name: 'Mill Lane' }, headers: EDIT }),
    'GET /v1/garages/{garage}/staff': () => ({ rule: 'read the garage', params: garage }),
    'GET /v1/garages/{garage}/bays': () => ({ rule: 'read the garage', params: garage }),
    'POST /v1/garages/{garage}/bays': () => ({ rule: 'write settings', params: garage, body: { name: `Bay ${newId()}`, position: 9 } }),
    'PATCH /v1/bays/{bay}': () => ({ rule: 'write settings', params: { bay: mill.bays[1] ?? '' }, body: { position: 2 }, headers: EDIT }),
    'GET /v1/garages/{garage}/gauges': () => ({ rule: 'read the garage', params: garage }),
    'POST /v1/garages/{garage}/gauges': () => ({ rule: 'write settings', params: garage, body: { kind: 'compression', name: `Gauge ${newId()}`, specification: { span: psi(300), accuracyClass: 1.6 } } }),
    'PATCH /v1/gauges/{gauge}': () => ({ rule: 'write settings', params: { gauge: job.gauge }, body: { retired: false }, headers: EDIT }),
    'GET /v1/garages/{garage}/catalogue': () => ({ rule: 'read quotes', params: garage }),
    'POST /v1/garages/{garage}/catalogue': () => ({ rule: 'write settings', params: garage, body: { kind: 'part', operation: null, text: 'plug', minutes: null, unitPriceMinor: 900, taxBasisPoints: 2_000 } }),
    'PATCH /v1/catalogue/{item}': () => ({ rule: 'write settings', params: { item: id('item') }, body: { text: 'gasket' }, headers: EDIT }),
    'GET /v1/garages/{garage}/tablets': () => ({ rule: 'read settings', params: garage }),
    'POST /v1/garages/{garage}/tablets': () => ({ rule: 'write settings', params: garage, body: { bay: mill.bays[1], name: 'Another' } }),
    'POST /v1/tablets/{tablet}/enrolment-code': () => ({ rule: 'write settings', params: { tablet: id('spareTablet') } }),
    'POST /v1/tablets/{tablet}/revocation': () => ({ rule: 'write settings', params: { tablet: id('spareTablet') } }),
    'GET /v1/people': () => ({ rule: 'list settings' }),
    'POST /v1/people': () => ({ rule: 'write settings', body: { name: 'New Person', roles: [{ garage: mill.id, role: 'technician' }] } }),
    'GET /v1/people/{person}': () => ({ rule: 'read settings', params: { person: id('colleague') } }),
    'PATCH /v1/people/{person}': () => ({ rule: 'write settings', params: { person: id('colleague') }, body: { name: 'Cole League' }, headers: EDIT }),
    'GET /v1/garages/{garage}/deputies': () => ({ rule: 'read settings', params: garage }),
    'POST /v1/garages/{garage}/deputies': () => ({ rule: 'name deputies', params: garage, body: { manager: mill.manager.id, deputy: id('colleague'), until: new Date(Date.now() + 86_400_000).toISOString() } }),
    'POST /v1/deputies/{deputy}/revocation': () => ({ rule: 'name deputies', params: { deputy: id('deputy') } }),
    'GET /v1/apps': () => ({ rule: 'write settings' }),
    'POST /v1/apps': () => ({ rule: 'write settings', body: { name: 'New app', scopes: ['evaluate'] } }),
    'POST /v1/apps/{app}/secret': () => ({ rule: 'write settings', params: { app: id('spareApp') } }),
    'POST /v1/apps/{app}/revocation': () => ({ rule: 'write settings', params: { app: id('spareApp') } }),
    'GET /v1/audit': () => ({ rule: 'list settings' }),

    'GET /v1/garages/{garage}/customers': () => ({ rule: 'list customers', params: garage }),
    'POST /v1/garages/{garage}/customers': () => ({ rule: 'book in', params: garage, body: { name: 'Nora New' } }),
    'GET /v1/customers/{customer}': () => ({ rule: 'read customers of the bay', params: { customer: job.customer } }),
    'PATCH /v1/customers/{customer}': () => ({ rule: 'book in', params: { customer: job.customer }, body: { note: 'rings twice' }, headers: EDIT }),
    'GET /v1/garages/{garage}/vehicles': () => ({ rule: 'list customers', params: garage }),
    'POST /v1/garages/{garage}/vehicles': () => ({ rule: 'book in', params: garage, body: { customer: job.customer, plate: newId().slice(-12), description: 'blue van' } }),
    'GET /v1/vehicles/{vehicle}': () => ({ rule: 'read the job in the bay', params: { vehicle: job.vehicle } }),
    'PATCH /v1/vehicles/{vehicle}': () => ({ rule: 'book in', params: { vehicle: job.vehicle }, body: { note: 'dent' }, headers: EDIT }),
    'GET /v1/engine-families': () => ({ rule: 'read engines' }),
    'POST /v1/engine-families': () => ({ rule: 'write settings', body: { name: `Family ${newId()}`, specification: { fuel: 'petrol', layout: 'inline', cylinders: 4 }, basis: {} } }),
    'GET /v1/engine-families/{family}': () => ({ rule: 'read engines', params: { family: id('family') } }),
    'PATCH /v1/engine-families/{family}': () => ({ rule: 'write settings', params: { family: id('family') }, body: { basis: {} }, headers: EDIT }),
    'GET /v1/engines': () => ({ rule: 'read engines' }),
    'POST /v1/engines': () => ({ rule: 'write engines', body: { description: 'new', ownValues: { fuel: 'petrol', layout: 'inline', cylinders: 4 } } }),
    'GET /v1/engines/{engine}': () => ({ rule: 'read engines', params: { engine: job.engine } }),
    'PATCH /v1/engines/{engine}': () => ({ rule: 'write engines', params: { engine: job.engine }, body: { description: 'renamed' }, headers: EDIT }),
    'GET /v1/engines/{engine}/history': () => ({ rule: 'read engines', params: { engine: job.engine } }),
    'POST /v1/engines/{engine}/events': () => ({ rule: 'write engines', params: { engine: job.engine }, body: { kind: 'note', text: 'painted' } }),
    'POST /v1/engines/{engine}/same': () => ({ rule: 'write engines', params: { engine: job.engine }, body: { same: id('sameEngine'), reason: 'written down twice' } }),
    'POST /v1/engines/{engine}/fittings': () => ({ rule: 'fit engines', params: { engine: job.engine }, body: { vehicle: job.vehicle } }),
    'POST /v1/fittings/{fitting}/removal': () => ({ rule: 'fit engines', params: { fitting: id('fitting') } }),
    'GET /v1/engines/{engine}/trail': () => ({ rule: 'read engines', params: { engine: job.engine } }),
    'GET /v1/engines/{engine}/trail/check': () => ({ rule: 'read engines', params: { engine: job.engine } }),
    'GET /v1/jobs/{job}/trail': () => ({ rule: 'read trails of jobs', params: ofJob }),

    'GET /v1/garages/{garage}/jobs': () => ({ rule: 'read jobs', params: garage }),
    'POST /v1/garages/{garage}/jobs': () => ({ rule: 'book in', params: garage, body: { customer: job.customer, vehicle: job.vehicle, engine: job.engine, complaint: 'smokes' } }),
    'GET /v1/garages/{garage}/floor': () => ({ rule: 'read the job in the bay', params: garage }),
    'GET /v1/garages/{garage}/search': () => ({ rule: 'read jobs', params: garage, query: 'q=TT' }),
    'GET /v1/jobs/{job}': () => ({ rule: 'read the job in the bay', params: ofJob }),
    'PATCH /v1/jobs/{job}': () => ({ rule: 'book in', params: ofJob, body: { complaint: 'smokes when hot' }, headers: EDIT }),
    'POST /v1/jobs/{job}/bay': () => ({ rule: 'place and parts', params: ofJob, body: { bay: mill.bays[0] } }),
    'POST /v1/jobs/{job}/contacts': () => ({ rule: 'place and parts', params: ofJob, body: { kind: 'note', text: 'asked for the keys' } }),
    'GET /v1/jobs/{job}/parts': () => ({ rule: 'read the job in the bay', params: ofJob }),
    'POST /v1/jobs/{job}/parts': () => ({ rule: 'place and parts', params: ofJob, body: { text: 'valve' } }),
    'POST /v1/parts/{part}/arrival': () => ({ rule: 'place and parts', params: { part: id('part') } }),

    'GET /v1/jobs/{job}/sessions': () => ({ rule: 'read sessions', params: ofJob }),
    'POST /v1/jobs/{job}/sessions': () => ({ rule: 'write sessions', params: ofJob, body: { conditions: { engine: 'hot', throttle: 'open', plugsOut: 'all' } } }),
    'GET /v1/sessions/{session}': () => ({ rule: 'read sessions', params: { session: id('session') } }),
    'PUT /v1/sessions/{session}/readings/{reading}': () => ({
      rule: 'write readings', params: { session: id('session'), reading: newId() }, body: { takenAt: WHEN, reading: { test: 'compression', cylinder: 1, pressure: psi(150) } },
    }),
    'GET /v1/jobs/{job}/unplaced-readings': () => ({ rule: 'read sessions', params: ofJob }),
    'GET /v1/jobs/{job}/photos': () => ({ rule: 'read photos', params: ofJob }),
    'PUT /v1/readings/{reading}/photos/{photo}': () => ({ rule: 'attach photos', params: { reading: id('reading'), photo: newId() }, body: { takenAt: WHEN, picture: GREY_SQUARE } }),
    'GET /v1/photos/{photo}/picture': () => ({ rule: 'read photos', params: { photo: id('photo') } }),
    'POST /v1/photos/{photo}/withdrawal': () => ({ rule: 'attach photos', params: { photo: id('photo') }, body: { reason: 'of the wrong plug' } }),
    'GET /v1/jobs/{job}/test-record.pdf': () => ({ rule: 'read papers', params: ofJob }),
    'GET /v1/jobs/{job}/quote.pdf': () => ({ rule: 'read papers', params: ofJob, query: 'language=de' }),
    'GET /v1/jobs/{job}/release.pdf': () => ({ rule: 'read papers', params: ofJob }),
    'POST /v1/evaluations': () => ({ rule: 'evaluate', body: CASE }),
    'POST /v1/comparisons': () => ({ rule: 'evaluate', body: { before: CASE, after: CASE } }),
    'GET /v1/jobs/{job}/evaluation': () => ({ rule: 'read sessions', params: ofJob }),
    'GET /v1/evaluations/{evaluation}': () => ({ rule: 'read sessions', params: { evaluation: id('evaluation') } }),
    'GET /v1/jobs/{job}/suggestions': () => ({ rule: 'read sessions', params: ofJob }),
    'POST /v1/jobs/{job}/suggestions': () => ({ rule: 'write sessions', params: ofJob, body: { decision: 'taken', suggestion: { tests: [{ test: 'compression', wet: true, cylinders: [3] }], bits: 0.5, minutes: 2, bitsPerMinute: 0.25, says: 'wet test on 3' } } }),

    'GET /v1/jobs/{job}/quote': () => ({ rule: 'read quotes', params: ofJob }),
    'GET /v1/jobs/{job}/quote/suggested-lines': () => ({ rule: 'read quotes', params: ofJob }),
    'GET /v1/garages/{garage}/decisions': () => ({ rule: 'read quotes', params: garage }),
    'PUT /v1/jobs/{job}/quote/draft': () => ({ rule: 'draft quotes', params: ofJob, body: { lines: [line] }, headers: { 'if-none-match': '*' } }),
    'DELETE /v1/jobs/{job}/quote/draft': () => ({ rule: 'draft quotes', params: ofJob, headers: EDIT, needsDraft: true }),
    'POST /v1/jobs/{job}/quote/versions': () => ({ rule: 'send quotes', params: ofJob, headers: key(), needsDraft: true }),
    'POST /v1/quote-versions/{version}/send-back': () => ({ rule: 'answer quotes', params: { version: id('version') }, body: { question: 'wet test?' }, headers: key() }),
    'POST /v1/quote-versions/{version}/refusal': () => ({ rule: 'answer quotes', params: { version: id('version') }, body: { reason: 'too early' }, headers: key() }),
    'POST /v1/quote-versions/{version}/approval': () => ({ rule: 'answer quotes', params: { version: id('version') }, headers: key() }),
    'POST /v1/quote-versions/{version}/withdrawal': () => ({ rule: 'withdraw approvals', params: { version: id('version') }, body: { reason: 'new evidence' }, headers: key() }),
    'POST /v1/quote-versions/{version}/authorisations': () => ({ rule: 'record permission', params: { version: id('version') }, body: { kind: 'given', personName: 'Cora Customer', method: 'in-person', givenAt: WHEN }, headers: key() }),
    'GET /v1/jobs/{job}/repairs': () => ({ rule: 'read quotes', params: ofJob }),
    'POST /v1/jobs/{job}/repair': () => ({ rule: 'repair', params: ofJob }),
    'POST /v1/jobs/{job}/repair/finish': () => ({ rule: 'repair', params: ofJob }),
    'GET /v1/jobs/{job}/findings': () => ({ rule: 'read sessions', params: ofJob }),
    'POST /v1/jobs/{job}/findings': () => ({ rule: 'write sessions', params: ofJob, body: { cylinders: [3], fault: 'ring-wear', seen: 'broken top ring' } }),

    'GET /v1/garages/{garage}/retests': () => ({ rule: 'read retests', params: garage }),
    'GET /v1/jobs/{job}/retests': () => ({ rule: 'read retests', params: ofJob }),
    'POST /v1/jobs/{job}/retests': () => ({ rule: 'book retests', params: ofJob, body: { reason: 'after 1,000 km', odometerKm: 100_000 } }),
    'POST /v1/retests/{retest}/dates': () => ({ rule: 'book retests', params: { retest: id('followUp') }, body: { latest: '2027-01-01', reason: 'holiday' } }),
    'GET /v1/retests/{retest}/comparison': () => ({ rule: 'read retests', params: { retest: id('retest') } }),
    'POST /v1/retests/{retest}/outcome': () => ({ rule: 'write sessions', params: { retest: id('retest') }, body: { outcome: 'passed', session: id('session') } }),
    'POST /v1/retests/{retest}/waiver': () => ({ rule: 'waive retests', params: { retest: id('retest') }, body: { reason: 'customer collects today' } }),
    'GET /v1/garages/{garage}/reliability': () => ({ rule: 'report and export', params: garage }),
    'GET /v1/export': () => ({ rule: 'report and export', query: `garage=${mill.id}` }),

    // What ends things comes last: a session closed, testing closed, the job cancelled or handed over, the customer erased.
    'POST /v1/sessions/{session}/close': () => ({ rule: 'write sessions', params: { session: id('session') } }),
    'POST /v1/jobs/{job}/testing-closed': () => ({ rule: 'write sessions', params: ofJob }),
    'POST /v1/jobs/{job}/hand-over': () => ({ rule: 'hand over', params: ofJob }),
    'POST /v1/jobs/{job}/cancellation': () => ({ rule: 'cancel', params: ofJob, body: { reason: 'sold' } }),
    'POST /v1/customers/{customer}/erasure': () => ({ rule: 'book in', params: { customer: job.customer } }),

    // What a caller does about itself; the callers of the test go on being used, so these stand at the very end.
    'PATCH /v1/me': () => ({ rule: 'who I am', body: {} }),
    'POST /v1/me/second-factor': () => ({ rule: 'who I am' }),
    'PUT /v1/me/second-factor': () => ({ rule: 'who I am', body: { secret: 'A'.repeat(32), oneTimeCode: '000000' } }),
    'GET /v1/tablets/people': () => ({ rule: 'who I am' }),
    'POST /v1/tablets/take-over': () => ({ rule: 'who I am', body: { person: mill.technician.id, pin: TEST_PIN } }),
    'POST /v1/sign-out': () => ({ rule: 'who I am' }),
  }
}
