-- Jobs of one garage by what somebody typed at the counter. $1 garage, $2 code, $3 "% 27", $4 plate key, $5 words of a name (patterns,
-- all must occur), $6 digits of a phone; null where the text cannot mean that. $7 false: the caller may not look people up.
-- Plan: the garage's jobs by job_of_garage with their car and customer hashed; ten thousand jobs take some 20 ms.
SELECT j.id, CASE
    WHEN j.code = $2 OR j.code LIKE $3 THEN 'code'
    WHEN v.plate_key LIKE $4 THEN 'plate'
    WHEN $7::bool AND c.name ILIKE ALL ($5::text[]) THEN 'customer'
    WHEN $7::bool AND c.phone_digits LIKE $6 THEN 'phone'
  END AS matched
FROM job j JOIN vehicle v ON v.id = j.vehicle_id JOIN customer c ON c.id = j.customer_id
WHERE j.garage_id = $1 AND (j.code = $2 OR j.code LIKE $3 OR v.plate_key LIKE $4
  OR $7::bool AND (c.name ILIKE ALL ($5::text[]) OR c.phone_digits LIKE $6))
