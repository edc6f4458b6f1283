-- One engine over the years, newest first: fittings, jobs, sessions, findings. $1 the engine, $2 garages of which more than date and
-- name is told (null: all). Every part comes by an index on the engine (findings and sessions keep its id for this).
SELECT epoch_ms(h.at) AS at, h.kind, g.name AS garage,
  CASE WHEN h.own THEN h.plate END AS plate, CASE WHEN h.own THEN h.job END AS job, CASE WHEN h.own THEN h.code END AS code,
  CASE WHEN h.own OR h.kind IN ('session', 'finding') THEN h.text END AS text
FROM (
  SELECT x.*, $2::uuid[] IS NULL OR x.garage_id = ANY ($2) AS own FROM (
    SELECT f."from" AS at, 'fitted' AS kind, v.garage_id, v.plate, NULL::uuid AS job, NULL AS code, v.description AS text
      FROM fitting f JOIN vehicle v ON v.id = f.vehicle_id WHERE f.engine_id = $1
    UNION ALL
    SELECT f.until, 'removed', v.garage_id, v.plate, NULL, NULL, v.description
      FROM fitting f JOIN vehicle v ON v.id = f.vehicle_id WHERE f.engine_id = $1 AND f.until IS NOT NULL
    UNION ALL
    SELECT j.booked_at, 'job', j.garage_id, v.plate, j.id, j.code, j.complaint
      FROM job j JOIN vehicle v ON v.id = j.vehicle_id WHERE j.engine_id = $1
    UNION ALL
    SELECT s.opened_at, 'session', j.garage_id, v.plate, j.id, j.code, s.purpose
      FROM session s JOIN job j ON j.id = s.job_id JOIN vehicle v ON v.id = j.vehicle_id WHERE s.engine_id = $1
    UNION ALL
    SELECT fi.at, 'finding', j.garage_id, v.plate, j.id, j.code, fi.seen
      FROM finding fi JOIN job j ON j.id = fi.job_id JOIN vehicle v ON v.id = j.vehicle_id
      WHERE fi.engine_id = $1 AND NOT EXISTS (SELECT FROM finding fr WHERE fr.replaces = fi.id)) x) h
JOIN garage g ON g.id = h.garage_id
ORDER BY h.at DESC, h.kind LIMIT 1000
