-- The latest quote version of each open job of a garage ($1) where no answer stands: none was given, or the approval was withdrawn.
-- Walks the open jobs (index job_open), looking up the latest version and answer of each.
SELECT j.id AS job, j.code, v.plate, v.description AS vehicle, q.id, q.number, q.sent_at AS "sentAt", q.author_id AS "authorId", p.name AS author
FROM job j JOIN vehicle v ON v.id = j.vehicle_id
  JOIN LATERAL (SELECT * FROM quote_version WHERE job_id = j.id ORDER BY number DESC LIMIT 1) q ON true
  LEFT JOIN LATERAL (SELECT kind FROM approval WHERE quote_version_id = q.id ORDER BY at DESC, id DESC LIMIT 1) a ON true
  JOIN person p ON p.id = q.author_id
WHERE j.garage_id = $1 AND j.handed_over_at IS NULL AND j.cancelled_at IS NULL AND (a.kind IS NULL OR a.kind = 'withdrawn')
ORDER BY q.sent_at
