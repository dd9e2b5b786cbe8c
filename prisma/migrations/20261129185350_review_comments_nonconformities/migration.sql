-- AlterTable
ALTER TABLE "Action" ADD COLUMN     "bornOf" JSONB;

-- AlterTable
ALTER TABLE "Evidence" ADD COLUMN     "about" JSONB,
ALTER COLUMN "itemKey" DROP NOT NULL;

-- CreateTable
CREATE TABLE "Review" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "title" TEXT NOT NULL,
    "heldOn" TEXT NOT NULL,
    "chairId" UUID NOT NULL,
    "present" JSONB NOT NULL,
    "openedById" UUID NOT NULL,
    "openedAt" TIMESTAMPTZ(3) NOT NULL,
    "closedById" UUID,
    "closedByName" TEXT,
    "closedAt" TIMESTAMPTZ(3),
    "digest" TEXT,
    "cover" TEXT,

    CONSTRAINT "Review_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "MinuteLine" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "review" INTEGER NOT NULL,
    "number" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "about" JSONB,
    "text" TEXT NOT NULL,
    "action" INTEGER,
    "ownerId" UUID,
    "corrects" INTEGER,
    "authorId" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "struckById" UUID,
    "struckAt" TIMESTAMPTZ(3),
    "struckWhy" TEXT,

    CONSTRAINT "MinuteLine_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Comment" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "aboutKind" TEXT NOT NULL,
    "aboutKey" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "mentions" UUID[],
    "authorId" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "resolvedById" UUID,
    "resolvedAt" TIMESTAMPTZ(3),
    "action" INTEGER,

    CONSTRAINT "Comment_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Nonconformity" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "title" TEXT NOT NULL,
    "found" TEXT NOT NULL,
    "foundOn" TEXT NOT NULL,
    "owner" TEXT NOT NULL,
    "place" JSONB NOT NULL,
    "source" JSONB,
    "openedById" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "Nonconformity_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "NonconformityStep" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "nonconformity" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "doneOn" TEXT NOT NULL,
    "helped" BOOLEAN,
    "addedById" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "withdrawnById" UUID,
    "withdrawnAt" TIMESTAMPTZ(3),
    "withdrawnWhy" TEXT,

    CONSTRAINT "NonconformityStep_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "Review_programmeId_number_key" ON "Review"("programmeId", "number");

-- CreateIndex
CREATE UNIQUE INDEX "MinuteLine_programmeId_review_number_key" ON "MinuteLine"("programmeId", "review", "number");

-- CreateIndex
CREATE INDEX "Comment_programmeId_aboutKind_aboutKey_idx" ON "Comment"("programmeId", "aboutKind", "aboutKey");

-- CreateIndex
CREATE INDEX "Comment_mentions_idx" ON "Comment" USING GIN ("mentions");

-- CreateIndex
CREATE UNIQUE INDEX "Comment_programmeId_number_key" ON "Comment"("programmeId", "number");

-- CreateIndex
CREATE UNIQUE INDEX "Nonconformity_programmeId_number_key" ON "Nonconformity"("programmeId", "number");

-- CreateIndex
CREATE INDEX "NonconformityStep_programmeId_nonconformity_idx" ON "NonconformityStep"("programmeId", "nonconformity");

-- AddForeignKey
ALTER TABLE "Review" ADD CONSTRAINT "Review_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "MinuteLine" ADD CONSTRAINT "MinuteLine_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Comment" ADD CONSTRAINT "Comment_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Nonconformity" ADD CONSTRAINT "Nonconformity_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "NonconformityStep" ADD CONSTRAINT "NonconformityStep_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
