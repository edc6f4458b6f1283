-- Keeps readings with their trail entries and their events: one statement, one round trip, one transaction for all of them.
-- $1 is an array of objects as the type KeepReading has them, no id twice.
-- Plan: everything by primary key (a subquery with LIMIT is never turned into a join over whole tables); generic after five runs.
-- Locks: each session's row by its foreign key, and through the trigger of trail_entry the head of the engine's trail: writers of one
-- engine wait there for each other, and only there; heads are taken in the order of their engines, so that two runs never wait for each
-- other. A reading that is under way while its session is being closed may be kept just behind the closing; it was live when it was sent.
-- Nothing is written of a reading that is there already, whose session is closed to it, whose taker is unknown, or whose engine or family
-- were edited since the caller checked the reading against them; its row that comes back says which. No row: no such session.
WITH asked AS MATERIALIZED (
  SELECT * FROM json_to_recordset($1::json) AS a("at" int, id uuid, session uuid, engine uuid, job uuid, garage uuid, "engineVersion" int, "familyVersion" int,
    test text, cylinder int, body jsonb, "pressurePa" float8, replaces uuid, withdrawn boolean, reason text, "takenAt" timestamptz, "takenBy" uuid, tablet uuid, app uuid,
    "unprovenTaker" uuid, offline boolean, "requestHash" text, actor text, "entryId" uuid, kind text, told text, "toldUnplaced" text, "eventHead" text)
), facts AS MATERIALIZED (
  SELECT a.*, s.closed_at IS NOT NULL AS closed, e.version = a."engineVersion" AND coalesce(f.version, 0) = a."familyVersion" AS same_engine,
    a."unprovenTaker" IS NULL OR EXISTS (SELECT 1 FROM person WHERE person.id = a."unprovenTaker") AS taker_known,
    prior.request_hash AS prior_hash, prior.received_at AS prior_received_at, prior.state AS prior_state
  FROM asked a
    JOIN LATERAL (SELECT closed_at, engine_id FROM session WHERE session.id = a.session LIMIT 1) s ON true
    JOIN LATERAL (SELECT version, family_id FROM engine WHERE engine.id = s.engine_id LIMIT 1) e ON true
    LEFT JOIN LATERAL (SELECT version FROM engine_family WHERE engine_family.id = e.family_id LIMIT 1) f ON true
    LEFT JOIN LATERAL (SELECT request_hash, received_at, state FROM reading WHERE reading.id = a.id LIMIT 1) prior ON true
), kept AS (
  INSERT INTO reading (id, session_id, engine_id, test, cylinder, body, pressure_pa, state, replaces, withdrawn, reason,
    taken_at, taken_by_id, tablet_id, app_id, offline, request_hash)
  SELECT id, session, engine, test, cylinder, body, "pressurePa", CASE WHEN closed THEN 'unplaced' ELSE 'placed' END, replaces, withdrawn, reason,
    "takenAt", "takenBy", tablet, app, offline, "requestHash"
  FROM facts
  WHERE same_engine AND taker_known AND (NOT closed OR offline) AND prior_hash IS NULL
  ORDER BY "at"
  ON CONFLICT (id) DO NOTHING
  RETURNING id, received_at, state
), trail AS (
  INSERT INTO trail_entry (id, engine_id, job_id, garage_id, kind, actor, body)
  SELECT "entryId", engine, job, garage, kind, actor, CASE kept.state WHEN 'placed' THEN told ELSE "toldUnplaced" END
  FROM kept JOIN facts USING (id)
  ORDER BY engine, "at"
), event AS (
  -- The head is an object up to the inside of its last field, the reading: what only the database knows is written behind it.
  INSERT INTO outbox_event (kind, garage_id, job_id, engine_id, body)
  SELECT 'reading.kept', garage, job, engine,
    ("eventHead" || ',"state":"' || kept.state || '","receivedAt":"' || to_char(kept.received_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') || '"}}')::jsonb
  FROM kept JOIN facts USING (id)
  ORDER BY "at"
)
SELECT facts.id, closed, same_engine AS "sameEngine", taker_known AS "takerKnown", prior_hash AS "priorHash",
  coalesce(kept.received_at, prior_received_at) AS "receivedAt", coalesce(kept.state, prior_state) AS state, kept.state IS NOT NULL AS "isNew"
FROM facts LEFT JOIN kept USING (id)
