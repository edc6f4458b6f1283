/** The service worker that lets the app open without network, and whether a newer version waits for the next reload. */
class AppVersion {
  /** A newer version is here and takes over when the person says so; never in the middle of an entry. */
  waiting = $state(false)
  #registration: ServiceWorkerRegistration | undefined

  /** Registers the worker; once for each page load. Where there is none (no HTTPS, refused), the app needs a network and says so by being slow. */
  async start(): Promise<void> {
    if (this.#registration || !('serviceWorker' in navigator)) return
    try {
      this.#registration = await navigator.serviceWorker.register('/service-worker.js', { type: 'module' })
    } catch {
      return
    }
    const look = () => (this.waiting = Boolean(this.#registration?.waiting && navigator.serviceWorker.controller))
    look()
    this.#registration.addEventListener('updatefound', () => this.#registration?.installing?.addEventListener('statechange', look))
    // a tablet may show one page for weeks
    setInterval(() => void this.#registration?.update().catch(() => undefined), 3_600_000)
    try {
      await navigator.storage?.persist?.()
    } catch {
      // asked for, not needed
    }
  }

  /** Lets the new version take over and reloads. */
  take(): void {
    navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true })
    this.#registration?.waiting?.postMessage('take-over')
  }
}

export const appVersion = new AppVersion()
