-- CreateTable
CREATE TABLE "BoardConfirmation" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "evidenceId" UUID NOT NULL,
    "files" JSONB NOT NULL,
    "byId" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "BoardConfirmation_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "BoardConfirmation_programmeId_evidenceId_idx" ON "BoardConfirmation"("programmeId", "evidenceId");

-- AddForeignKey
ALTER TABLE "BoardConfirmation" ADD CONSTRAINT "BoardConfirmation_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
