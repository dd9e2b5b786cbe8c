-- CreateTable
CREATE TABLE "Part" (
    "id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "describedById" UUID NOT NULL,
    "describedAt" TIMESTAMPTZ(3) NOT NULL,
    "withdrawnById" UUID,
    "withdrawnAt" TIMESTAMPTZ(3),
    "withdrawnWhy" TEXT,

    CONSTRAINT "Part_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "PartRevision" (
    "partId" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "values" JSONB NOT NULL,
    "reason" TEXT NOT NULL,
    "authorId" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "PartRevision_pkey" PRIMARY KEY ("partId","number")
);

-- CreateTable
CREATE TABLE "PartApproval" (
    "id" UUID NOT NULL,
    "partId" UUID NOT NULL,
    "revision" INTEGER NOT NULL,
    "digest" TEXT NOT NULL,
    "cover" TEXT NOT NULL,
    "personId" UUID NOT NULL,
    "personName" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "PartApproval_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "Part_code_key" ON "Part"("code");

-- CreateIndex
CREATE INDEX "PartApproval_partId_idx" ON "PartApproval"("partId");

-- AddForeignKey
ALTER TABLE "PartRevision" ADD CONSTRAINT "PartRevision_partId_fkey" FOREIGN KEY ("partId") REFERENCES "Part"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PartApproval" ADD CONSTRAINT "PartApproval_partId_fkey" FOREIGN KEY ("partId") REFERENCES "Part"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
