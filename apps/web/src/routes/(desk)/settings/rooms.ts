import type { Action } from '@evenbore/contract'
import type { Words } from '@evenbore/words/en.ts'

/** The rooms of the settings and who may look into them. */
export const rooms: readonly { readonly name: keyof Words['settings']['rooms']; readonly needs: Action }[] = [
  { name: 'me', needs: 'me' },
  { name: 'garage', needs: 'settings.read' },
  { name: 'bays', needs: 'settings.read' },
  { name: 'gauges', needs: 'settings.read' },
  { name: 'catalogue', needs: 'settings.read' },
  { name: 'families', needs: 'settings.read' },
  { name: 'people', needs: 'settings.read' },
  { name: 'tablets', needs: 'settings.read' },
  { name: 'apps', needs: 'settings.write' },
  { name: 'deputies', needs: 'settings.read' },
  { name: 'audit', needs: 'settings.read' },
]
