-- Findings that stand (replaced by none) of a garage's jobs, each with the evaluation it is held against; a page by id.
-- By finding(job_id) of the garage's jobs; the texts are the size of it, so pages are small.
SELECT f.id, f.fault, f.cylinders, e.result_text AS evaluation
FROM finding f JOIN job j ON j.id = f.job_id JOIN evaluation e ON e.id = f.evaluation_id
WHERE j.garage_id = $1 AND f.id > $2::uuid AND NOT EXISTS (SELECT 1 FROM finding later WHERE later.replaces = f.id)
ORDER BY f.id LIMIT 200
