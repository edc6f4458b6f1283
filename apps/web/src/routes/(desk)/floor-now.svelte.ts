import type { Floor, LiveEvent } from '@evenbore/contract'
import { answer, type Answer } from '#lib/api/answer.ts'
import { client } from '#lib/api/client.ts'
import { readFloor } from '#lib/api/jobs.ts'
import { Loaded } from '#lib/api/loaded.svelte.ts'
import { sameBays, withJob } from './floor-patch.ts'

/** What one job has on the floor: everything else is empty. */
const readFloorOfJob = (garage: string, job: string) => answer<Floor>(client.GET('/v1/garages/{garage}/floor', { params: { path: { garage }, query: { job } } }))
/** More jobs than this that changed at once are cheaper to fetch with all the others. */
const MOST_ALONE = 5

/**
 * The floor as state, kept current by live events. An event that names a job costs that job and its row; events that come while an answer
 * is on its way share the next one. Whatever concerns more than one job fetches the floor anew.
 */
export class FloorNow extends Loaded<Floor> {
  #garage: string
  #changed = new Set<string>()
  #wholeWanted = true

  constructor(garage: string) {
    super(() => this.#fetch(), { later: true })
    this.#garage = garage
    void this.again()
  }

  hear(event: LiveEvent): void {
    // readings and their photos change no place on the floor; everything else may
    if (event.kind === 'trail.heads' || event.kind === 'photo.changed') return
    if (event.kind === 'reading.kept' && (event.body['reading'] as { state?: string } | undefined)?.state !== 'unplaced') return
    if (event.job === null) this.#wholeWanted = true
    else this.#changed.add(event.job)
    void this.again()
  }

  async #fetch(): Promise<Answer<Floor>> {
    const jobs = [...this.#changed]
    const whole = this.#wholeWanted || jobs.length === 0 || jobs.length > MOST_ALONE
    this.#changed.clear()
    this.#wholeWanted = false
    if (this.value === undefined || whole) return readFloor(this.#garage)
    const answers = await Promise.all(jobs.map((job) => readFloorOfJob(this.#garage, job)))
    let floor: Floor = this.value
    for (const [i, { value: alone }] of answers.entries()) {
      if (!alone || !sameBays(floor, alone)) return readFloor(this.#garage)
      const job = jobs[i]!
      // a visit that begins or ends may owe or fulfil the retests of another
      if (holds(floor, job) !== holds(alone, job)) this.#wholeWanted = true
      floor = withJob(floor, job, alone)
    }
    if (this.#wholeWanted) setTimeout(() => void this.again())
    return { value: floor, etag: undefined }
  }
}

function holds(floor: Floor, job: string): boolean {
  return floor.bays.some((bay) => bay.job?.id === job) || [floor.elsewhere, floor.waitsForDecision, floor.ready].some((rows) => rows.some(({ id }) => id === job)) || floor.retestsDue.some((retest) => retest.job === job)
}
