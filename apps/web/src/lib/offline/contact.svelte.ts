/** Is there a network, as far as this page can tell, and how far is this device's clock off? Both as state. */
class Contact {
  /** False after a request without answer, or when the browser knows that there is no network. */
  online = $state(typeof navigator === 'undefined' ? true : navigator.onLine)
  /** This device's clock minus the server's, in ms, as the last answer showed (to a second or two). */
  clockOffsetMs = $state(0)
  #listeners = new Set<() => void>()
  #cutOffAt = 0

  constructor() {
    if (typeof window === 'undefined') return
    window.addEventListener('offline', () => this.cutOff())
    window.addEventListener('online', () => this.#tell())
  }

  heard(response: Response, sentAt: number): void {
    // an answer to what was asked before the network went says nothing of now
    if (sentAt > this.#cutOffAt) this.online = true
    const date = Date.parse(response.headers.get('date') ?? '')
    // an answer from the service worker's store has an old date and says nothing of the clock
    if (!Number.isNaN(date) && response.type !== 'error') this.clockOffsetMs = (sentAt + Date.now()) / 2 - date
  }

  lost(): void {
    this.online = false
  }

  /** The browser knows that the network has gone. */
  cutOff(at = Date.now()): void {
    this.#cutOffAt = at
    this.lost()
  }

  /** Calls back when the browser says that the network is there again. */
  whenBack(listener: () => void): () => void {
    this.#listeners.add(listener)
    return () => void this.#listeners.delete(listener)
  }

  #tell(): void {
    for (const listener of this.#listeners) listener()
  }
}

export const contact = new Contact()
