import type { Credentials, SignedIn as SignInAnswer } from '@evenbore/client'
import { may, whyNot, type Action, type Me, type Refusal, type Subject } from '@evenbore/contract'
import { answer } from '#lib/api/answer.ts'
import { client } from '#lib/api/client.ts'
import { deviceSettings } from '#lib/format/device-settings.svelte.ts'
import { text } from '#lib/words/text.svelte.ts'
import { actorFrom } from './actor.ts'
import { enrolment } from './enrolment.svelte.ts'

type MyGarage = Me['garages'][number]
const GARAGE_KEY = 'evenbore.garage'

/** Who works on this device just now, and what the permission table lets them do; screens hide the rest. */
class SignedIn {
  /** undefined: not known yet; null: nobody. */
  me = $state.raw<Me | null | undefined>(undefined)
  /** The server could not be asked: what is kept on the device is all there is. */
  unreachable = $state(false)
  #garage = $state<string | undefined>(stored())
  readonly #actor = $derived(this.me ? actorFrom(this.me) : undefined)
  #starting: Promise<void> | undefined
  /** Counts comings and goings: who the server named before one of them is not who is here after it. */
  #changes = 0

  /** The garage that is looked at: the last chosen, else the first. */
  readonly garage = $derived<MyGarage | undefined>(this.me?.garages.find(({ id }) => id === this.#garage) ?? this.me?.garages[0])
  readonly person = $derived(this.me?.person ?? undefined)

  /** Finds out who is signed in from the refresh cookie, once for each page load. */
  start(): Promise<void> {
    this.#starting ??= this.#start()
    return this.#starting
  }

  /** Signs in. `before` is waited for before anybody is shown as signed in. */
  async signIn(credentials: Credentials, before?: () => Promise<void>): Promise<SignInAnswer> {
    let answered: SignInAnswer
    try {
      answered = await client.session.signIn(credentials)
    } catch {
      return { ok: false, error: { type: 'about:blank', title: '', status: 0 } }
    }
    if (!answered.ok) return answered
    this.#changes += 1
    await before?.()
    await this.refresh()
    return answered
  }

  /** Hands an enrolled tablet over to a person by PIN. */
  takeOver(person: string, pin: string, before?: () => Promise<void>): Promise<SignInAnswer> {
    const tabletToken = enrolment.now?.tabletToken ?? ''
    return this.signIn({ kind: 'tablet', tabletToken, person, pin }, before)
  }

  /** Nobody is here from this moment on; the server learns of it as soon as it can. */
  async signOut(): Promise<void> {
    this.#changes += 1
    this.me = null
    await client.session.signOut()
  }

  /** Asks the server again who this is, e.g. after settings were changed. */
  async refresh(): Promise<void> {
    const changes = this.#changes
    const answered = await answer<Me>(client.GET('/v1/me', {}))
    if (changes !== this.#changes) return
    if (answered.refusal) {
      this.unreachable = answered.refusal.status === 0
      this.me = null
      return
    }
    this.unreachable = false
    this.me = answered.value
    this.#settle(answered.value)
  }

  choose(garage: string): void {
    this.#garage = garage
    try {
      localStorage.setItem(GARAGE_KEY, garage)
    } catch {
      // refused storage: chosen until the page is closed
    }
    if (this.me) this.#settle(this.me)
  }

  /** May this person do that here? `garage` defaults to the one looked at. */
  may(action: Action, subject: Subject = { garage: this.garage?.id }): boolean {
    return this.#actor !== undefined && may(this.#actor, action, subject)
  }

  /** Why not, for a sentence beside what cannot be done; null where it can. */
  whyNot(action: Action, subject: Subject): Refusal | null {
    return this.#actor === undefined ? 'not-allowed' : whyNot(this.#actor, action, subject)
  }

  async #start(): Promise<void> {
    client.session.useTablet(enrolment.now?.tabletToken)
    // Without an answer nobody knows whether the person is still signed in: the tablet's own token, tried a moment later, would say nobody.
    if (!(await client.session.renew()) && (!enrolment.now || !client.session.answered)) {
      this.unreachable = !client.session.answered
      this.me = null
      return
    }
    await this.refresh()
  }

  /** Asks once more after there was no answer. */
  again = async (): Promise<void> => {
    this.me = undefined
    this.#starting = this.#start()
    await this.#starting
  }

  /** Language, unit and zone follow the person, else the garage. */
  #settle(me: Me): void {
    const garage = this.garage
    deviceSettings.change({ pressureUnit: me.pressureUnit ?? garage?.pressureUnit ?? 'psi', timeZone: garage?.timeZone ?? 'UTC' })
    void text.use(me.locale)
  }
}

function stored(): string | undefined {
  try {
    return localStorage.getItem(GARAGE_KEY) ?? undefined
  } catch {
    return undefined
  }
}

export const signedIn = new SignedIn()
