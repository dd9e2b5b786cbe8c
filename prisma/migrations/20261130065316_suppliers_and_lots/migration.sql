-- AlterTable
ALTER TABLE "Lot" ADD COLUMN     "expiresOn" TEXT;

-- CreateTable
CREATE TABLE "Supplier" (
    "id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "addedById" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "closedById" UUID,
    "closedAt" TIMESTAMPTZ(3),
    "closedWhy" TEXT,

    CONSTRAINT "Supplier_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "LotAllocation" (
    "id" UUID NOT NULL,
    "trailId" UUID NOT NULL,
    "lotId" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "quantity" INTEGER NOT NULL,
    "outOfOrder" TEXT,
    "allocatedById" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "returned" INTEGER NOT NULL DEFAULT 0,
    "returnedById" UUID,
    "returnedAt" TIMESTAMPTZ(3),
    "returnedWhy" TEXT,

    CONSTRAINT "LotAllocation_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "LotUse" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "lotId" UUID NOT NULL,
    "assemblies" TEXT[],
    "addedById" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "LotUse_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "Supplier_code_key" ON "Supplier"("code");

-- CreateIndex
CREATE INDEX "LotAllocation_trailId_idx" ON "LotAllocation"("trailId");

-- CreateIndex
CREATE INDEX "LotAllocation_lotId_idx" ON "LotAllocation"("lotId");

-- CreateIndex
CREATE INDEX "LotAllocation_programmeId_idx" ON "LotAllocation"("programmeId");

-- CreateIndex
CREATE INDEX "LotUse_programmeId_idx" ON "LotUse"("programmeId");

-- CreateIndex
CREATE INDEX "LotUse_lotId_idx" ON "LotUse"("lotId");

-- CreateIndex
CREATE INDEX "LotTest_lotId_idx" ON "LotTest"("lotId");

-- AddForeignKey
ALTER TABLE "LotAllocation" ADD CONSTRAINT "LotAllocation_trailId_fkey" FOREIGN KEY ("trailId") REFERENCES "TrailSubject"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LotAllocation" ADD CONSTRAINT "LotAllocation_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LotAllocation" ADD CONSTRAINT "LotAllocation_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LotUse" ADD CONSTRAINT "LotUse_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LotUse" ADD CONSTRAINT "LotUse_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- A name as the rules compare it: spaces and capitals do not tell two apart. By it the lots of one supplier are found,
-- under whatever trail they were recorded.
CREATE FUNCTION name_key(name TEXT) RETURNS TEXT LANGUAGE sql IMMUTABLE PARALLEL SAFE
  RETURN lower(btrim(regexp_replace(name, '\s+', ' ', 'g')));
CREATE INDEX "Lot_supplier_key_idx" ON "Lot" (name_key("supplier"));
CREATE INDEX "Correction_supplier_key_idx" ON "Correction" (name_key("values" ->> 'supplier')) WHERE "of" = 'lot';
CREATE INDEX "Record_supplier_key_idx" ON "Record" (name_key("data" ->> 'supplier')) WHERE "kind" = 'supplier-action';
