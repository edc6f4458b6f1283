-- A garage with 200 open jobs in every state and 2,000 old ones behind them, plus what hangs on them. $1 is the garage, $2 a person.
-- Every number is derived from the row's number n: the same data each time.
DO $$
DECLARE
  g uuid := '{garage}';
  who uuid := '{person}';
BEGIN
  CREATE TEMP TABLE made ON COMMIT DROP AS
    SELECT n, gen_random_uuid() AS customer, gen_random_uuid() AS vehicle, gen_random_uuid() AS engine, gen_random_uuid() AS job, gen_random_uuid() AS session,
      gen_random_uuid() AS version, gen_random_uuid() AS repair, n > 200 AS old, now() - n * interval '37 minutes' AS at FROM generate_series(1, 2200) n;
  INSERT INTO customer (id, garage_id, name, phone, phone_digits) SELECT customer, g, 'Customer ' || n, '0912 ' || n, '0912' || n FROM made;
  INSERT INTO vehicle (id, garage_id, customer_id, plate, plate_key, description) SELECT vehicle, g, customer, 'BX ' || n, 'BX' || n, 'grey estate' FROM made;
  INSERT INTO engine (id, specification, description, history) SELECT engine, '{"fuel":"petrol","layout":"inline","cylinders":4,"firingOrder":[1,3,4,2],"compressionRatio":8.8}', 'four ' || n, '{}' FROM made;
  INSERT INTO fitting (id, engine_id, vehicle_id, "from") SELECT gen_random_uuid(), engine, vehicle, at FROM made;
  INSERT INTO bay (id, garage_id, name, position) SELECT gen_random_uuid(), g, 'Ramp ' || n, 10 + n FROM generate_series(1, 20) n;
  INSERT INTO job (id, garage_id, code, customer_id, vehicle_id, engine_id, complaint, prior_work, promised_at, booked_at, booked_by_id, handed_over_at, bay_id, placed_at, testing_closed_at)
    SELECT job, g, 'Z ' || n, customer, vehicle, engine, 'misses on one when cold, and smokes a little on the overrun', '{}', at + interval '3 days', at, who,
      CASE WHEN old THEN at + interval '2 days' END,
      CASE WHEN n <= 20 THEN (SELECT id FROM bay WHERE garage_id = g AND name = 'Ramp ' || n) END, CASE WHEN n <= 20 THEN at END,
      CASE WHEN n % 20 = 7 THEN now() END FROM made;
  INSERT INTO session (id, job_id, engine_id, conditions, opened_at, received_at, opened_by_id) SELECT session, job, engine, '{"engine":"hot","throttle":"open","plugsOut":"all"}', at, at, who FROM made WHERE n % 4 <> 0;
  INSERT INTO reading (id, session_id, engine_id, test, cylinder, body, state, taken_at, request_hash)
    SELECT gen_random_uuid(), session, engine, 'compression', c, jsonb_build_object('test', 'compression', 'cylinder', c, 'pressure', jsonb_build_object('value', 150 + c, 'unit', 'psi')), 'placed', at, 'x'
    FROM made CROSS JOIN generate_series(1, 4) c WHERE n % 4 <> 0;
  INSERT INTO contact (id, job_id, kind, text, next_at, by_id) SELECT gen_random_uuid(), job, 'call', 'rings back', at + interval '1 day', who FROM made WHERE n % 3 = 0;
  INSERT INTO parts_order (id, job_id, text, expected_at) SELECT gen_random_uuid(), job, 'head gasket', now() + interval '2 days' FROM made WHERE n % 19 = 1 AND NOT old;
  INSERT INTO quote_version (id, job_id, number, author_id, currency, prices_include_tax, net_minor, tax_minor, total_minor, sent_at)
    SELECT version, job, 1, who, 'EUR', false, 50000, 10000, 60000, at + interval '1 hour' FROM made WHERE n % 5 < 2;
  INSERT INTO approval (id, quote_version_id, kind, by_id, at) SELECT gen_random_uuid(), version, CASE WHEN n % 15 = 1 THEN 'sent-back' ELSE 'approved' END, who, at + interval '2 hours' FROM made WHERE n % 5 < 2 AND n % 10 <> 0;
  INSERT INTO authorisation (id, job_id, quote_version_id, kind, person_name, method, amount_minor, currency, given_at, at)
    SELECT gen_random_uuid(), job, version, 'given', 'the customer', 'in-person', 60000, 'EUR', at, at + interval '3 hours' FROM made WHERE n % 5 = 1 AND n % 15 <> 1;
  INSERT INTO repair (id, job_id, quote_version_id, started_at, started_by_id, finished_at) SELECT repair, job, version, at + interval '4 hours', who, CASE WHEN n % 10 = 1 THEN at + interval '5 hours' END FROM made WHERE n % 5 = 1 AND n % 15 = 6;
  INSERT INTO retest (id, job_id, engine_id, kind, reason, repair_id) SELECT gen_random_uuid(), job, engine, 'release', 'after repair', repair FROM made WHERE n % 5 = 1 AND n % 15 = 6 AND n % 10 = 1 AND NOT old;
  WITH promised AS (INSERT INTO retest (id, job_id, engine_id, kind, reason) SELECT gen_random_uuid(), job, engine, 'follow-up', 'after 1,000 km' FROM made WHERE old AND n % 40 = 0 RETURNING id)
  INSERT INTO retest_date (id, retest_id, latest) SELECT gen_random_uuid(), id, current_date - 3 FROM promised;
END $$;
