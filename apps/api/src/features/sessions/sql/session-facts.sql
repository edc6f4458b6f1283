-- What a reading is checked against before it is kept. By primary keys only.
SELECT s.id AS session, s.job_id AS job, s.engine_id AS engine, s.app_ids AS apps, s.conditions, s.tester_specification AS tester, j.garage_id AS garage,
  e.version AS "engineVersion", coalesce(f.version, 0) AS "familyVersion", coalesce(f.specification, '{}') || e.specification AS description
FROM session s JOIN job j ON j.id = s.job_id JOIN engine e ON e.id = s.engine_id LEFT JOIN engine_family f ON f.id = e.family_id
WHERE s.id = $1
