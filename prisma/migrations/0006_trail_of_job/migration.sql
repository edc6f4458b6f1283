-- The trail of a job in its order, and its latest evaluation note, without sorting all its entries.
DROP INDEX "trail_entry_job_id_idx";
CREATE INDEX "trail_entry_job_id_seq_idx" ON "trail_entry" ("job_id", "seq");
CREATE INDEX trail_entry_evaluation ON trail_entry (job_id, seq) WHERE kind = 'evaluation';
