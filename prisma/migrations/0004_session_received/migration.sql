-- The tablet says when a session was opened; the server's own clock says when it heard of it. Whether a session came after a repair
-- is decided by the one clock that finished the repair.
ALTER TABLE "session" ADD COLUMN "received_at" TIMESTAMPTZ(3) NOT NULL DEFAULT now();
