
-- CreateTable
CREATE TABLE "garage" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "code_letter" TEXT NOT NULL,
    "time_zone" TEXT NOT NULL,
    "currency" TEXT NOT NULL,
    "pressure_unit" TEXT NOT NULL,
    "elevation_m" DOUBLE PRECISION,
    "locale" TEXT NOT NULL DEFAULT 'en',
    "labour_rate_minor" INTEGER NOT NULL,
    "tax_basis_points" INTEGER NOT NULL,
    "prices_include_tax" BOOLEAN NOT NULL DEFAULT false,
    "tolerance_basis_points" INTEGER NOT NULL DEFAULT 0,
    "last_job_number" INTEGER NOT NULL DEFAULT 0,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "garage_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "bay" (
    "id" UUID NOT NULL,
    "garage_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "closed_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "bay_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "gauge" (
    "id" UUID NOT NULL,
    "garage_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "specification" JSONB NOT NULL,
    "check_due" DATE,
    "retired_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "gauge_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "catalogue_item" (
    "id" UUID NOT NULL,
    "garage_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "operation" TEXT,
    "text" TEXT NOT NULL,
    "minutes" INTEGER,
    "unit_price_minor" INTEGER,
    "tax_basis_points" INTEGER NOT NULL,
    "retired_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "catalogue_item_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "person" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "email" TEXT,
    "password_hash" TEXT,
    "pin_hash" TEXT,
    "totp_secret" TEXT,
    "locale" TEXT,
    "pressure_unit" TEXT,
    "failed_sign_ins" INTEGER NOT NULL DEFAULT 0,
    "locked_until" TIMESTAMPTZ(3),
    "left_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "person_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "person_role" (
    "id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "garage_id" UUID,
    "role" TEXT NOT NULL,
    "approval_limit_minor" INTEGER,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "person_role_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "deputy" (
    "id" UUID NOT NULL,
    "garage_id" UUID NOT NULL,
    "manager_id" UUID NOT NULL,
    "deputy_id" UUID NOT NULL,
    "from" TIMESTAMPTZ(3) NOT NULL,
    "until" TIMESTAMPTZ(3) NOT NULL,
    "revoked_at" TIMESTAMPTZ(3),
    "created_by_id" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "deputy_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "tablet" (
    "id" UUID NOT NULL,
    "garage_id" UUID NOT NULL,
    "bay_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "enrolment_code_hash" TEXT,
    "enrolment_expires_at" TIMESTAMPTZ(3),
    "enrolled_at" TIMESTAMPTZ(3),
    "secret_hash" TEXT,
    "revoked_at" TIMESTAMPTZ(3),
    "failed_pins" INTEGER NOT NULL DEFAULT 0,
    "locked_until" TIMESTAMPTZ(3),
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "tablet_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "refresh_token" (
    "id" UUID NOT NULL,
    "family_id" UUID NOT NULL,
    "person_id" UUID,
    "tablet_id" UUID,
    "hash" TEXT NOT NULL,
    "issued_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "used_at" TIMESTAMPTZ(3),
    "revoked_at" TIMESTAMPTZ(3),

    CONSTRAINT "refresh_token_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "one_time_link" (
    "id" UUID NOT NULL,
    "purpose" TEXT NOT NULL,
    "person_id" UUID,
    "hash" TEXT NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "used_at" TIMESTAMPTZ(3),

    CONSTRAINT "one_time_link_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "signing_key" (
    "id" UUID NOT NULL,
    "public_jwk" JSONB NOT NULL,
    "private_jwk" JSONB NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "retired_at" TIMESTAMPTZ(3),

    CONSTRAINT "signing_key_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "outside_app" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "client_id" TEXT NOT NULL,
    "secret_hash" TEXT NOT NULL,
    "scopes" TEXT[],
    "garage_ids" UUID[],
    "created_by_id" UUID,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "revoked_at" TIMESTAMPTZ(3),

    CONSTRAINT "outside_app_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "audit_entry" (
    "id" UUID NOT NULL,
    "garage_id" UUID,
    "actor" JSONB NOT NULL,
    "action" TEXT NOT NULL,
    "subject" JSONB NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "audit_entry_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "idempotency_key" (
    "id" UUID NOT NULL,
    "actor_key" TEXT NOT NULL,
    "key" TEXT NOT NULL,
    "request_hash" TEXT NOT NULL,
    "status" INTEGER NOT NULL,
    "body" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "idempotency_key_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "customer" (
    "id" UUID NOT NULL,
    "garage_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "phone" TEXT,
    "phone_digits" TEXT,
    "email" TEXT,
    "address" TEXT,
    "note" TEXT,
    "erased_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "customer_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "vehicle" (
    "id" UUID NOT NULL,
    "garage_id" UUID NOT NULL,
    "customer_id" UUID NOT NULL,
    "plate" TEXT NOT NULL,
    "plate_key" TEXT NOT NULL,
    "description" TEXT NOT NULL,
    "year" INTEGER,
    "note" TEXT,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "vehicle_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "engine_family" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "specification" JSONB NOT NULL,
    "basis" JSONB NOT NULL,
    "leads" JSONB,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "engine_family_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "engine" (
    "id" UUID NOT NULL,
    "family_id" UUID,
    "specification" JSONB NOT NULL,
    "stamped_number" TEXT,
    "description" TEXT NOT NULL,
    "history" JSONB NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "engine_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "fitting" (
    "id" UUID NOT NULL,
    "engine_id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "from" TIMESTAMPTZ(3) NOT NULL,
    "until" TIMESTAMPTZ(3),
    "odometer_km" INTEGER,
    "created_by_id" UUID,

    CONSTRAINT "fitting_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "job" (
    "id" UUID NOT NULL,
    "garage_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "customer_id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "engine_id" UUID NOT NULL,
    "complaint" TEXT NOT NULL,
    "odometer_km" INTEGER,
    "prior_work" JSONB NOT NULL,
    "promised_at" TIMESTAMPTZ(3),
    "bay_id" UUID,
    "placed_at" TIMESTAMPTZ(3),
    "come_back_of_id" UUID,
    "booked_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "booked_by_id" UUID,
    "testing_closed_at" TIMESTAMPTZ(3),
    "testing_closed_by_id" UUID,
    "declined_at" TIMESTAMPTZ(3),
    "cancelled_at" TIMESTAMPTZ(3),
    "cancel_reason" TEXT,
    "handed_over_at" TIMESTAMPTZ(3),
    "handed_over_by_id" UUID,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "job_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "contact" (
    "id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "next_at" TIMESTAMPTZ(3),
    "by_id" UUID,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "contact_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "session" (
    "id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "engine_id" UUID NOT NULL,
    "conditions" JSONB NOT NULL,
    "gauge_id" UUID,
    "gauge_specification" JSONB,
    "tester_id" UUID,
    "tester_specification" JSONB,
    "purpose" TEXT NOT NULL DEFAULT 'test',
    "app_ids" UUID[],
    "opened_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "opened_by_id" UUID,
    "closed_at" TIMESTAMPTZ(3),
    "closed_by_id" UUID,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "session_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "reading" (
    "id" UUID NOT NULL,
    "session_id" UUID NOT NULL,
    "engine_id" UUID NOT NULL,
    "test" TEXT NOT NULL,
    "cylinder" INTEGER,
    "body" JSONB,
    "pressure_pa" DOUBLE PRECISION,
    "state" TEXT NOT NULL,
    "replaces" UUID,
    "withdrawn" BOOLEAN NOT NULL DEFAULT false,
    "reason" TEXT,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "taken_by_id" UUID,
    "tablet_id" UUID,
    "app_id" UUID,
    "offline" BOOLEAN NOT NULL DEFAULT false,
    "request_hash" TEXT NOT NULL,
    "received_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "reading_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "trail_head" (
    "engine_id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT 0,
    "hash" TEXT NOT NULL,

    CONSTRAINT "trail_head_pkey" PRIMARY KEY ("engine_id")
);

-- CreateTable
CREATE TABLE "trail_entry" (
    "id" UUID NOT NULL,
    "engine_id" UUID NOT NULL,
    "job_id" UUID,
    "garage_id" UUID,
    "seq" BIGINT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "kind" TEXT NOT NULL,
    "actor" TEXT NOT NULL,
    "body" TEXT NOT NULL,
    "previous_hash" TEXT NOT NULL,
    "hash" TEXT NOT NULL,

    CONSTRAINT "trail_entry_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "evaluation" (
    "id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "engine_id" UUID NOT NULL,
    "case_hash" TEXT NOT NULL,
    "model" TEXT NOT NULL,
    "case_text" TEXT NOT NULL,
    "result_text" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "evaluation_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "suggestion_decision" (
    "id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "evaluation_id" UUID NOT NULL,
    "suggestion" JSONB NOT NULL,
    "decision" TEXT NOT NULL,
    "instead" JSONB,
    "reason" TEXT,
    "by_id" UUID,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "suggestion_decision_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "quote_draft" (
    "id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "lines" JSONB NOT NULL,
    "note" TEXT,
    "author_id" UUID NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "quote_draft_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "quote_version" (
    "id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "author_id" UUID NOT NULL,
    "note" TEXT,
    "evaluation_id" UUID,
    "currency" TEXT NOT NULL,
    "prices_include_tax" BOOLEAN NOT NULL,
    "net_minor" INTEGER NOT NULL,
    "tax_minor" INTEGER NOT NULL,
    "total_minor" INTEGER NOT NULL,
    "sent_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "quote_version_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "quote_line" (
    "id" UUID NOT NULL,
    "quote_version_id" UUID NOT NULL,
    "position" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "operation" TEXT,
    "cylinders" INTEGER[],
    "text" TEXT NOT NULL,
    "quantity" DECIMAL(12,3) NOT NULL,
    "unit" TEXT NOT NULL,
    "rate_minor" INTEGER NOT NULL,
    "tax_basis_points" INTEGER NOT NULL,
    "amount_minor" INTEGER NOT NULL,

    CONSTRAINT "quote_line_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "approval" (
    "id" UUID NOT NULL,
    "quote_version_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "by_id" UUID NOT NULL,
    "deputy_for_id" UUID,
    "own_quote" BOOLEAN NOT NULL DEFAULT false,
    "reason" TEXT,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "approval_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "authorisation" (
    "id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "quote_version_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "person_name" TEXT NOT NULL,
    "method" TEXT NOT NULL,
    "number_called" TEXT,
    "amount_minor" INTEGER NOT NULL,
    "currency" TEXT NOT NULL,
    "parts_back" BOOLEAN NOT NULL DEFAULT false,
    "note" TEXT,
    "given_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by_id" UUID,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "authorisation_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "parts_order" (
    "id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "text" TEXT NOT NULL,
    "ordered_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "ordered_by_id" UUID,
    "expected_at" TIMESTAMPTZ(3),
    "arrived_at" TIMESTAMPTZ(3),
    "arrived_by_id" UUID,

    CONSTRAINT "parts_order_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "repair" (
    "id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "quote_version_id" UUID NOT NULL,
    "started_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "started_by_id" UUID,
    "finished_at" TIMESTAMPTZ(3),
    "finished_by_id" UUID,
    "operations" TEXT[],
    "note" TEXT,

    CONSTRAINT "repair_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "finding" (
    "id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "engine_id" UUID NOT NULL,
    "evaluation_id" UUID,
    "cylinder" INTEGER,
    "cylinders" INTEGER[],
    "fault" TEXT NOT NULL,
    "seen" TEXT NOT NULL,
    "replaces" UUID,
    "by_id" UUID,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "finding_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "retest" (
    "id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "engine_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "repair_id" UUID,
    "baseline_session_id" UUID,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,
    "session_id" UUID,
    "fulfilled_by_job_id" UUID,
    "outcome" TEXT,
    "outcome_reason" TEXT,
    "comparison" TEXT,
    "decided_at" TIMESTAMPTZ(3),
    "decided_by_id" UUID,

    CONSTRAINT "retest_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "retest_date" (
    "id" UUID NOT NULL,
    "retest_id" UUID NOT NULL,
    "latest" DATE,
    "odometer_km" INTEGER,
    "event" TEXT,
    "booked_for" TIMESTAMPTZ(3),
    "reason" TEXT,
    "by_id" UUID,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "retest_date_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "photo" (
    "id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "reading_id" UUID,
    "cylinder" INTEGER,
    "content_type" TEXT NOT NULL,
    "bytes" INTEGER NOT NULL,
    "sha256" TEXT NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "taken_by_id" UUID,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "photo_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "outbox_event" (
    "id" BIGSERIAL NOT NULL,
    "garage_id" UUID,
    "job_id" UUID,
    "engine_id" UUID,
    "kind" TEXT NOT NULL,
    "body" JSONB NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "outbox_event_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "bay_garage_id_name_key" ON "bay"("garage_id", "name");

-- CreateIndex
CREATE UNIQUE INDEX "gauge_garage_id_name_key" ON "gauge"("garage_id", "name");

-- CreateIndex
CREATE UNIQUE INDEX "person_email_key" ON "person"("email");

-- CreateIndex
CREATE UNIQUE INDEX "person_role_person_id_garage_id_role_key" ON "person_role"("person_id", "garage_id", "role");

-- CreateIndex
CREATE UNIQUE INDEX "tablet_enrolment_code_hash_key" ON "tablet"("enrolment_code_hash");

-- CreateIndex
CREATE UNIQUE INDEX "tablet_secret_hash_key" ON "tablet"("secret_hash");

-- CreateIndex
CREATE UNIQUE INDEX "refresh_token_hash_key" ON "refresh_token"("hash");

-- CreateIndex
CREATE INDEX "refresh_token_family_id_idx" ON "refresh_token"("family_id");

-- CreateIndex
CREATE UNIQUE INDEX "one_time_link_hash_key" ON "one_time_link"("hash");

-- CreateIndex
CREATE UNIQUE INDEX "outside_app_client_id_key" ON "outside_app"("client_id");

-- CreateIndex
CREATE INDEX "audit_entry_at_idx" ON "audit_entry"("at");

-- CreateIndex
CREATE UNIQUE INDEX "idempotency_key_actor_key_key_key" ON "idempotency_key"("actor_key", "key");

-- CreateIndex
CREATE INDEX "vehicle_garage_id_plate_key_idx" ON "vehicle"("garage_id", "plate_key");

-- CreateIndex
CREATE UNIQUE INDEX "engine_family_name_key" ON "engine_family"("name");

-- CreateIndex
CREATE INDEX "engine_stamped_number_idx" ON "engine"("stamped_number");

-- CreateIndex
CREATE INDEX "fitting_vehicle_id_idx" ON "fitting"("vehicle_id");

-- CreateIndex
CREATE INDEX "job_engine_id_idx" ON "job"("engine_id");

-- CreateIndex
CREATE INDEX "job_vehicle_id_idx" ON "job"("vehicle_id");

-- CreateIndex
CREATE INDEX "job_customer_id_idx" ON "job"("customer_id");

-- CreateIndex
CREATE UNIQUE INDEX "job_garage_id_code_key" ON "job"("garage_id", "code");

-- CreateIndex
CREATE INDEX "contact_job_id_at_idx" ON "contact"("job_id", "at");

-- CreateIndex
CREATE INDEX "session_job_id_opened_at_idx" ON "session"("job_id", "opened_at");

-- CreateIndex
CREATE INDEX "session_engine_id_idx" ON "session"("engine_id");

-- CreateIndex
CREATE INDEX "reading_session_id_idx" ON "reading"("session_id");

-- CreateIndex
CREATE INDEX "reading_engine_id_idx" ON "reading"("engine_id");

-- CreateIndex
CREATE INDEX "trail_entry_job_id_idx" ON "trail_entry"("job_id");

-- CreateIndex
CREATE UNIQUE INDEX "trail_entry_engine_id_seq_key" ON "trail_entry"("engine_id", "seq");

-- CreateIndex
CREATE UNIQUE INDEX "evaluation_job_id_case_hash_model_key" ON "evaluation"("job_id", "case_hash", "model");

-- CreateIndex
CREATE INDEX "suggestion_decision_job_id_idx" ON "suggestion_decision"("job_id");

-- CreateIndex
CREATE UNIQUE INDEX "quote_draft_job_id_key" ON "quote_draft"("job_id");

-- CreateIndex
CREATE UNIQUE INDEX "quote_version_job_id_number_key" ON "quote_version"("job_id", "number");

-- CreateIndex
CREATE UNIQUE INDEX "quote_line_quote_version_id_position_key" ON "quote_line"("quote_version_id", "position");

-- CreateIndex
CREATE INDEX "approval_quote_version_id_idx" ON "approval"("quote_version_id");

-- CreateIndex
CREATE INDEX "authorisation_job_id_idx" ON "authorisation"("job_id");

-- CreateIndex
CREATE INDEX "parts_order_job_id_idx" ON "parts_order"("job_id");

-- CreateIndex
CREATE INDEX "repair_job_id_idx" ON "repair"("job_id");

-- CreateIndex
CREATE INDEX "finding_job_id_idx" ON "finding"("job_id");

-- CreateIndex
CREATE INDEX "finding_engine_id_idx" ON "finding"("engine_id");

-- CreateIndex
CREATE INDEX "retest_job_id_idx" ON "retest"("job_id");

-- CreateIndex
CREATE INDEX "retest_engine_id_idx" ON "retest"("engine_id");

-- CreateIndex
CREATE INDEX "retest_date_retest_id_at_idx" ON "retest_date"("retest_id", "at");

-- CreateIndex
CREATE INDEX "photo_job_id_idx" ON "photo"("job_id");

-- AddForeignKey
ALTER TABLE "bay" ADD CONSTRAINT "bay_garage_id_fkey" FOREIGN KEY ("garage_id") REFERENCES "garage"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "gauge" ADD CONSTRAINT "gauge_garage_id_fkey" FOREIGN KEY ("garage_id") REFERENCES "garage"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "catalogue_item" ADD CONSTRAINT "catalogue_item_garage_id_fkey" FOREIGN KEY ("garage_id") REFERENCES "garage"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "person_role" ADD CONSTRAINT "person_role_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "person_role" ADD CONSTRAINT "person_role_garage_id_fkey" FOREIGN KEY ("garage_id") REFERENCES "garage"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "deputy" ADD CONSTRAINT "deputy_garage_id_fkey" FOREIGN KEY ("garage_id") REFERENCES "garage"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "tablet" ADD CONSTRAINT "tablet_garage_id_fkey" FOREIGN KEY ("garage_id") REFERENCES "garage"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "tablet" ADD CONSTRAINT "tablet_bay_id_fkey" FOREIGN KEY ("bay_id") REFERENCES "bay"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "refresh_token" ADD CONSTRAINT "refresh_token_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "refresh_token" ADD CONSTRAINT "refresh_token_tablet_id_fkey" FOREIGN KEY ("tablet_id") REFERENCES "tablet"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "one_time_link" ADD CONSTRAINT "one_time_link_person_id_fkey" FOREIGN KEY ("person_id") REFERENCES "person"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "customer" ADD CONSTRAINT "customer_garage_id_fkey" FOREIGN KEY ("garage_id") REFERENCES "garage"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "vehicle" ADD CONSTRAINT "vehicle_garage_id_fkey" FOREIGN KEY ("garage_id") REFERENCES "garage"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "vehicle" ADD CONSTRAINT "vehicle_customer_id_fkey" FOREIGN KEY ("customer_id") REFERENCES "customer"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "engine" ADD CONSTRAINT "engine_family_id_fkey" FOREIGN KEY ("family_id") REFERENCES "engine_family"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "fitting" ADD CONSTRAINT "fitting_engine_id_fkey" FOREIGN KEY ("engine_id") REFERENCES "engine"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "fitting" ADD CONSTRAINT "fitting_vehicle_id_fkey" FOREIGN KEY ("vehicle_id") REFERENCES "vehicle"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "job" ADD CONSTRAINT "job_garage_id_fkey" FOREIGN KEY ("garage_id") REFERENCES "garage"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "job" ADD CONSTRAINT "job_customer_id_fkey" FOREIGN KEY ("customer_id") REFERENCES "customer"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "job" ADD CONSTRAINT "job_vehicle_id_fkey" FOREIGN KEY ("vehicle_id") REFERENCES "vehicle"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "job" ADD CONSTRAINT "job_engine_id_fkey" FOREIGN KEY ("engine_id") REFERENCES "engine"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "job" ADD CONSTRAINT "job_bay_id_fkey" FOREIGN KEY ("bay_id") REFERENCES "bay"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "contact" ADD CONSTRAINT "contact_job_id_fkey" FOREIGN KEY ("job_id") REFERENCES "job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "session" ADD CONSTRAINT "session_job_id_fkey" FOREIGN KEY ("job_id") REFERENCES "job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "session" ADD CONSTRAINT "session_engine_id_fkey" FOREIGN KEY ("engine_id") REFERENCES "engine"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "session" ADD CONSTRAINT "session_gauge_id_fkey" FOREIGN KEY ("gauge_id") REFERENCES "gauge"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "reading" ADD CONSTRAINT "reading_session_id_fkey" FOREIGN KEY ("session_id") REFERENCES "session"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "evaluation" ADD CONSTRAINT "evaluation_job_id_fkey" FOREIGN KEY ("job_id") REFERENCES "job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "suggestion_decision" ADD CONSTRAINT "suggestion_decision_job_id_fkey" FOREIGN KEY ("job_id") REFERENCES "job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "suggestion_decision" ADD CONSTRAINT "suggestion_decision_evaluation_id_fkey" FOREIGN KEY ("evaluation_id") REFERENCES "evaluation"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "quote_draft" ADD CONSTRAINT "quote_draft_job_id_fkey" FOREIGN KEY ("job_id") REFERENCES "job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "quote_version" ADD CONSTRAINT "quote_version_job_id_fkey" FOREIGN KEY ("job_id") REFERENCES "job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "quote_version" ADD CONSTRAINT "quote_version_evaluation_id_fkey" FOREIGN KEY ("evaluation_id") REFERENCES "evaluation"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "quote_line" ADD CONSTRAINT "quote_line_quote_version_id_fkey" FOREIGN KEY ("quote_version_id") REFERENCES "quote_version"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "approval" ADD CONSTRAINT "approval_quote_version_id_fkey" FOREIGN KEY ("quote_version_id") REFERENCES "quote_version"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "authorisation" ADD CONSTRAINT "authorisation_job_id_fkey" FOREIGN KEY ("job_id") REFERENCES "job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "authorisation" ADD CONSTRAINT "authorisation_quote_version_id_fkey" FOREIGN KEY ("quote_version_id") REFERENCES "quote_version"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "parts_order" ADD CONSTRAINT "parts_order_job_id_fkey" FOREIGN KEY ("job_id") REFERENCES "job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "repair" ADD CONSTRAINT "repair_job_id_fkey" FOREIGN KEY ("job_id") REFERENCES "job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "repair" ADD CONSTRAINT "repair_quote_version_id_fkey" FOREIGN KEY ("quote_version_id") REFERENCES "quote_version"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "finding" ADD CONSTRAINT "finding_job_id_fkey" FOREIGN KEY ("job_id") REFERENCES "job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "finding" ADD CONSTRAINT "finding_evaluation_id_fkey" FOREIGN KEY ("evaluation_id") REFERENCES "evaluation"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "retest" ADD CONSTRAINT "retest_job_id_fkey" FOREIGN KEY ("job_id") REFERENCES "job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "retest" ADD CONSTRAINT "retest_repair_id_fkey" FOREIGN KEY ("repair_id") REFERENCES "repair"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "retest_date" ADD CONSTRAINT "retest_date_retest_id_fkey" FOREIGN KEY ("retest_id") REFERENCES "retest"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "photo" ADD CONSTRAINT "photo_job_id_fkey" FOREIGN KEY ("job_id") REFERENCES "job"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
