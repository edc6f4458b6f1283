import type { Problem, Tokens } from '@evenbore/contract'
import type { TokenSource } from './transport.ts'

/** How a caller signs in. A person with e-mail and password, an enrolled tablet with somebody's PIN, an outside app with its secret. */
export type Credentials =
  | { readonly kind: 'person'; readonly email: string; readonly password: string; readonly oneTimeCode?: string }
  | { readonly kind: 'tablet'; readonly tabletToken: string; readonly person: string; readonly pin: string }
  | { readonly kind: 'app'; readonly clientId: string; readonly clientSecret: string; readonly scopes?: readonly string[] }

export type SignedIn = { readonly ok: true; readonly error?: undefined } | { readonly ok: false; readonly error: Problem }

export interface Leaving {
  readonly get: () => boolean
  readonly set: (leaving: boolean) => void
}

export interface SessionOptions {
  readonly baseUrl: string
  /** Sends a request without token; the transport's retries behind it. */
  readonly send: (request: Request) => Promise<Response>
  /** 'cookie': the browser keeps the refresh token where scripts cannot read it. 'body': for programs, kept in memory. */
  readonly refresh: 'cookie' | 'body'
  /** Lets one renewal run at a time where several pages share the refresh cookie; default: just runs it. */
  readonly exclusive?: <T>(task: () => Promise<T>) => Promise<T>
  /** Remembers across page loads that a sign-out has not reached the server: until it has, the refresh cookie must not sign anybody in. */
  readonly leaving?: Leaving
  readonly now?: () => number
}

/** A token is renewed this long before it runs out, so that a slow request does not meet its end. */
const EARLY_MS = 20_000

/** A line that answers nothing must not keep the next person waiting. */
const SIGN_OUT_MS = 5_000

/**
 * The tokens of one sign-in, in memory only. Renews by the rotating refresh token, each at most once at a time: a second use of one
 * would end the whole family. Apps ask for a new token with their secret.
 */
export class Session implements TokenSource {
  readonly #options: SessionOptions
  #accessToken: string | undefined
  #expiresAt = 0
  #refreshToken: string | undefined
  #app: Extract<Credentials, { kind: 'app' }> | undefined
  #renewing: Promise<boolean> | undefined
  #tabletToken: string | undefined
  /** Counts sign-outs: an answer that was asked for before one must not sign anybody in after it. */
  #departures = 0
  #ending: Promise<void> | undefined
  /** False after a renewal that got no answer: the sign-in may still be good. */
  answered = true

  constructor(options: SessionOptions) {
    this.#options = options
  }

  /** Signs in; a refusal is returned as the problem it came with. */
  async signIn(credentials: Credentials): Promise<SignedIn> {
    // the answer to a sign-out clears the cookie: it must not clear the next person's
    await this.#ending
    const response = await this.#ask(credentials)
    if (!response.ok) return { ok: false, error: await problemOf(response) }
    await this.#keep(response)
    this.#app = credentials.kind === 'app' ? credentials : undefined
    this.#options.leaving?.set(false)
    return { ok: true }
  }

  /** Ends the sign-in here at once, and on the server; without network there as soon as it is asked again. */
  async signOut(): Promise<void> {
    const token = this.#accessToken
    this.forget()
    this.#options.leaving?.set(true)
    if (token !== undefined) await this.#endOnServer(token)
    else if (this.#options.leaving) await this.renew()
  }

  #endOnServer(token: string): Promise<void> {
    const headers = { authorization: `Bearer ${token}` }
    const request = new Request(`${this.#options.baseUrl}/v1/sign-out`, { method: 'POST', headers, credentials: 'same-origin', keepalive: true, signal: AbortSignal.timeout(SIGN_OUT_MS) })
    this.#ending = this.#options.send(request).then(
      // refused: that sign-in had ended already
      (response) => void (response.status < 500 && this.#options.leaving?.set(false)),
      () => undefined,
    )
    return this.#ending
  }

  /** Drops what is in memory. */
  forget(): void {
    this.#departures += 1
    this.#accessToken = undefined
    this.#refreshToken = undefined
    this.#app = undefined
    this.#expiresAt = 0
  }

  /** Makes a tablet's own key stand in where nobody is signed in on it. */
  useTablet(tabletToken: string | undefined): void {
    this.#tabletToken = tabletToken
  }

  /** True when somebody is signed in by a token that has not run out. */
  get present(): boolean {
    return this.#accessToken !== undefined && this.#expiresAt > this.#now()
  }

  readonly access = async (): Promise<string | undefined> => {
    if (this.#accessToken !== undefined && this.#expiresAt - EARLY_MS < this.#now()) await this.renew(this.#accessToken)
    return this.#accessToken ?? this.#tabletToken
  }

  readonly renew = (refused?: string): Promise<boolean> => {
    // somebody else renewed it meanwhile: just try again
    if (refused !== undefined && this.#accessToken !== undefined && refused !== this.#accessToken) return Promise.resolve(true)
    this.#renewing ??= (this.#options.exclusive ?? justRun)(() => this.#renew()).finally(() => {
      this.#renewing = undefined
    })
    return this.#renewing
  }

  async #renew(): Promise<boolean> {
    const { baseUrl, send, refresh } = this.#options
    if (this.#app) return (await this.signIn(this.#app)).ok
    if (refresh === 'body' && this.#refreshToken === undefined) return false
    const body = refresh === 'body' ? { refreshToken: this.#refreshToken } : {}
    const path = refresh === 'body' ? '/v1/sign-in/refresh?refresh=body' : '/v1/sign-in/refresh'
    const [departures, leaving] = [this.#departures, this.#options.leaving?.get() ?? false]
    // kept alive: a page that is reloaded meanwhile must not lose the one token that works next
    const response = await send(post(`${baseUrl}${path}`, body, {}, refresh === 'cookie')).catch(() => undefined)
    this.answered = response !== undefined
    // no answer: the token may still be good, the next call will tell
    if (response === undefined) return false
    if (!response.ok) {
      if (response.status === 401 || response.status === 400) {
        this.#options.leaving?.set(false)
        this.forget()
      }
      return false
    }
    // somebody left meanwhile, or before and without network: what the cookie brought is only good for telling the server
    if (leaving || departures !== this.#departures) {
      await this.#endOnServer(tokenOf(await answerOf(response)))
      return false
    }
    await this.#keep(response)
    return true
  }

  #ask(credentials: Credentials): Promise<Response> {
    const { baseUrl, send, refresh } = this.#options
    const query = refresh === 'body' ? '?refresh=body' : ''
    if (credentials.kind === 'person') {
      const { email, password, oneTimeCode } = credentials
      return send(post(`${baseUrl}/v1/sign-in${query}`, { email, password, ...(oneTimeCode ? { oneTimeCode } : {}) }))
    }
    if (credentials.kind === 'tablet') {
      const { person, pin, tabletToken } = credentials
      return send(post(`${baseUrl}/v1/tablets/take-over${query}`, { person, pin }, { authorization: `Bearer ${tabletToken}` }))
    }
    const form = new URLSearchParams({ grant_type: 'client_credentials', client_id: credentials.clientId, client_secret: credentials.clientSecret })
    if (credentials.scopes) form.set('scope', credentials.scopes.join(' '))
    return send(new Request(`${baseUrl}/v1/token`, { method: 'POST', body: form }))
  }

  async #keep(response: Response): Promise<void> {
    const answer = await answerOf(response)
    this.#accessToken = tokenOf(answer)
    this.#expiresAt = this.#now() + ('access_token' in answer ? answer.expires_in : answer.expiresInSeconds) * 1000
    if ('refreshToken' in answer) this.#refreshToken = answer.refreshToken
  }

  #now(): number {
    return (this.#options.now ?? Date.now)()
  }
}

type Answered = Tokens | { access_token: string; expires_in: number }
const answerOf = async (response: Response) => (await response.json()) as Answered
const tokenOf = (answer: Answered) => ('access_token' in answer ? answer.access_token : answer.accessToken)
const justRun = <T>(task: () => Promise<T>): Promise<T> => task()

function post(url: string, body: object, headers: Record<string, string> = {}, keepalive = false): Request {
  return new Request(url, { method: 'POST', keepalive, credentials: 'same-origin', headers: { 'content-type': 'application/json', ...headers }, body: JSON.stringify(body) })
}

/** The problem document of a refusal, or one made from its status where the answer holds none (a proxy's page). */
export async function problemOf(response: Response): Promise<Problem> {
  const text = await response.text().catch(() => '')
  try {
    const value: unknown = JSON.parse(text)
    if (typeof value === 'object' && value !== null && 'type' in value && 'title' in value) return { status: response.status, ...value } as Problem
  } catch {
    // not JSON: said by its status alone
  }
  return { type: 'about:blank', title: response.statusText || `Status ${response.status}`, status: response.status }
}
