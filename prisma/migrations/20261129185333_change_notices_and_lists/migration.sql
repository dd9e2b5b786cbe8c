-- AlterTable
ALTER TABLE "Approval" ADD COLUMN     "confirms" UUID,
ADD COLUMN     "found" TEXT;

-- AlterTable
ALTER TABLE "Requirement" ADD COLUMN     "notice" INTEGER,
ADD COLUMN     "withdrawnNotice" INTEGER;

-- AlterTable
ALTER TABLE "Revision" ADD COLUMN     "notice" INTEGER;

-- CreateTable
CREATE TABLE "ChangeNotice" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "title" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "costPerBoard" DOUBLE PRECISION,
    "costOnce" DOUBLE PRECISION,
    "openedById" UUID NOT NULL,
    "openedAt" TIMESTAMPTZ(3) NOT NULL,
    "disposition" TEXT,
    "dispositionWhy" TEXT,
    "disposedById" UUID,
    "disposedAt" TIMESTAMPTZ(3),

    CONSTRAINT "ChangeNotice_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "NoticeChange" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "notice" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "content" JSONB NOT NULL,
    "reason" TEXT NOT NULL,
    "authorId" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "droppedById" UUID,
    "droppedAt" TIMESTAMPTZ(3),

    CONSTRAINT "NoticeChange_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "NoticeAnswer" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "notice" INTEGER NOT NULL,
    "department" TEXT NOT NULL,
    "agrees" BOOLEAN NOT NULL,
    "reason" TEXT NOT NULL,
    "digest" TEXT NOT NULL,
    "personId" UUID NOT NULL,
    "personName" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "NoticeAnswer_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "ChangeNotice_programmeId_number_key" ON "ChangeNotice"("programmeId", "number");

-- CreateIndex
CREATE INDEX "NoticeChange_programmeId_notice_idx" ON "NoticeChange"("programmeId", "notice");

-- CreateIndex
CREATE INDEX "NoticeAnswer_programmeId_notice_idx" ON "NoticeAnswer"("programmeId", "notice");

-- AddForeignKey
ALTER TABLE "ChangeNotice" ADD CONSTRAINT "ChangeNotice_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "NoticeChange" ADD CONSTRAINT "NoticeChange_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "NoticeAnswer" ADD CONSTRAINT "NoticeAnswer_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
