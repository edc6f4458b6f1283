-- Keeps one reading with its trail entry and its event: one statement, one round trip, one transaction.
-- Plan: everything by primary key; generic after five runs. Locks: the session's row by its foreign key, and through the trigger of
-- trail_entry the head of the engine's trail: writers of one engine wait there for each other, and only there. A reading that is under way
-- while its session is being closed may be kept just behind the closing; it was live when it was sent.
-- Nothing is written when the reading is there already, the session is closed to it, the taker is unknown, or engine or family were
-- edited since the caller checked the reading against them; the row that comes back says which.
WITH facts AS MATERIALIZED (
  SELECT s.closed_at IS NOT NULL AS closed, e.version AS engine_version, coalesce(f.version, 0) AS family_version,
    $17::uuid IS NULL OR EXISTS (SELECT 1 FROM person WHERE id = $17::uuid) AS taker_known
  FROM session s JOIN engine e ON e.id = s.engine_id LEFT JOIN engine_family f ON f.id = e.family_id
  WHERE s.id = $2::uuid
), prior AS MATERIALIZED (
  SELECT request_hash, received_at, state FROM reading WHERE id = $1::uuid
), kept AS (
  INSERT INTO reading (id, session_id, engine_id, test, cylinder, body, pressure_pa, state, replaces, withdrawn, reason,
    taken_at, taken_by_id, tablet_id, app_id, offline, request_hash)
  SELECT $1::uuid, $2::uuid, $3::uuid, $6::text, $7::int, $8::jsonb, $9::float8, CASE WHEN closed THEN 'unplaced' ELSE 'placed' END, $10::uuid, $11::boolean,
    $12::text, $13::timestamptz, $14::uuid, $15::uuid, $16::uuid, $18::boolean, $19::text
  FROM facts
  WHERE engine_version = $4::int AND family_version = $5::int AND taker_known AND (NOT closed OR $18::boolean) AND NOT EXISTS (SELECT 1 FROM prior)
  ON CONFLICT (id) DO NOTHING
  RETURNING received_at, state
), trail AS (
  INSERT INTO trail_entry (id, engine_id, job_id, garage_id, kind, actor, body)
  SELECT $21::uuid, $3::uuid, $22::uuid, $23::uuid, $24::text, $20::text, CASE kept.state WHEN 'placed' THEN $25::text ELSE $26::text END FROM kept
), event AS (
  -- $27 is an object up to the inside of its last field, the reading: what only the database knows is written behind it.
  INSERT INTO outbox_event (kind, garage_id, job_id, engine_id, body)
  SELECT 'reading.kept', $23::uuid, $22::uuid, $3::uuid,
    ($27::text || ',"state":"' || kept.state || '","receivedAt":"' || to_char(kept.received_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') || '"}}')::jsonb
  FROM kept
)
SELECT facts.closed, facts.engine_version = $4::int AND facts.family_version = $5::int AS "sameEngine", facts.taker_known AS "takerKnown",
  prior.request_hash AS "priorHash", coalesce(kept.received_at, prior.received_at) AS "receivedAt", coalesce(kept.state, prior.state) AS state,
  kept.state IS NOT NULL AS "isNew"
FROM facts LEFT JOIN kept ON true LEFT JOIN prior ON true
