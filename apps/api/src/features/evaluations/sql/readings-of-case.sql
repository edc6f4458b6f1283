-- Readings that count: placed, not withdrawn, replaced by none; in the order they were taken, at most $2 of them.
SELECT r.id, r.session_id AS session, r.body FROM reading r
WHERE r.session_id = ANY ($1::uuid[]) AND r.state = 'placed' AND NOT r.withdrawn AND NOT EXISTS (SELECT 1 FROM reading later WHERE later.replaces = r.id)
ORDER BY r.taken_at, r.id LIMIT $2
