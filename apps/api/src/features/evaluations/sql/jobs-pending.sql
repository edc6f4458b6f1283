-- Jobs whose latest reading has no evaluation note behind it: for a process that was ended between a reading and its note.
-- $1 is the least id of readings looked at (they are ordered by time, by the clients' clocks), so that old ones are not read again.
SELECT s.job_id AS job FROM reading r JOIN session s ON s.id = r.session_id
WHERE r.id > $1::uuid AND r.received_at < now() - interval '10 seconds'
GROUP BY s.job_id
HAVING max(r.received_at) > coalesce((SELECT t.at FROM trail_entry t WHERE t.job_id = s.job_id AND t.kind = 'evaluation' ORDER BY t.seq DESC LIMIT 1), '-infinity')
LIMIT 100
