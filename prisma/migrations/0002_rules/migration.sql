-- What Prisma has no word for: append-only tables, the trail's chain, fittings that may not overlap, checks and search.

CREATE EXTENSION IF NOT EXISTS btree_gist;
CREATE EXTENSION IF NOT EXISTS pg_trgm;

-- Append only: a correction is a new row. The database itself refuses UPDATE, DELETE and TRUNCATE.
CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION '% is append only: % refused', TG_TABLE_NAME, TG_OP USING ERRCODE = 'restrict_violation';
END $$;

DO $$
DECLARE name text;
BEGIN
  FOREACH name IN ARRAY ARRAY['reading', 'trail_entry', 'evaluation', 'suggestion_decision', 'quote_version', 'quote_line',
    'approval', 'authorisation', 'finding', 'contact', 'retest_date', 'audit_entry'] LOOP
    EXECUTE format('CREATE TRIGGER %I BEFORE UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION refuse_change()', name || '_append_only', name);
    EXECUTE format('CREATE TRIGGER %I BEFORE TRUNCATE ON %I FOR EACH STATEMENT EXECUTE FUNCTION refuse_change()', name || '_no_truncate', name);
  END LOOP;
END $$;

-- The trail: one chain for each engine. The head's row is locked by its update, so two writers of one engine wait for
-- each other and no sequence number is used twice. The hash covers, one a line: hash before, engine, sequence number,
-- time (ISO 8601, milliseconds, UTC), kind, actor, body.
CREATE FUNCTION trail_hash(previous text, engine uuid, seq bigint, at timestamptz, kind text, actor text, body text)
RETURNS text LANGUAGE sql IMMUTABLE AS $$
  SELECT encode(sha256(convert_to(concat_ws(E'\n', previous, engine::text, seq::text,
    to_char(at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"'), kind, actor, body), 'UTF8')), 'hex')
$$;

CREATE FUNCTION chain_trail_entry() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE previous text;
BEGIN
  INSERT INTO trail_head (engine_id, seq, hash) VALUES (NEW.engine_id, 0, repeat('0', 64)) ON CONFLICT DO NOTHING;
  SELECT seq + 1, hash INTO NEW.seq, previous FROM trail_head WHERE engine_id = NEW.engine_id FOR UPDATE;
  NEW.at := date_trunc('milliseconds', clock_timestamp());
  NEW.previous_hash := previous;
  NEW.hash := trail_hash(previous, NEW.engine_id, NEW.seq, NEW.at, NEW.kind, NEW.actor, NEW.body);
  UPDATE trail_head SET seq = NEW.seq, hash = NEW.hash WHERE engine_id = NEW.engine_id;
  RETURN NEW;
END $$;

ALTER TABLE trail_entry ALTER COLUMN seq SET DEFAULT 0, ALTER COLUMN previous_hash SET DEFAULT '', ALTER COLUMN hash SET DEFAULT '';
CREATE TRIGGER trail_entry_chain BEFORE INSERT ON trail_entry FOR EACH ROW EXECUTE FUNCTION chain_trail_entry();

-- An engine sits in at most one vehicle at a time, and a vehicle holds at most one engine.
ALTER TABLE fitting ADD CONSTRAINT fitting_one_vehicle_at_a_time EXCLUDE USING gist (engine_id WITH =, tstzrange("from", "until") WITH &&);
ALTER TABLE fitting ADD CONSTRAINT fitting_one_engine_at_a_time EXCLUDE USING gist (vehicle_id WITH =, tstzrange("from", "until") WITH &&);
ALTER TABLE fitting ADD CONSTRAINT fitting_ends_after_it_begins CHECK ("until" IS NULL OR "until" > "from");

-- A bay holds one job at a time; a job that has left (handed over or cancelled) holds none.
CREATE UNIQUE INDEX job_one_in_a_bay ON job (bay_id) WHERE bay_id IS NOT NULL AND handed_over_at IS NULL AND cancelled_at IS NULL;
CREATE INDEX job_open ON job (garage_id) WHERE handed_over_at IS NULL AND cancelled_at IS NULL;
-- One repair under way for a job, and one release retest owed.
CREATE UNIQUE INDEX repair_one_under_way ON repair (job_id) WHERE finished_at IS NULL;
CREATE UNIQUE INDEX retest_one_release_open ON retest (job_id) WHERE kind = 'release' AND outcome IS NULL;
CREATE INDEX retest_open ON retest (job_id) WHERE outcome IS NULL;
-- A reading is replaced once: the second correction names the first.
CREATE UNIQUE INDEX reading_replaced_once ON reading (replaces) WHERE replaces IS NOT NULL;
CREATE UNIQUE INDEX finding_replaced_once ON finding (replaces) WHERE replaces IS NOT NULL;
-- The owner's role names no garage; NULLs would otherwise count as different.
CREATE UNIQUE INDEX person_role_chain_wide ON person_role (person_id, role) WHERE garage_id IS NULL;

ALTER TABLE reading
  ADD CONSTRAINT reading_state CHECK (state IN ('placed', 'unplaced')),
  ADD CONSTRAINT reading_withdrawn CHECK (withdrawn = (body IS NULL)),
  ADD CONSTRAINT reading_replaces_with_reason CHECK (replaces IS NULL OR reason IS NOT NULL),
  ADD CONSTRAINT reading_pressure CHECK (pressure_pa IS NULL OR pressure_pa BETWEEN 0 AND 1e7),
  ADD CONSTRAINT reading_cylinder CHECK (cylinder IS NULL OR cylinder BETWEEN 1 AND 16);
ALTER TABLE person_role ADD CONSTRAINT person_role_role CHECK (role IN ('technician', 'front-desk', 'manager', 'owner')),
  ADD CONSTRAINT person_role_scope CHECK ((role = 'owner') = (garage_id IS NULL));
ALTER TABLE approval ADD CONSTRAINT approval_kind CHECK (kind IN ('approved', 'sent-back', 'refused', 'withdrawn'));
ALTER TABLE authorisation ADD CONSTRAINT authorisation_kind CHECK (kind IN ('given', 'declined')),
  ADD CONSTRAINT authorisation_amount CHECK (amount_minor >= 0);
ALTER TABLE retest ADD CONSTRAINT retest_kind CHECK (kind IN ('release', 'follow-up')),
  ADD CONSTRAINT retest_outcome CHECK (outcome IN ('passed', 'failed', 'waived')),
  ADD CONSTRAINT retest_decided CHECK ((outcome IS NULL) = (decided_at IS NULL)),
  ADD CONSTRAINT retest_waived_with_reason CHECK (outcome IS DISTINCT FROM 'waived' OR outcome_reason IS NOT NULL);
ALTER TABLE quote_version ADD CONSTRAINT quote_version_total CHECK (total_minor = net_minor + tax_minor AND net_minor >= 0 AND tax_minor >= 0);
ALTER TABLE session ADD CONSTRAINT session_purpose CHECK (purpose IN ('test', 'release', 'follow-up'));
ALTER TABLE job ADD CONSTRAINT job_cancelled_with_reason CHECK (cancelled_at IS NULL OR cancel_reason IS NOT NULL);

-- Search typed loosely.
CREATE INDEX customer_name_search ON customer USING gin (name gin_trgm_ops);
CREATE INDEX customer_phone_search ON customer USING gin (phone_digits gin_trgm_ops);
CREATE INDEX vehicle_plate_search ON vehicle USING gin (plate_key gin_trgm_ops);

-- Live screens wake on this; the row itself is read by its id, so nothing is lost when nobody listens.
CREATE INDEX outbox_event_garage ON outbox_event (garage_id, id);
CREATE FUNCTION tell_outbox_event() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM pg_notify('evenbore_outbox', '');
  RETURN NULL;
END $$;
CREATE TRIGGER outbox_event_tell AFTER INSERT ON outbox_event FOR EACH STATEMENT EXECUTE FUNCTION tell_outbox_event();
