/**
 * PostgreSQL's five-character error code (SQLSTATE, appendix A of its manual) of an error thrown by pg or, wrapped in one or two
 * layers, by Prisma; undefined when the error came from elsewhere.
 */
export function sqlStateOf(error: unknown): string | undefined {
  for (const layer of layersOf(error)) {
    for (const key of ['code', 'originalCode'] as const) {
      const value = (layer as Record<string, unknown>)[key]
      if (typeof value === 'string' && /^[0-9A-Z]{5}$/.test(value) && !/^P\d{4}$/.test(value)) return value
      if (typeof value === 'string' && PRISMA_CODES[value] !== undefined) return PRISMA_CODES[value]
    }
  }
  return undefined
}

/** The name of the violated constraint or index, where PostgreSQL says it. */
export function constraintOf(error: unknown): string | undefined {
  for (const layer of layersOf(error)) {
    const { constraint, originalMessage, message } = layer as { constraint?: unknown; originalMessage?: unknown; message?: unknown }
    if (typeof constraint === 'string') return constraint
    const index = (constraint as { index?: unknown } | undefined)?.index
    if (typeof index === 'string') return index
    const named = /constraint "([^"]+)"/.exec(String(originalMessage ?? message ?? ''))
    if (named !== null) return named[1]
  }
  return undefined
}

/** Prisma's own codes for what PostgreSQL said, where it hides the original. */
const PRISMA_CODES: Readonly<Record<string, string>> = { P2002: '23505', P2003: '23503', P2034: '40001', P2020: '22003' }

/** An error, its causes and the error that Prisma's adapter keeps in `meta`: the innermost first, since it is the exact one. */
function layersOf(error: unknown): object[] {
  const layers: object[] = []
  let at: unknown = error
  while (typeof at === 'object' && at !== null && layers.length < 6) {
    layers.unshift(at)
    const { cause, meta } = at as { cause?: unknown; meta?: { driverAdapterError?: unknown } }
    at = meta?.driverAdapterError ?? cause
  }
  return layers
}
