import type { Enrolled, Tokens } from '@evenbore/contract'

/** What an enrolled tablet knows of itself; the token is shown once by the server and makes the tablet a tablet. */
export type TabletIdentity = Pick<Enrolled, 'tablet' | 'name' | 'garage' | 'bay' | 'tabletToken'>

const TABLET = 'evenbore.tablet'
const SIGNED_IN = 'evenbore.signed-in'
/** Renew a little before the end, so that a request does not meet it. */
const MARGIN_MS = 15_000

/**
 * The bearer token of the next request. The access token lives in memory only; the refresh token is a cookie that no script can read,
 * so a reload renews by it. Whether somebody is signed in here at all is remembered, to spare strangers a pointless request.
 */
class Authorisation {
  #access: { token: string; until: number } | undefined
  #renewing: Promise<'renewed' | 'refused' | 'unheard'> | undefined

  /** Keeps the answer of sign-in, take-over or refresh. */
  take(tokens: Tokens): void {
    this.#access = { token: tokens.accessToken, until: Date.now() + tokens.expiresInSeconds * 1000 }
    write(SIGNED_IN, 'yes')
  }

  /** Forgets the person; the tablet stays a tablet. */
  forget(): void {
    this.#access = undefined
    write(SIGNED_IN, undefined)
  }

  /** True when a person signed in on this device and did not sign out; says nothing about the network. */
  get remembered(): boolean {
    return this.#access !== undefined || read(SIGNED_IN) === 'yes'
  }

  async bearer(): Promise<string | undefined> {
    if (this.#access && this.#access.until - MARGIN_MS > Date.now()) return this.#access.token
    if (this.remembered) await this.renew()
    return this.#access?.token ?? this.tabletToken()
  }

  /** Asks for a new access token by the refresh cookie; several callers share one request, since a refresh token works once. */
  renew(): Promise<'renewed' | 'refused' | 'unheard'> {
    this.#renewing ??= this.#ask().finally(() => (this.#renewing = undefined))
    return this.#renewing
  }

  async #ask(): Promise<'renewed' | 'refused' | 'unheard'> {
    if (!this.remembered) return 'refused'
    // two tabs must not spend the same refresh token: the second waits and then uses the new cookie
    const request = () => fetch('/v1/sign-in/refresh', { method: 'POST', headers: { 'content-type': 'application/json' }, body: '{}', credentials: 'same-origin' })
    try {
      const response = await (navigator.locks ? navigator.locks.request('evenbore.refresh', request) : request())
      if (response.ok) {
        this.take((await response.json()) as Tokens)
        return 'renewed'
      }
      if (response.status === 401 || response.status === 403) {
        this.forget()
        return 'refused'
      }
      return 'unheard'
    } catch {
      return 'unheard'
    }
  }

  tablet(): TabletIdentity | undefined {
    try {
      const value: unknown = JSON.parse(read(TABLET) ?? 'null')
      return typeof value === 'object' && value !== null && 'tabletToken' in value ? (value as TabletIdentity) : undefined
    } catch {
      return undefined
    }
  }

  tabletToken(): string | undefined {
    return this.tablet()?.tabletToken
  }

  enrol(tablet: TabletIdentity | undefined): void {
    write(TABLET, tablet && JSON.stringify(tablet))
  }
}

function read(key: string): string | null {
  try {
    return localStorage.getItem(key)
  } catch {
    return null
  }
}

function write(key: string, value: string | undefined): void {
  try {
    if (value === undefined) localStorage.removeItem(key)
    else localStorage.setItem(key, value)
  } catch {
    // storage refused: lasts until the page is closed
  }
}

export const authorisation = new Authorisation()
