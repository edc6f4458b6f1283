-- Every reading of some sessions. By reading(session_id) and, for what replaced each, reading_replaced_once.
SELECT r.id, r.session_id AS session, r.body, r.state, r.replaces, later.id AS "replacedBy", r.withdrawn, r.reason,
  r.taken_at AS "takenAt", r.received_at AS "receivedAt", CASE WHEN p.id IS NOT NULL THEN json_build_object('id', p.id, 'name', p.name) END AS "takenBy", r.offline
FROM reading r LEFT JOIN reading later ON later.replaces = r.id LEFT JOIN person p ON p.id = r.taken_by_id
WHERE r.session_id = ANY ($1::uuid[])
ORDER BY r.taken_at, r.id
