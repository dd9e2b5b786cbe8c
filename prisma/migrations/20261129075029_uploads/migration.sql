-- CreateTable
CREATE TABLE "Upload" (
    "sha256" TEXT NOT NULL,
    "personId" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "Upload_pkey" PRIMARY KEY ("sha256","personId","programmeId")
);

-- CreateIndex
CREATE INDEX "Upload_at_idx" ON "Upload"("at");

-- CreateIndex
CREATE INDEX "ReadingBatch_sha256_idx" ON "ReadingBatch"("sha256");

-- AddForeignKey
ALTER TABLE "Upload" ADD CONSTRAINT "Upload_sha256_fkey" FOREIGN KEY ("sha256") REFERENCES "StoredFile"("sha256") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Upload" ADD CONSTRAINT "Upload_personId_fkey" FOREIGN KEY ("personId") REFERENCES "Person"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Upload" ADD CONSTRAINT "Upload_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
