-- What decides where each job stands, and what lists show of it: one row a job, for `standing.ts`. Whoever reads it adds a WHERE on j.
-- Plan: nested loops, each lateral part one look into an index by job (or by quote version); nothing here reads a whole table as
-- long as the WHERE names few jobs. No locks. Times are numbers (epoch_ms): making text of a dozen times a row costs more than the rest.
SELECT
  j.id, j.garage_id AS garage, j.code, v.plate, v.description AS vehicle, c.name AS customer, j.complaint,
  j.bay_id AS bay, b.name AS "bayName", j.engine_id AS engine,
  coalesce((e.specification ->> 'cylinders')::int, (f.specification ->> 'cylinders')::int) AS cylinders,
  epoch_ms(j.booked_at) AS "bookedAt", epoch_ms(j.placed_at) AS "placedAt", epoch_ms(j.promised_at) AS "promisedAt",
  epoch_ms(j.handed_over_at) AS "handedOverAt", epoch_ms(j.cancelled_at) AS "cancelledAt", epoch_ms(j.testing_closed_at) AS "testingClosedAt",
  s."firstSessionAt", s."lastTestSessionAt", sp.name AS "sessionBy",
  EXISTS (SELECT FROM quote_draft d WHERE d.job_id = j.id) AS draft,
  coalesce(q.versions, '[]') AS versions, g.tolerance_basis_points AS "toleranceBasisPoints",
  CASE WHEN p.ordered_at IS NOT NULL THEN json_build_object('orderedAt', epoch_ms(p.ordered_at), 'expectedAt', epoch_ms(p.expected_at), 'text', p.text) END AS parts,
  CASE WHEN r.started_at IS NOT NULL THEN json_build_object('startedAt', epoch_ms(r.started_at), 'finishedAt', epoch_ms(r.finished_at), 'by', rp.name) END AS repair,
  CASE WHEN t.outcome IS NOT NULL THEN json_build_object('outcome', t.outcome, 'decidedAt', epoch_ms(t.decided_at)) END AS release,
  EXISTS (SELECT FROM session us JOIN reading u ON u.session_id = us.id AND u.state = 'unplaced' AND NOT u.withdrawn
    WHERE us.job_id = j.id AND NOT EXISTS (SELECT FROM reading ur WHERE ur.replaces = u.id)) AS unplaced,
  epoch_ms(n.next_at) AS "nextContactAt"
FROM job j
JOIN garage g ON g.id = j.garage_id
JOIN customer c ON c.id = j.customer_id
JOIN vehicle v ON v.id = j.vehicle_id
JOIN engine e ON e.id = j.engine_id
LEFT JOIN engine_family f ON f.id = e.family_id
LEFT JOIN bay b ON b.id = j.bay_id
LEFT JOIN LATERAL (
  SELECT epoch_ms(min(opened_at)) AS "firstSessionAt", epoch_ms(max(received_at) FILTER (WHERE purpose = 'test')) AS "lastTestSessionAt",
    (array_agg(opened_by_id ORDER BY opened_at DESC))[1] AS by
  FROM session WHERE job_id = j.id) s ON true
LEFT JOIN person sp ON sp.id = s.by
LEFT JOIN LATERAL (
  SELECT json_agg(json_build_object('sentAt', epoch_ms(qv.sent_at), 'totalMinor', qv.total_minor, 'answer', a.kind, 'answeredAt', epoch_ms(a.at),
      'word', w.kind, 'wordAt', epoch_ms(w.at), 'givenMinor', CASE WHEN w.kind = 'given' THEN w.amount_minor END) ORDER BY qv.number) AS versions
  FROM quote_version qv
  LEFT JOIN LATERAL (SELECT kind, at FROM approval WHERE quote_version_id = qv.id ORDER BY at DESC, id DESC LIMIT 1) a ON true
  LEFT JOIN LATERAL (SELECT kind, at, amount_minor FROM authorisation WHERE job_id = qv.job_id AND quote_version_id = qv.id ORDER BY at DESC, id DESC LIMIT 1) w ON true
  WHERE qv.job_id = j.id) q ON true
LEFT JOIN LATERAL (
  SELECT ordered_at, expected_at, text FROM parts_order WHERE job_id = j.id AND arrived_at IS NULL ORDER BY expected_at DESC NULLS FIRST, ordered_at LIMIT 1) p ON true
LEFT JOIN LATERAL (
  SELECT started_at, finished_at, started_by_id FROM repair WHERE job_id = j.id ORDER BY started_at DESC, id DESC LIMIT 1) r ON true
LEFT JOIN person rp ON rp.id = r.started_by_id
LEFT JOIN LATERAL (
  SELECT outcome, decided_at FROM retest WHERE job_id = j.id AND kind = 'release' AND outcome IS NOT NULL ORDER BY decided_at DESC LIMIT 1) t ON true
LEFT JOIN LATERAL (
  SELECT next_at FROM contact WHERE job_id = j.id AND (kind <> 'note' OR next_at IS NOT NULL) ORDER BY at DESC, id DESC LIMIT 1) n ON true
