-- A page of the jobs of a garage, newest first, by job_of_garage. $1 to $7 as in found.sql; $8 everything, $9 only open (true), only
-- closed (false) or both (null), $10 $11 the job before, $12 rows.
SELECT p.id FROM job p
WHERE p.garage_id = $1
  AND ($9::bool IS NULL OR $9 = (p.handed_over_at IS NULL AND p.cancelled_at IS NULL))
  AND ($10::timestamptz IS NULL OR (p.booked_at, p.id) < ($10, $11::uuid))
  AND ($8::bool OR p.id IN (SELECT found.id FROM (
    --found
  ) found))
ORDER BY p.booked_at DESC, p.id DESC LIMIT $12
