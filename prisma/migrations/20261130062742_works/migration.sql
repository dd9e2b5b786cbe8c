-- Rows that a programme or something of the works may hold name the trail whose entries tell of them. What was
-- recorded in a programme stays with that programme's trail; its id is the same.
ALTER TABLE "Correction" RENAME COLUMN "programmeId" TO "trailId";
ALTER TABLE "Correction" DROP CONSTRAINT "Correction_programmeId_fkey";
ALTER TABLE "Evidence" RENAME COLUMN "programmeId" TO "trailId";
ALTER TABLE "Evidence" DROP CONSTRAINT "Evidence_programmeId_fkey";
ALTER TABLE "Log" RENAME COLUMN "programmeId" TO "trailId";
ALTER TABLE "Log" DROP CONSTRAINT "Log_programmeId_fkey";
ALTER TABLE "Lot" RENAME COLUMN "programmeId" TO "trailId";
ALTER TABLE "Lot" DROP CONSTRAINT "Lot_programmeId_fkey";
ALTER TABLE "LotTest" RENAME COLUMN "programmeId" TO "trailId";
ALTER TABLE "LotTest" DROP CONSTRAINT "LotTest_programmeId_fkey";
ALTER TABLE "MachineToken" RENAME COLUMN "programmeId" TO "trailId";
ALTER TABLE "MachineToken" DROP CONSTRAINT "MachineToken_programmeId_fkey";
ALTER TABLE "ReadingBatch" RENAME COLUMN "programmeId" TO "trailId";
ALTER TABLE "ReadingBatch" DROP CONSTRAINT "ReadingBatch_programmeId_fkey";
ALTER TABLE "Record" RENAME COLUMN "programmeId" TO "trailId";
ALTER TABLE "Record" DROP CONSTRAINT "Record_programmeId_fkey";
ALTER TABLE "Upload" RENAME COLUMN "programmeId" TO "trailId";
ALTER TABLE "Upload" DROP CONSTRAINT "Upload_programmeId_fkey";
ALTER INDEX "Correction_programmeId_idx" RENAME TO "Correction_trailId_idx";
ALTER INDEX "Evidence_programmeId_itemKey_idx" RENAME TO "Evidence_trailId_itemKey_idx";
ALTER INDEX "Log_programmeId_code_key" RENAME TO "Log_trailId_code_key";
ALTER INDEX "Lot_programmeId_code_key" RENAME TO "Lot_trailId_code_key";
ALTER INDEX "LotTest_programmeId_idx" RENAME TO "LotTest_trailId_idx";
ALTER INDEX "MachineToken_programmeId_idx" RENAME TO "MachineToken_trailId_idx";
ALTER INDEX "ReadingBatch_programmeId_idx" RENAME TO "ReadingBatch_trailId_idx";
ALTER INDEX "Record_programmeId_kind_idx" RENAME TO "Record_trailId_kind_idx";

ALTER TABLE "Log" ADD COLUMN "everyH" DOUBLE PRECISION, ADD COLUMN "machineId" UUID, ADD COLUMN "onlyForId" UUID;
ALTER TABLE "Person" ADD COLUMN "worksDepartment" TEXT;

-- CreateTable
CREATE TABLE "TrailSubject" (
    "id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "code" TEXT NOT NULL,

    CONSTRAINT "TrailSubject_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Line" (
    "id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "openedById" UUID NOT NULL,
    "openedAt" TIMESTAMPTZ(3) NOT NULL,
    "closedById" UUID,
    "closedAt" TIMESTAMPTZ(3),
    "closedWhy" TEXT,

    CONSTRAINT "Line_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Machine" (
    "id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "lineId" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "openedById" UUID NOT NULL,
    "openedAt" TIMESTAMPTZ(3) NOT NULL,
    "closedById" UUID,
    "closedAt" TIMESTAMPTZ(3),
    "closedWhy" TEXT,

    CONSTRAINT "Machine_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "ProgrammeLine" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "lineId" UUID NOT NULL,
    "statedById" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "leftById" UUID,
    "leftAt" TIMESTAMPTZ(3),
    "leftWhy" TEXT,

    CONSTRAINT "ProgrammeLine_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "TrailSubject_kind_code_key" ON "TrailSubject"("kind", "code");

-- CreateIndex
CREATE UNIQUE INDEX "Line_code_key" ON "Line"("code");

-- CreateIndex
CREATE UNIQUE INDEX "Machine_code_key" ON "Machine"("code");

-- CreateIndex
CREATE INDEX "Machine_lineId_idx" ON "Machine"("lineId");

-- CreateIndex
CREATE INDEX "ProgrammeLine_programmeId_idx" ON "ProgrammeLine"("programmeId");

-- CreateIndex
CREATE INDEX "ProgrammeLine_lineId_idx" ON "ProgrammeLine"("lineId");

-- CreateIndex
CREATE INDEX "Log_machineId_idx" ON "Log"("machineId");

-- Every programme there is, and the two of the works that need no opening.
INSERT INTO "TrailSubject" ("id", "kind", "code") SELECT "id", 'programme', "code" FROM "Programme";
INSERT INTO "TrailSubject" ("id", "kind", "code") VALUES
  ('00000000-0000-4000-8000-000000000001', 'people', 'people'),
  ('00000000-0000-4000-8000-000000000002', 'company-rules', 'company-rules');

-- AddForeignKey
ALTER TABLE "Machine" ADD CONSTRAINT "Machine_lineId_fkey" FOREIGN KEY ("lineId") REFERENCES "Line"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ProgrammeLine" ADD CONSTRAINT "ProgrammeLine_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ProgrammeLine" ADD CONSTRAINT "ProgrammeLine_lineId_fkey" FOREIGN KEY ("lineId") REFERENCES "Line"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Upload" ADD CONSTRAINT "Upload_trailId_fkey" FOREIGN KEY ("trailId") REFERENCES "TrailSubject"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Evidence" ADD CONSTRAINT "Evidence_trailId_fkey" FOREIGN KEY ("trailId") REFERENCES "TrailSubject"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Lot" ADD CONSTRAINT "Lot_trailId_fkey" FOREIGN KEY ("trailId") REFERENCES "TrailSubject"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LotTest" ADD CONSTRAINT "LotTest_trailId_fkey" FOREIGN KEY ("trailId") REFERENCES "TrailSubject"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Log" ADD CONSTRAINT "Log_trailId_fkey" FOREIGN KEY ("trailId") REFERENCES "TrailSubject"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Log" ADD CONSTRAINT "Log_machineId_fkey" FOREIGN KEY ("machineId") REFERENCES "Machine"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ReadingBatch" ADD CONSTRAINT "ReadingBatch_trailId_fkey" FOREIGN KEY ("trailId") REFERENCES "TrailSubject"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Record" ADD CONSTRAINT "Record_trailId_fkey" FOREIGN KEY ("trailId") REFERENCES "TrailSubject"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Correction" ADD CONSTRAINT "Correction_trailId_fkey" FOREIGN KEY ("trailId") REFERENCES "TrailSubject"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "MachineToken" ADD CONSTRAINT "MachineToken_trailId_fkey" FOREIGN KEY ("trailId") REFERENCES "TrailSubject"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
