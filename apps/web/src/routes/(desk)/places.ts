import type { Action } from '@evenbore/contract'
import type { Words } from '@evenbore/words/en.ts'

interface Place {
  readonly href: string
  readonly name: keyof Words['desk']['places']
  /** Who may go there. */
  readonly needs: Action
}

/** The rooms of the desk, in the order of a day. */
export const places: readonly Place[] = [
  { href: '/', name: 'floor', needs: 'jobs.read' },
  { href: '/decisions', name: 'decisions', needs: 'quotes.answer' },
  { href: '/retests', name: 'retests', needs: 'retests.read' },
  { href: '/customers', name: 'customers', needs: 'customers.read' },
  { href: '/vehicles', name: 'vehicles', needs: 'vehicles.read' },
  { href: '/engines', name: 'engines', needs: 'engines.read' },
  { href: '/reliability', name: 'reliability', needs: 'reports.read' },
  { href: '/settings', name: 'settings', needs: 'settings.read' },
]
