/**
 * What an export holds, in an order in which it can be read back: each line names its kind. `$1` is the garage. Secrets (hashes of
 * passwords, PINs, keys) never leave; people are those who work or worked in the garage. An engine's trail is given whole, so that it can
 * be checked elsewhere, but what other garages quoted stays with them: hash, kind and time only.
 */
const OF_JOBS = 'job_id IN (SELECT id FROM job WHERE garage_id = $1)'
const ENGINES = '(SELECT engine_id FROM job WHERE garage_id = $1)'
const NOT_OURS = `t.garage_id IS DISTINCT FROM $1 AND (t.kind LIKE 'quote-%' OR t.kind LIKE 'authorisation-%' OR t.kind = 'approval-withdrawn')`

export type Exported = { readonly kind: string; readonly sql: string }

const whole = (kind: string, table: string, where: string): Exported => ({ kind, sql: `SELECT to_jsonb(t) AS record FROM ${table} t WHERE ${where} ORDER BY t.id` })

export const EXPORTED: readonly Exported[] = [
  whole('garage', 'garage', 't.id = $1'),
  whole('bay', 'bay', 't.garage_id = $1'),
  whole('gauge', 'gauge', 't.garage_id = $1'),
  whole('catalogue-item', 'catalogue_item', 't.garage_id = $1'),
  {
    kind: 'person',
    sql: `SELECT to_jsonb(p) AS record FROM (SELECT id, name, email, locale, left_at, created_at FROM person WHERE id IN (SELECT person_id FROM person_role WHERE garage_id = $1 OR garage_id IS NULL)
      OR id IN (SELECT taken_by_id FROM reading r JOIN session s ON s.id = r.session_id WHERE s.${OF_JOBS}) ORDER BY id) p`,
  },
  whole('person-role', 'person_role', 't.garage_id = $1 OR t.garage_id IS NULL'),
  whole('deputy', 'deputy', 't.garage_id = $1'),
  { kind: 'tablet', sql: 'SELECT to_jsonb(t) AS record FROM (SELECT id, garage_id, bay_id, name, enrolled_at, revoked_at, created_at FROM tablet WHERE garage_id = $1 ORDER BY id) t' },
  whole('customer', 'customer', 't.garage_id = $1'),
  whole('vehicle', 'vehicle', 't.garage_id = $1'),
  whole('engine-family', 'engine_family', `t.id IN (SELECT family_id FROM engine WHERE id IN ${ENGINES})`),
  whole('engine', 'engine', `t.id IN ${ENGINES}`),
  whole('fitting', 'fitting', 't.vehicle_id IN (SELECT id FROM vehicle WHERE garage_id = $1)'),
  whole('job', 'job', 't.garage_id = $1'),
  ...(['contact', 'session'] as const).map((table) => whole(table, table, `t.${OF_JOBS}`)),
  whole('reading', 'reading', `t.session_id IN (SELECT id FROM session WHERE ${OF_JOBS})`),
  whole('photo', 'photo', `t.${OF_JOBS}`),
  { kind: 'photo-withdrawal', sql: `SELECT to_jsonb(t) AS record FROM photo_withdrawal t WHERE t.photo_id IN (SELECT id FROM photo WHERE ${OF_JOBS}) ORDER BY t.photo_id` },
  ...(['evaluation', 'suggestion_decision', 'quote_draft', 'quote_version'] as const).map((table) => whole(table.replaceAll('_', '-'), table, `t.${OF_JOBS}`)),
  whole('quote-line', 'quote_line', `t.quote_version_id IN (SELECT id FROM quote_version WHERE ${OF_JOBS})`),
  whole('approval', 'approval', `t.quote_version_id IN (SELECT id FROM quote_version WHERE ${OF_JOBS})`),
  ...(['authorisation', 'parts_order', 'repair', 'finding', 'retest'] as const).map((table) => whole(table.replaceAll('_', '-'), table, `t.${OF_JOBS}`)),
  whole('retest-date', 'retest_date', `t.retest_id IN (SELECT id FROM retest WHERE ${OF_JOBS})`),
  {
    kind: 'trail-entry',
    sql: `SELECT CASE WHEN ${NOT_OURS} THEN to_jsonb(t) - 'actor' - 'body' ELSE to_jsonb(t) END AS record FROM trail_entry t WHERE t.engine_id IN ${ENGINES} ORDER BY t.engine_id, t.seq`,
  },
]
