import type { Enrolled } from '@evenbore/contract'
import { answer, type Answer } from '#lib/api/answer.ts'
import { client } from '#lib/api/client.ts'

const KEY = 'evenbore.tablet'

/** What makes this device a bay's tablet: the key it was given once. */
class Enrolment {
  now = $state.raw<Enrolled | undefined>(stored())

  /** Enrols this device with a one-time code. */
  async enrol(enrolmentCode: string): Promise<Answer<Enrolled>> {
    const answered = await answer<Enrolled>(client.POST('/v1/tablets/enrol', { body: { enrolmentCode } }))
    if (answered.refusal === undefined) {
      this.now = answered.value
      client.session.useTablet(answered.value.tabletToken)
      localStorage.setItem(KEY, JSON.stringify(answered.value))
    }
    return answered
  }

  /** Makes the device an ordinary one again (the owner revoked it, or it moved away). */
  drop(): void {
    this.now = undefined
    client.session.useTablet(undefined)
    localStorage.removeItem(KEY)
  }
}

function stored(): Enrolled | undefined {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(KEY) ?? 'null')
    return typeof value === 'object' && value !== null && 'tabletToken' in value ? (value as Enrolled) : undefined
  } catch {
    return undefined
  }
}

export const enrolment = new Enrolment()
