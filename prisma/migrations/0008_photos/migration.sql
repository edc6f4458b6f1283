-- Photos of what a reading says. The table of the first version was never written to. Pictures are files named by the hash of their
-- content; a record names two of them, and is append only like the reading it belongs to.
ALTER TABLE "photo" DROP COLUMN "at",
DROP COLUMN "content_type",
DROP COLUMN "cylinder",
ADD COLUMN     "height" INTEGER NOT NULL,
ADD COLUMN     "offline" BOOLEAN NOT NULL DEFAULT false,
ADD COLUMN     "received_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
ADD COLUMN     "request_hash" TEXT NOT NULL,
ADD COLUMN     "small_sha256" TEXT NOT NULL,
ADD COLUMN     "tablet_id" UUID,
ADD COLUMN     "width" INTEGER NOT NULL,
ALTER COLUMN "reading_id" SET NOT NULL;

CREATE TABLE "photo_withdrawal" (
    "photo_id" UUID NOT NULL,
    "reason" TEXT NOT NULL,
    "by_id" UUID,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "photo_withdrawal_pkey" PRIMARY KEY ("photo_id")
);

CREATE INDEX "photo_reading_id_idx" ON "photo"("reading_id");

ALTER TABLE "photo" ADD CONSTRAINT "photo_reading_id_fkey" FOREIGN KEY ("reading_id") REFERENCES "reading"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "photo_withdrawal" ADD CONSTRAINT "photo_withdrawal_photo_id_fkey" FOREIGN KEY ("photo_id") REFERENCES "photo"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE photo ADD CONSTRAINT photo_file_names CHECK (sha256 ~ '^[0-9a-f]{64}$' AND small_sha256 ~ '^[0-9a-f]{64}$'),
  ADD CONSTRAINT photo_size CHECK (bytes > 0 AND width > 0 AND height > 0);

DO $$
DECLARE name text;
BEGIN
  FOREACH name IN ARRAY ARRAY['photo', 'photo_withdrawal'] LOOP
    EXECUTE format('CREATE TRIGGER %I BEFORE UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION refuse_change()', name || '_append_only', name);
    EXECUTE format('CREATE TRIGGER %I BEFORE TRUNCATE ON %I FOR EACH STATEMENT EXECUTE FUNCTION refuse_change()', name || '_no_truncate', name);
  END LOOP;
END $$;
