-- What a case is built from, without its readings: the engine with its family's values under its own, its history, the air of the
-- garage, what was told at book-in, and the sessions that speak of the engine as it is now. By primary keys and session(job_id, ...).
-- Sessions from before the latest finished repair speak of another state of the engine: they are left out once there are later ones.
SELECT j.id AS job, j.garage_id AS garage, j.bay_id AS bay, j.engine_id AS engine, g.elevation_m AS "elevationM", j.prior_work AS "priorWork",
  coalesce(f.specification, '{}') || e.specification AS description, e.history,
  coalesce((SELECT json_agg(json_build_object('id', s.id, 'conditions', s.conditions, 'gauge', s.gauge_specification, 'tester', s.tester_specification, 'repaired', s.received_at > r.finished_at)
      ORDER BY s.id) FROM session s WHERE s.job_id = j.id), '[]') AS sessions
FROM job j JOIN garage g ON g.id = j.garage_id JOIN engine e ON e.id = j.engine_id LEFT JOIN engine_family f ON f.id = e.family_id
  LEFT JOIN LATERAL (SELECT max(finished_at) AS finished_at FROM repair WHERE job_id = j.id) r ON true
WHERE j.id = $1
