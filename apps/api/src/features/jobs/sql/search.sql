-- Search at the counter: open jobs first, then by what matched (the code said aloud before anything else), then the newest.
SELECT m.matched, jobs.* FROM (
  SELECT found.id, found.matched FROM (
    --found
  ) found JOIN job o ON o.id = found.id
  ORDER BY (o.handed_over_at IS NULL AND o.cancelled_at IS NULL) DESC, array_position(ARRAY['code', 'plate', 'customer', 'phone'], found.matched), o.booked_at DESC, o.id
  LIMIT 20) m
JOIN LATERAL (
    --facts
    WHERE j.id = m.id) jobs ON true
ORDER BY (jobs."handedOverAt" IS NULL AND jobs."cancelledAt" IS NULL) DESC, array_position(ARRAY['code', 'plate', 'customer', 'phone'], m.matched), jobs."bookedAt" DESC, jobs.id
