import type { Actor, Me } from '@evenbore/contract'

/** Who the permission table is asked about, from what the server said of the caller. */
export function actorFrom(me: Me): Actor {
  const roles = me.roles.map(({ garage, role, approvalLimitMinor }) => ({ garage, role, limitMinor: approvalLimitMinor ?? null }))
  if (me.kind === 'tablet' && me.tablet) {
    return { kind: 'tablet', tablet: me.tablet.id, garage: me.tablet.garage, bay: me.tablet.bay, person: me.person?.id ?? null, roles }
  }
  if (me.kind === 'app') return { kind: 'app', app: '', scopes: me.scopes, garages: me.garages.map(({ id }) => id) }
  return {
    kind: 'person',
    person: me.person?.id ?? '',
    roles,
    deputyFor: me.deputyFor.map(({ manager, garage, approvalLimitMinor }) => ({ manager: manager.id, garage, limitMinor: approvalLimitMinor })),
  }
}
