-- AlterTable
ALTER TABLE "ReadingBatch" ADD COLUMN     "newestAt" TIMESTAMPTZ(3);

-- CreateIndex
CREATE INDEX "ReadingBatch_logId_newestAt_idx" ON "ReadingBatch"("logId", "newestAt");

-- Of the batches there are: the newest of their instants, which are epoch milliseconds.
UPDATE "ReadingBatch" SET "newestAt" = (
  SELECT to_timestamp(max(instant::double precision) / 1000)
  FROM json_array_elements_text("readings"->'columns'->'at') AS instant
) WHERE "logId" IS NOT NULL AND json_typeof("readings"->'columns'->'at') = 'array';
