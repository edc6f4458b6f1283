-- Retests with their dates: one ($1), those of a job ($2, also those that the job fulfils), or those of a garage ($3): a page after
-- ($5 date, $6 id), $4 true leaving out the decided ones and promises that a visit under way has taken up. Overdue is counted in days
-- of the garage's own time zone. By primary key, retest(job_id), or the garage's jobs.
SELECT * FROM (
  SELECT r.id, r.job_id AS job, j.garage_id AS garage, j.bay_id AS bay, j.code, r.engine_id AS engine, r.kind, r.reason, r.baseline_session_id AS "baselineSession",
    r.session_id AS session, r.fulfilled_by_job_id AS "fulfilledByJob", r.repair_id AS repair, r.outcome, r.outcome_reason AS "outcomeReason", r.comparison, r.decided_at AS "decidedAt",
    CASE WHEN p.id IS NOT NULL THEN json_build_object('id', p.id, 'name', p.name) END AS "decidedBy", r.created_at AS "createdAt",
    coalesce(d.dates, '[]') AS dates, coalesce(d.latest, 'infinity'::date)::text AS due,
    CASE WHEN r.outcome IS NULL AND d.latest < (now() AT TIME ZONE g.time_zone)::date THEN (now() AT TIME ZONE g.time_zone)::date - d.latest END AS "overdueDays",
    j.handed_over_at IS NOT NULL OR j.cancelled_at IS NOT NULL AS "jobOver"
  FROM retest r JOIN job j ON j.id = r.job_id JOIN garage g ON g.id = j.garage_id LEFT JOIN person p ON p.id = r.decided_by_id
    LEFT JOIN LATERAL (
      SELECT json_agg(json_build_object('id', t.id, 'latest', t.latest, 'odometerKm', t.odometer_km, 'event', t.event, 'bookedFor', to_char(t.booked_for AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"'),
          'reason', t.reason, 'by', CASE WHEN tp.id IS NOT NULL THEN json_build_object('id', tp.id, 'name', tp.name) END, 'at', to_char(t.at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')) ORDER BY t.at, t.id) AS dates,
        (array_agg(t.latest ORDER BY t.at DESC, t.id DESC))[1] AS latest
      FROM retest_date t LEFT JOIN person tp ON tp.id = t.by_id WHERE t.retest_id = r.id) d ON true
  WHERE r.id = $1::uuid OR r.job_id = $2::uuid OR r.fulfilled_by_job_id = $2::uuid OR j.garage_id = $3::uuid
) listed
WHERE (NOT $4::boolean OR outcome IS NULL AND NOT (kind = 'release' AND "jobOver") AND NOT (kind = 'follow-up' AND "fulfilledByJob" IS NOT NULL))
  AND ($5::text IS NULL OR (due, id) > ($5::text, $6::uuid))
ORDER BY due, id LIMIT $7
