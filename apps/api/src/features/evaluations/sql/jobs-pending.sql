-- Jobs whose latest reading has no evaluation note behind it, among readings of the last two days: for a process that was ended between
-- a reading and its note. By the order of ids of readings (made by clients' clocks; a wrong one waits for the next reading).
SELECT DISTINCT s.job_id AS job FROM reading r JOIN session s ON s.id = r.session_id
WHERE r.received_at > now() - interval '2 days' AND r.received_at < now() - interval '10 seconds'
  AND NOT EXISTS (SELECT 1 FROM trail_entry t WHERE t.job_id = s.job_id AND t.kind = 'evaluation' AND t.at >= r.received_at)
LIMIT 100
