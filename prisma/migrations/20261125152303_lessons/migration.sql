-- CreateTable
CREATE TABLE "Lesson" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "title" TEXT NOT NULL,
    "learnt" TEXT NOT NULL,
    "source" JSONB NOT NULL,
    "change" JSONB NOT NULL,
    "proposedById" UUID NOT NULL,
    "proposedByName" TEXT NOT NULL,
    "proposedAt" TIMESTAMPTZ(3) NOT NULL,
    "decision" TEXT,
    "decisionWhy" TEXT,
    "decidedById" UUID,
    "decidedByName" TEXT,
    "decidedAt" TIMESTAMPTZ(3),

    CONSTRAINT "Lesson_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "Lesson_decision_idx" ON "Lesson"("decision");

-- CreateIndex
CREATE UNIQUE INDEX "Lesson_programmeId_number_key" ON "Lesson"("programmeId", "number");

-- AddForeignKey
ALTER TABLE "Lesson" ADD CONSTRAINT "Lesson_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
