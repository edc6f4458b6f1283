-- For the statement that reads the garage floor: times as numbers, and late readings found without reading all others.

-- Milliseconds since 1970, as JavaScript counts them. STABLE as date_part of a timestamptz is, so that it is inlined.
CREATE FUNCTION epoch_ms(at timestamptz) RETURNS float8 LANGUAGE sql STABLE PARALLEL SAFE AS $$
  SELECT round(date_part('epoch', at) * 1000)
$$;

CREATE INDEX reading_unplaced ON reading (session_id) WHERE state = 'unplaced' AND NOT withdrawn;
CREATE INDEX retest_release_decided ON retest (job_id, decided_at) WHERE kind = 'release' AND outcome IS NOT NULL;
-- Lists of jobs, newest first.
CREATE INDEX job_of_garage ON job (garage_id, booked_at DESC, id DESC);
