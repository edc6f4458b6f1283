import type { Place } from './faults.ts'
import { COMMON_PRACTICE, FROM_MEMORY, entry } from './entry.ts'

/** How loud a leak is at its listening point, and how ears go wrong. Areas in mm2 of effective leak at 80 psi. */
export const listening = {
  steps: entry([0.16, 0.35, 0.6], 'common practice, no source; that a restrictor passes no more than .8 mm2: isentropic flow', 'Flow of a leak, as the area (mm2) that passes it under the whole 80 psi, at which it becomes faint, clear and loud for half of all ears.'),
  keener: entry({ coolant: 2.5, outside: 1.5, neighbour: 1.3 } as Readonly<Partial<Record<Place, number>>>, COMMON_PRACTICE, 'A leak counts this many times at a place where it is seen as bubbles (coolant), as soap froth (outside), or heard at an open plug hole (neighbour).'),
  blur: entry(0.35, FROM_MEMORY, 'Spread of these steps between people, engines and places (scale of a logistic in the logarithm).'),
  elsewhere: entry({ part: 0.02, most: 0.05 }, FROM_MEMORY, 'Part of a leak that seems to be heard at the other places too, up to so many mm2: noise travels, but not far.'),
  seepage: entry(0.03, FROM_MEMORY, 'Leak (mm2) of sound valves and joints: now and then a faint hiss.'),
  mistaken: entry({ heard: 0.1, seen: 0.06 }, FROM_MEMORY, 'Chance that what was noted for a place says nothing about it; less where bubbles are seen (coolant, outside).'),
  noted: entry({ heard: [0.3, 0.5, 0.12, 0.08], seen: [0.3, 0.62, 0.05, 0.03] }, FROM_MEMORY, 'What is then noted: nothing, faint, clear or loud. A hiss that is imagined is faint; clear and loud ones were heard elsewhere and noted for this place. A few bubbles rise in any water; clear ones nobody imagines.'),
  sameAgain: entry(0.3, FROM_MEMORY, 'With rockers slack or oil in, the same ears note at a place whose leak has not changed just what they noted before, in this part of the tests; else they listen anew.'),
  throughOpenValve: entry(0.3, 'valve positions computed from the firing order; part from memory', 'Part of a valve leak that is heard at a neighbour whose own valve to the same manifold is open.'),
  throughBridge: entry(0.2, 'valve positions computed from the firing order; part from memory', 'Part of what crosses the gasket that goes on through an open valve of the neighbour, and is heard at the air cleaner or the exhaust.'),
  openUnknown: entry({ intake: 0.45, exhaust: 0.45 }, 'usual firing orders, from memory: next to a cylinder at firing top nearly always one of the two is open', 'Where no firing order is known, which valve of a neighbour stands open.'),
  neighbourSlack: entry({ bridged: 0.85, other: 0.12 }, 'common practice, no source: slack rockers shut its valves; chances from memory', 'With the rockers of that neighbour slack the hiss is still heard there: chance where the gasket leaks, and otherwise.'),
} as const
