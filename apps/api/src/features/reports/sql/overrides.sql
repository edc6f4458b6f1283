-- Declined suggestions of a garage, and how many turned out right: the declined test was not done afterwards, strip-down then found
-- something wrong, and the release retest passed. The technician saved that test's time and lost nothing by it.
SELECT count(*)::int AS declined, count(*) FILTER (WHERE
    NOT EXISTS (SELECT 1 FROM session s JOIN reading r ON r.session_id = s.id WHERE s.job_id = d.job_id AND r.received_at > d.at AND NOT r.withdrawn
      AND r.test IN (SELECT t ->> 'test' FROM jsonb_array_elements(d.suggestion -> 'tests') t))
    AND EXISTS (SELECT 1 FROM finding f WHERE f.job_id = d.job_id AND f.at > d.at AND f.fault <> 'nothing' AND NOT EXISTS (SELECT 1 FROM finding later WHERE later.replaces = f.id))
    AND EXISTS (SELECT 1 FROM retest r WHERE r.job_id = d.job_id AND r.kind = 'release' AND r.outcome = 'passed'))::int AS "turnedOutRight"
FROM suggestion_decision d JOIN job j ON j.id = d.job_id
WHERE j.garage_id = $1 AND d.decision = 'declined'
