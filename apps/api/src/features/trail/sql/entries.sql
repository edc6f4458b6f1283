-- A page of a trail: of an engine ($1) or a job ($2), after a sequence number. By trail_entry(engine_id, seq) or (job_id).
SELECT t.id, t.engine_id AS engine, t.job_id AS job, t.garage_id AS garage, t.seq::int AS seq, t.at, t.kind, t.actor, t.body,
  t.previous_hash AS "previousHash", t.hash, coalesce(p.name, o.name, b.name) AS name
FROM trail_entry t
  LEFT JOIN person p ON p.id = CASE t.actor::json ->> 'kind' WHEN 'person' THEN (t.actor::json ->> 'id')::uuid END
  LEFT JOIN outside_app o ON o.id = CASE t.actor::json ->> 'kind' WHEN 'app' THEN (t.actor::json ->> 'id')::uuid END
  LEFT JOIN tablet b ON b.id = CASE t.actor::json ->> 'kind' WHEN 'tablet' THEN (t.actor::json ->> 'id')::uuid END
WHERE (t.engine_id = $1::uuid OR t.job_id = $2::uuid) AND t.seq > $3
ORDER BY t.seq LIMIT $4
