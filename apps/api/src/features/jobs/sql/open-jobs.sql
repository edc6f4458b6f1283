-- Jobs of a garage ($1) that have not left it, by the partial index job_open. More than 500 would not be a garage.
SELECT o.id FROM job o WHERE o.garage_id = $1 AND o.handed_over_at IS NULL AND o.cancelled_at IS NULL ORDER BY o.booked_at LIMIT 500
