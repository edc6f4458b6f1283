-- The garage seen from above, in one statement: its bays, the facts of every open job, and the retests that are due. $1 is the garage.
-- Open retests come by retest_open; the answer is JSON made here, parsed once by the driver.
SELECT json_build_object(
  'garage', g.id,
  'name', g.name,
  'bays', (SELECT coalesce(json_agg(json_build_object('id', b.id, 'name', b.name) ORDER BY b.position, b.name), '[]')
    FROM bay b WHERE b.garage_id = g.id AND b.closed_at IS NULL),
  'jobs', (SELECT coalesce(json_agg(open), '[]') FROM (
    --facts
  ) open),
  'retests', (SELECT coalesce(json_agg(owed ORDER BY owed.kind DESC, owed."overdueDays" DESC NULLS LAST, owed.due, owed.code), '[]') FROM (
    SELECT r.id AS retest, j.id AS job, j.code, v.plate, r.kind, r.reason, d.latest AS due,
      CASE WHEN d.latest < day.today THEN day.today - d.latest END AS "overdueDays", epoch_ms(d.booked_for) AS "bookedFor"
    FROM retest r
    JOIN job j ON j.id = r.job_id AND j.garage_id = $1
    JOIN vehicle v ON v.id = j.vehicle_id
    CROSS JOIN (SELECT (now() AT TIME ZONE gz.time_zone)::date AS today FROM garage gz WHERE gz.id = $1) day
    LEFT JOIN LATERAL (SELECT latest, booked_for FROM retest_date WHERE retest_id = r.id ORDER BY at DESC, id DESC LIMIT 1) d ON true
    WHERE r.outcome IS NULL
      AND (r.kind = 'release' AND j.handed_over_at IS NULL AND j.cancelled_at IS NULL
        -- A promise that a job under way fulfils is on the floor as that job. Two weeks are enough to ring and book.
        OR r.kind = 'follow-up' AND r.fulfilled_by_job_id IS NULL AND d.latest <= day.today + 14)) owed)
) AS floor
FROM garage g WHERE g.id = $1
