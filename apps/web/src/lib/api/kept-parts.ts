/**
 * A value fetched anew, with every part that did not change taken from the one before: what is the same object is not drawn again.
 * Items of lists are recognised by their `id`, others by their place. Answers `before` itself where nothing changed.
 */
export function keptParts<Value>(before: Value | undefined, after: Value): Value {
  return merged(before, after) as Value
}

function merged(before: unknown, after: unknown): unknown {
  if (before === after || typeof before !== 'object' || typeof after !== 'object' || before === null || after === null) return after
  if (Array.isArray(before) || Array.isArray(after)) return Array.isArray(before) && Array.isArray(after) ? list(before, after) : after
  const [old, fresh] = [before as Record<string, unknown>, after as Record<string, unknown>]
  const names = Object.keys(fresh)
  let same = names.length === Object.keys(old).length
  const all: Record<string, unknown> = {}
  for (const name of names) {
    all[name] = merged(old[name], fresh[name])
    same &&= name in old && all[name] === old[name]
  }
  return same ? old : all
}

function list(before: readonly unknown[], after: readonly unknown[]): readonly unknown[] {
  const byId = new Map(before.flatMap((item) => (idOf(item) === undefined ? [] : [[idOf(item), item]])))
  const all = after.map((item, i) => merged(idOf(item) === undefined ? before[i] : byId.get(idOf(item)), item))
  return all.length === before.length && all.every((item, i) => item === before[i]) ? before : all
}

function idOf(item: unknown): unknown {
  return typeof item === 'object' && item !== null && 'id' in item ? item.id : undefined
}
