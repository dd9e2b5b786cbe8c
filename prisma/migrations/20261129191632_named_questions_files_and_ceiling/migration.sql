-- AlterTable
ALTER TABLE "Action" ADD COLUMN     "askedOfId" UUID,
ADD COLUMN     "study" INTEGER;

-- CreateTable
CREATE TABLE "AnswerFile" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "action" INTEGER NOT NULL,
    "sha256" TEXT NOT NULL,
    "fileName" TEXT NOT NULL,
    "note" TEXT NOT NULL,
    "addedById" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "AnswerFile_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "MoneyCeiling" (
    "programmeId" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "amount" DOUBLE PRECISION,
    "boards" INTEGER,
    "lots" INTEGER,
    "reason" TEXT NOT NULL,
    "authorId" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "MoneyCeiling_pkey" PRIMARY KEY ("programmeId","number")
);

-- CreateIndex
CREATE INDEX "AnswerFile_programmeId_action_idx" ON "AnswerFile"("programmeId", "action");

-- CreateIndex
CREATE INDEX "AnswerFile_sha256_idx" ON "AnswerFile"("sha256");

-- AddForeignKey
ALTER TABLE "AnswerFile" ADD CONSTRAINT "AnswerFile_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "MoneyCeiling" ADD CONSTRAINT "MoneyCeiling_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
