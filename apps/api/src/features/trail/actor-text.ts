import type { Actor } from '@evenbore/contract'
import canonicalize from 'canonicalize'

/** Who acted, as the trail keeps it: ids only, so that erasing a person leaves the record whole. */
export type TrailActor = { readonly kind: 'person' | 'tablet' | 'app'; readonly id: string; readonly tablet?: string }

/** The actor as kept: a person signed in on a tablet is the person, with the tablet beside it. */
export function trailActor(actor: Actor): TrailActor {
  if (actor.kind === 'app') return { kind: 'app', id: actor.app }
  if (actor.kind === 'person') return { kind: 'person', id: actor.person }
  return actor.person === null ? { kind: 'tablet', id: actor.tablet } : { kind: 'person', id: actor.person, tablet: actor.tablet }
}

/**
 * JSON in its one canonical form (RFC 8785): what is hashed is what is kept, whatever the order of fields was.
 * @throws TypeError for what JSON cannot hold (a bug: only checked values come here)
 */
export function canonicalText(value: unknown): string {
  const text = canonicalize(value)
  if (text === undefined) throw new TypeError('a trail entry must be JSON')
  return text
}
