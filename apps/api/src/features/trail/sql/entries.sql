-- A page of a trail: of an engine ($1) or a job ($2), after a sequence number. By trail_entry(engine_id, seq) or (job_id).
SELECT t.id, t.engine_id AS engine, t.job_id AS job, t.garage_id AS garage, t.seq::int AS seq, t.at, t.kind, t.actor, t.body,
  t.previous_hash AS "previousHash", t.hash, coalesce(p.name, o.name, b.name) AS name
FROM trail_entry t
  LEFT JOIN person p ON t.actor::json ->> 'kind' = 'person' AND p.id = (t.actor::json ->> 'id')::uuid
  LEFT JOIN outside_app o ON t.actor::json ->> 'kind' = 'app' AND o.id = (t.actor::json ->> 'id')::uuid
  LEFT JOIN tablet b ON t.actor::json ->> 'kind' = 'tablet' AND b.id = (t.actor::json ->> 'id')::uuid
WHERE (t.engine_id = $1::uuid OR t.job_id = $2::uuid) AND t.seq > $3
ORDER BY t.seq LIMIT $4
