-- AlterTable
ALTER TABLE "Concession" ADD COLUMN     "permit" JSONB;

-- CreateTable
CREATE TABLE "Correction" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "of" TEXT NOT NULL,
    "subjectId" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "before" JSONB NOT NULL,
    "values" JSONB NOT NULL,
    "reason" TEXT NOT NULL,
    "authorId" UUID NOT NULL,
    "authorName" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "Correction_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "Correction_programmeId_idx" ON "Correction"("programmeId");

-- CreateIndex
CREATE UNIQUE INDEX "Correction_subjectId_number_key" ON "Correction"("subjectId", "number");

-- AddForeignKey
ALTER TABLE "Correction" ADD CONSTRAINT "Correction_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
