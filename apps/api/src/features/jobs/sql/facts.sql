-- What decides where each job stands, and what lists show of it: one row a job, for `standing.ts`. Whoever reads it says which jobs
-- are wanted (a statement that answers ids). No locks. Times are numbers (epoch_ms): making text of a dozen times a row costs more
-- than the rest.
-- Plan: the wanted ids once, then each kind of fact for all of them together, by its index on the job; never a table as a whole once
-- it is large. One look for each job and fact (LATERAL ... LIMIT 1) took twice as long for 200 jobs: setting up a sort 1,400 times.
WITH wanted AS MATERIALIZED (
  --wanted
), v AS MATERIALIZED (
  SELECT q.id, q.job_id, q.number, q.sent_at, q.total_minor FROM wanted w JOIN quote_version q ON q.job_id = w.id
), answers AS (
  SELECT DISTINCT ON (v.id) v.id, a.kind, a.at FROM v JOIN approval a ON a.quote_version_id = v.id ORDER BY v.id, a.at DESC, a.id DESC
), words AS (
  SELECT DISTINCT ON (v.id) v.id, o.kind, o.at, o.amount_minor FROM v JOIN authorisation o ON o.job_id = v.job_id AND o.quote_version_id = v.id ORDER BY v.id, o.at DESC, o.id DESC
), versions AS (
  SELECT v.job_id, json_agg(json_build_object('sentAt', epoch_ms(v.sent_at), 'totalMinor', v.total_minor, 'answer', a.kind, 'answeredAt', epoch_ms(a.at),
      'word', w.kind, 'wordAt', epoch_ms(w.at), 'givenMinor', CASE WHEN w.kind = 'given' THEN w.amount_minor END) ORDER BY v.number) AS list
  FROM v LEFT JOIN answers a ON a.id = v.id LEFT JOIN words w ON w.id = v.id GROUP BY v.job_id
), sessions AS (
  SELECT s.job_id, epoch_ms(min(s.opened_at)) AS first, epoch_ms(max(s.received_at) FILTER (WHERE s.purpose = 'test')) AS last_test,
    (array_agg(s.opened_by_id ORDER BY s.opened_at DESC))[1] AS by
  FROM wanted w JOIN session s ON s.job_id = w.id GROUP BY s.job_id
), parts AS (
  SELECT DISTINCT ON (p.job_id) p.job_id, json_build_object('orderedAt', epoch_ms(p.ordered_at), 'expectedAt', epoch_ms(p.expected_at), 'text', p.text) AS fact
  FROM wanted w JOIN parts_order p ON p.job_id = w.id WHERE p.arrived_at IS NULL ORDER BY p.job_id, p.expected_at DESC NULLS FIRST, p.ordered_at
), repairs AS (
  SELECT DISTINCT ON (r.job_id) r.job_id, json_build_object('startedAt', epoch_ms(r.started_at), 'finishedAt', epoch_ms(r.finished_at), 'by', p.name) AS fact
  FROM wanted w JOIN repair r ON r.job_id = w.id LEFT JOIN person p ON p.id = r.started_by_id ORDER BY r.job_id, r.started_at DESC, r.id DESC
), releases AS (
  SELECT DISTINCT ON (t.job_id) t.job_id, json_build_object('outcome', t.outcome, 'decidedAt', epoch_ms(t.decided_at)) AS fact
  FROM wanted w JOIN retest t ON t.job_id = w.id WHERE t.kind = 'release' AND t.outcome IS NOT NULL ORDER BY t.job_id, t.decided_at DESC
), talks AS (
  SELECT DISTINCT ON (c.job_id) c.job_id, epoch_ms(c.next_at) AS next
  FROM wanted w JOIN contact c ON c.job_id = w.id WHERE c.kind <> 'note' OR c.next_at IS NOT NULL ORDER BY c.job_id, c.at DESC, c.id DESC
), unplaced AS (
  SELECT DISTINCT s.job_id FROM reading u JOIN session s ON s.id = u.session_id
  WHERE u.state = 'unplaced' AND NOT u.withdrawn AND s.job_id IN (SELECT id FROM wanted) AND NOT EXISTS (SELECT FROM reading ur WHERE ur.replaces = u.id)
)
SELECT
  j.id, j.garage_id AS garage, j.code, v.plate, v.description AS vehicle, c.name AS customer, j.complaint,
  j.bay_id AS bay, b.name AS "bayName", j.engine_id AS engine,
  coalesce((e.specification ->> 'cylinders')::int, (f.specification ->> 'cylinders')::int) AS cylinders,
  epoch_ms(j.booked_at) AS "bookedAt", epoch_ms(j.placed_at) AS "placedAt", epoch_ms(j.promised_at) AS "promisedAt",
  epoch_ms(j.handed_over_at) AS "handedOverAt", epoch_ms(j.cancelled_at) AS "cancelledAt", epoch_ms(j.testing_closed_at) AS "testingClosedAt",
  s.first AS "firstSessionAt", s.last_test AS "lastTestSessionAt", sp.name AS "sessionBy",
  d.job_id IS NOT NULL AS draft,
  coalesce(q.list, '[]') AS versions, g.tolerance_basis_points AS "toleranceBasisPoints",
  p.fact AS parts, r.fact AS repair, t.fact AS release, u.job_id IS NOT NULL AS unplaced, n.next AS "nextContactAt"
FROM wanted
JOIN job j ON j.id = wanted.id
JOIN garage g ON g.id = j.garage_id
JOIN customer c ON c.id = j.customer_id
JOIN vehicle v ON v.id = j.vehicle_id
JOIN engine e ON e.id = j.engine_id
LEFT JOIN engine_family f ON f.id = e.family_id
LEFT JOIN bay b ON b.id = j.bay_id
LEFT JOIN sessions s ON s.job_id = j.id
LEFT JOIN person sp ON sp.id = s.by
LEFT JOIN quote_draft d ON d.job_id = j.id
LEFT JOIN versions q ON q.job_id = j.id
LEFT JOIN parts p ON p.job_id = j.id
LEFT JOIN repairs r ON r.job_id = j.id
LEFT JOIN releases t ON t.job_id = j.id
LEFT JOIN talks n ON n.job_id = j.id
LEFT JOIN unplaced u ON u.job_id = j.id
