-- One job ($2), where it is a job of the garage ($1) that has not left it.
SELECT o.id FROM job o WHERE o.id = $2 AND o.garage_id = $1 AND o.handed_over_at IS NULL AND o.cancelled_at IS NULL
