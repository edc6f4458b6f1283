-- Sessions of a job ($1) or the one with an id ($2). By session(job_id, opened_at) or the primary key.
SELECT s.id, s.job_id AS job, j.garage_id AS garage, j.bay_id AS bay, s.engine_id AS engine, s.purpose, s.conditions,
  CASE WHEN g.id IS NOT NULL THEN json_build_object('id', g.id, 'name', g.name) END AS gauge, s.gauge_specification AS "gaugeSpecification",
  CASE WHEN t.id IS NOT NULL THEN json_build_object('id', t.id, 'name', t.name) END AS tester, s.tester_specification AS "testerSpecification",
  s.app_ids AS apps, s.opened_at AS "openedAt", CASE WHEN p.id IS NOT NULL THEN json_build_object('id', p.id, 'name', p.name) END AS "openedBy",
  s.closed_at AS "closedAt", s.version
FROM session s JOIN job j ON j.id = s.job_id
  LEFT JOIN gauge g ON g.id = s.gauge_id LEFT JOIN gauge t ON t.id = s.tester_id LEFT JOIN person p ON p.id = s.opened_by_id
WHERE s.job_id = $1::uuid OR s.id = $2::uuid
ORDER BY s.opened_at, s.id
