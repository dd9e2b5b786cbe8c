-- AlterTable
ALTER TABLE "Requirement" ADD COLUMN     "companyRule" UUID;

-- CreateTable
CREATE TABLE "CompanyRule" (
    "id" UUID NOT NULL,
    "trailId" UUID NOT NULL,
    "limit" TEXT NOT NULL,
    "value" DOUBLE PRECISION NOT NULL,
    "relaxes" BOOLEAN NOT NULL,
    "document" TEXT NOT NULL,
    "edition" TEXT NOT NULL,
    "clause" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "replaces" UUID,
    "statedById" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "withdrawnById" UUID,
    "withdrawnAt" TIMESTAMPTZ(3),
    "withdrawnWhy" TEXT,

    CONSTRAINT "CompanyRule_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "CompanyPreference" (
    "id" UUID NOT NULL,
    "trailId" UUID NOT NULL,
    "parameter" TEXT NOT NULL,
    "value" JSONB NOT NULL,
    "reason" TEXT NOT NULL,
    "statedById" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "withdrawnById" UUID,
    "withdrawnAt" TIMESTAMPTZ(3),
    "withdrawnWhy" TEXT,

    CONSTRAINT "CompanyPreference_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "OwnRuleKept" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "ruleId" UUID NOT NULL,
    "standing" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "byId" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "OwnRuleKept_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "CompanyRule_trailId_idx" ON "CompanyRule"("trailId");

-- CreateIndex
CREATE INDEX "CompanyPreference_trailId_idx" ON "CompanyPreference"("trailId");

-- CreateIndex
CREATE INDEX "OwnRuleKept_programmeId_idx" ON "OwnRuleKept"("programmeId");

-- CreateIndex
CREATE INDEX "Requirement_companyRule_idx" ON "Requirement"("companyRule");

-- AddForeignKey
ALTER TABLE "CompanyRule" ADD CONSTRAINT "CompanyRule_trailId_fkey" FOREIGN KEY ("trailId") REFERENCES "TrailSubject"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "CompanyPreference" ADD CONSTRAINT "CompanyPreference_trailId_fkey" FOREIGN KEY ("trailId") REFERENCES "TrailSubject"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "OwnRuleKept" ADD CONSTRAINT "OwnRuleKept_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
