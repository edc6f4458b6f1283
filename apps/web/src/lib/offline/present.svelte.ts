/** Somebody at this device, as readings name him. */
export interface Present {
  readonly id: string
  readonly name: string
  /** Taken over by PIN without network: the server has not confirmed it yet. */
  readonly unconfirmed: boolean
}

const KEY = 'evenbore.present'

/** Who is at this device, also across a reload without network. Set at sign-in and take-over, cleared when the tablet is handed over. */
class PresentPerson {
  now = $state.raw<Present | undefined>(stored())

  arrive(person: Present): void {
    this.now = person
    try {
      localStorage.setItem(KEY, JSON.stringify(person))
    } catch {
      // refused storage: known until the page is closed
    }
  }

  leave(): void {
    this.now = undefined
    try {
      localStorage.removeItem(KEY)
    } catch {
      // nothing was stored then
    }
  }
}

function stored(): Present | undefined {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(KEY) ?? 'null')
    return typeof value === 'object' && value !== null && 'id' in value && 'name' in value ? (value as Present) : undefined
  } catch {
    return undefined
  }
}

export const present = new PresentPerson()
