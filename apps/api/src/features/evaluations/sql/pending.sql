-- Reading entries of a job behind its latest evaluation note. By trail_entry_evaluation and trail_entry(job_id, seq).
WITH noted AS (
  SELECT coalesce((SELECT (body::json ->> 'through')::bigint FROM trail_entry WHERE job_id = $1 AND kind = 'evaluation' ORDER BY seq DESC LIMIT 1), 0) AS through
)
SELECT t.seq::int AS seq, t.body::json ->> 'reading' AS reading FROM trail_entry t, noted
WHERE t.job_id = $1 AND t.seq > noted.through AND t.kind IN ('reading', 'reading-replaced', 'reading-withdrawn')
ORDER BY t.seq LIMIT 1000
