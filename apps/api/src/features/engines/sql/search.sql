-- Engines typed loosely: words of the description or of the stamped number, or the plate of the car that one sits in now.
-- $1 all, $2 words as patterns, $3 plate key as a pattern, $4 garages whose plates may be seen (null: all), $5 $6 the engine before, $7 rows.
-- The chain has some thousands of engines: one scan sorted; plates by their trigram index when they alone are asked for.
SELECT e.id, e.description FROM engine e
WHERE ($1::bool OR e.description || ' ' || coalesce(e.stamped_number, '') ILIKE ALL ($2::text[])
    OR EXISTS (SELECT FROM fitting f JOIN vehicle v ON v.id = f.vehicle_id
      WHERE f.engine_id = e.id AND f.until IS NULL AND v.plate_key LIKE $3 AND ($4::uuid[] IS NULL OR v.garage_id = ANY ($4))))
  AND ($5::text IS NULL OR (e.description, e.id) > ($5, $6::uuid))
ORDER BY e.description, e.id LIMIT $7
