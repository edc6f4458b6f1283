-- Keeps one reading with its trail entry and its event: one statement, one round trip, one transaction.
-- Row locks: the session (shared, so that closing it waits for readings under way and the other way round) and, through the trigger
-- of trail_entry, the head of the engine's trail: writers of one engine wait there for each other, and only there.
-- Nothing is written when the reading is there already, the session is closed to it, the taker is unknown, or engine or family were
-- edited since the caller checked the reading against them; the row that comes back says which.
WITH facts AS MATERIALIZED (
  SELECT s.closed_at IS NOT NULL AS closed, e.version AS engine_version, coalesce(f.version, 0) AS family_version,
    $17::uuid IS NULL OR EXISTS (SELECT 1 FROM person WHERE id = $17) AS taker_known
  FROM session s JOIN engine e ON e.id = s.engine_id LEFT JOIN engine_family f ON f.id = e.family_id
  WHERE s.id = $2 FOR SHARE OF s
), prior AS MATERIALIZED (
  SELECT request_hash, received_at, state FROM reading WHERE id = $1
), kept AS (
  INSERT INTO reading (id, session_id, engine_id, test, cylinder, body, pressure_pa, state, replaces, withdrawn, reason,
    taken_at, taken_by_id, tablet_id, app_id, offline, request_hash)
  SELECT $1::uuid, $2::uuid, $3::uuid, $6, $7::int, $8::jsonb, $9::float8, CASE WHEN closed THEN 'unplaced' ELSE 'placed' END, $10::uuid, $11::boolean,
    $12, $13::timestamptz, $14::uuid, $15::uuid, $16::uuid, $18::boolean, $19
  FROM facts
  WHERE engine_version = $4 AND family_version = $5 AND taker_known AND (NOT closed OR $18) AND NOT EXISTS (SELECT 1 FROM prior)
  ON CONFLICT (id) DO NOTHING
  RETURNING received_at, state
), trail AS (
  -- The second entry and event are of the engine and the job that a moved reading leaves. In the order of engines, so that two moves
  -- against each other do not wait in a circle.
  INSERT INTO trail_entry (id, engine_id, job_id, garage_id, kind, actor, body)
  SELECT t.id, t.engine, t.job, t.garage, t.kind, $20, CASE kept.state WHEN 'placed' THEN t.body ELSE t.body_unplaced END
  FROM kept CROSS JOIN (VALUES
    ($21::uuid, $3::uuid, $22::uuid, $23::uuid, $24, $25, $26),
    ($27::uuid, $28::uuid, $29::uuid, $30::uuid, $31, $32, $32)) AS t(id, engine, job, garage, kind, body, body_unplaced)
  WHERE t.engine IS NOT NULL ORDER BY t.engine
), event AS (
  INSERT INTO outbox_event (kind, garage_id, job_id, engine_id, body)
  SELECT 'reading.kept', t.garage, t.job, t.engine, CASE WHEN t.body ? 'reading'
    THEN jsonb_set(t.body, '{reading}', (t.body -> 'reading') || jsonb_build_object('state', kept.state,
      'receivedAt', to_char(kept.received_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')))
    ELSE t.body END
  FROM kept CROSS JOIN (VALUES ($23::uuid, $22::uuid, $3::uuid, $33::jsonb), ($30::uuid, $29::uuid, $28::uuid, $34::jsonb)) AS t(garage, job, engine, body)
  WHERE t.engine IS NOT NULL
)
SELECT facts.closed, facts.engine_version = $4 AND facts.family_version = $5 AS "sameEngine", facts.taker_known AS "takerKnown",
  prior.request_hash AS "priorHash", coalesce(kept.received_at, prior.received_at) AS "receivedAt", coalesce(kept.state, prior.state) AS state,
  kept.state IS NOT NULL AS "isNew"
FROM facts LEFT JOIN kept ON true LEFT JOIN prior ON true
