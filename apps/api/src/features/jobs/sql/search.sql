-- Search at the counter: open jobs first, then by what matched (the code said aloud before anything else), then the newest.
WITH hits AS MATERIALIZED (
  SELECT found.id, found.matched,
    row_number() OVER (ORDER BY (o.handed_over_at IS NULL AND o.cancelled_at IS NULL) DESC,
      array_position(ARRAY['code', 'plate', 'customer', 'phone'], found.matched), o.booked_at DESC, o.id) AS place
  FROM (
    --found
  ) found JOIN job o ON o.id = found.id
  ORDER BY place LIMIT 20
)
SELECT hits.matched, jobs.* FROM hits JOIN (
  --facts
) jobs ON jobs.id = hits.id ORDER BY hits.place
