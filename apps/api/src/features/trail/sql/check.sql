-- Recomputes every hash of one engine's trail ($1) or of all (null) and names the first entry of each that does not fit.
-- One pass in the order of (engine_id, seq); reads whole trails, so it is for checking and not for showing.
WITH linked AS (
  SELECT t.engine_id, t.seq, t.id, t.kind, t.previous_hash, t.hash,
    coalesce(lag(t.seq) OVER chain, 0) AS before_seq, coalesce(lag(t.hash) OVER chain, repeat('0', 64)) AS before_hash,
    trail_hash(t.previous_hash, t.engine_id, t.seq, t.at, t.kind, t.actor, t.body) AS computed
  FROM trail_entry t WHERE $1::uuid IS NULL OR t.engine_id = $1
  WINDOW chain AS (PARTITION BY t.engine_id ORDER BY t.seq)
), judged AS (
  SELECT *, CASE
    WHEN seq <> before_seq + 1 THEN 'entry ' || (before_seq + 1) || ' is missing'
    WHEN hash <> computed THEN 'the entry was changed: its hash does not fit what it holds'
    WHEN previous_hash <> before_hash THEN 'the entry does not follow the one before it: a row was inserted or exchanged'
  END AS fault
  FROM linked
), ends AS (
  SELECT engine_id, count(*) AS entries, max(seq) AS last_seq, (array_agg(hash ORDER BY seq DESC))[1] AS last_hash,
    min(seq) FILTER (WHERE fault IS NOT NULL) AS broken_seq FROM judged GROUP BY engine_id
)
SELECT coalesce(h.engine_id, e.engine_id) AS engine, coalesce(e.entries, 0)::int AS entries, coalesce(h.hash, e.last_hash) AS head,
  coalesce(e.broken_seq, CASE WHEN h.engine_id IS NULL OR h.seq <> coalesce(e.last_seq, 0) OR h.hash <> coalesce(e.last_hash, repeat('0', 64))
    THEN coalesce(e.last_seq, 0) + 1 END)::int AS "brokenSeq",
  coalesce(j.fault, CASE WHEN h.engine_id IS NULL THEN 'the head of the trail is missing'
    WHEN h.seq > coalesce(e.last_seq, 0) THEN 'entry ' || (coalesce(e.last_seq, 0) + 1) || ' is missing: the head stands at ' || h.seq
    WHEN h.seq <> coalesce(e.last_seq, 0) OR h.hash <> coalesce(e.last_hash, repeat('0', 64)) THEN 'the head of the trail does not fit the last entry' END) AS says
FROM trail_head h FULL JOIN ends e ON e.engine_id = h.engine_id LEFT JOIN judged j ON j.engine_id = e.engine_id AND j.seq = e.broken_seq
WHERE $1::uuid IS NULL OR coalesce(h.engine_id, e.engine_id) = $1
ORDER BY engine
