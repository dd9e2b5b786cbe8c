-- CreateTable
CREATE TABLE "Person" (
    "id" UUID NOT NULL,
    "email" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "passwordHash" TEXT,
    "identity" TEXT,
    "auditor" BOOLEAN NOT NULL DEFAULT false,
    "administrator" BOOLEAN NOT NULL DEFAULT false,
    "disabledAt" TIMESTAMPTZ(3),
    "credentialEpoch" INTEGER NOT NULL DEFAULT 0,
    "mustChangePassword" BOOLEAN NOT NULL DEFAULT false,
    "createdAt" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "Person_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "SignInThrottle" (
    "key" TEXT NOT NULL,
    "failures" INTEGER NOT NULL,
    "lastFailure" TIMESTAMPTZ(3) NOT NULL,
    "blockedUntil" TIMESTAMPTZ(3),

    CONSTRAINT "SignInThrottle_pkey" PRIMARY KEY ("key")
);

-- CreateTable
CREATE TABLE "Trail" (
    "id" TEXT NOT NULL,
    "seq" INTEGER NOT NULL DEFAULT 0,
    "headHash" TEXT NOT NULL,

    CONSTRAINT "Trail_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "TrailEntry" (
    "trailId" TEXT NOT NULL,
    "seq" INTEGER NOT NULL,
    "at" TEXT NOT NULL,
    "actorId" UUID NOT NULL,
    "actorName" TEXT NOT NULL,
    "command" TEXT NOT NULL,
    "payload" TEXT NOT NULL,
    "previousHash" TEXT NOT NULL,
    "hash" TEXT NOT NULL,

    CONSTRAINT "TrailEntry_pkey" PRIMARY KEY ("trailId","seq")
);

-- CreateTable
CREATE TABLE "Idempotency" (
    "key" UUID NOT NULL,
    "actorId" UUID NOT NULL,
    "command" TEXT NOT NULL,
    "inputHash" TEXT NOT NULL,
    "outcome" JSONB NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "Idempotency_pkey" PRIMARY KEY ("actorId","key")
);

-- CreateTable
CREATE TABLE "Programme" (
    "id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "leadId" UUID NOT NULL,
    "openedById" UUID NOT NULL,
    "openedAt" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "Programme_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Membership" (
    "programmeId" UUID NOT NULL,
    "personId" UUID NOT NULL,
    "department" TEXT NOT NULL,
    "since" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "Membership_pkey" PRIMARY KEY ("programmeId","personId","department")
);

-- CreateTable
CREATE TABLE "PlanItem" (
    "programmeId" UUID NOT NULL,
    "key" TEXT NOT NULL,
    "stage" TEXT NOT NULL,
    "position" INTEGER NOT NULL,
    "added" JSONB,
    "setAside" JSONB,

    CONSTRAINT "PlanItem_pkey" PRIMARY KEY ("programmeId","key")
);

-- CreateTable
CREATE TABLE "Revision" (
    "programmeId" UUID NOT NULL,
    "parameter" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "value" JSONB NOT NULL,
    "reason" TEXT NOT NULL,
    "authorId" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "Revision_pkey" PRIMARY KEY ("programmeId","parameter","number")
);

-- CreateTable
CREATE TABLE "Requirement" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "limit" TEXT NOT NULL,
    "authority" TEXT NOT NULL,
    "document" TEXT NOT NULL,
    "clause" TEXT NOT NULL,
    "value" DOUBLE PRECISION NOT NULL,
    "relaxes" BOOLEAN NOT NULL,
    "reason" TEXT NOT NULL,
    "authorId" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "withdrawnById" UUID,
    "withdrawnAt" TIMESTAMPTZ(3),

    CONSTRAINT "Requirement_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "StoredFile" (
    "sha256" TEXT NOT NULL,
    "size" INTEGER NOT NULL,
    "mediaType" TEXT NOT NULL,
    "storedAt" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "StoredFile_pkey" PRIMARY KEY ("sha256")
);

-- CreateTable
CREATE TABLE "Evidence" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "itemKey" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "note" TEXT NOT NULL,
    "sha256" TEXT,
    "fileName" TEXT,
    "url" TEXT,
    "addedById" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "withdrawnById" UUID,
    "withdrawnAt" TIMESTAMPTZ(3),
    "withdrawnWhy" TEXT,

    CONSTRAINT "Evidence_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Instrument" (
    "id" UUID NOT NULL,
    "tag" TEXT NOT NULL,
    "measures" TEXT NOT NULL,
    "calibratedOn" TEXT NOT NULL,
    "dueOn" TEXT NOT NULL,
    "certificate" TEXT NOT NULL,
    "outOfUse" BOOLEAN NOT NULL DEFAULT false,
    "updatedAt" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "Instrument_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Lot" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "part" TEXT NOT NULL,
    "supplier" TEXT NOT NULL,
    "dateCode" TEXT NOT NULL,
    "quantity" INTEGER NOT NULL,
    "receivedOn" TEXT NOT NULL,
    "storage" JSONB NOT NULL,
    "supplierResult" TEXT NOT NULL,
    "disposition" JSONB,
    "usedIn" TEXT[],
    "addedById" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "Lot_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "LotTest" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "lotId" UUID NOT NULL,
    "method" TEXT NOT NULL,
    "testedOn" TEXT NOT NULL,
    "testedBy" TEXT NOT NULL,
    "instrumentId" UUID,
    "conditions" JSONB NOT NULL,
    "addedById" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "withdrawnAt" TIMESTAMPTZ(3),
    "withdrawnWhy" TEXT,

    CONSTRAINT "LotTest_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Log" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "characteristic" TEXT NOT NULL,
    "line" TEXT NOT NULL,
    "machine" TEXT NOT NULL,
    "instrumentId" UUID,
    "mapping" JSONB,
    "addedById" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "Log_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "ReadingBatch" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "lotTestId" UUID,
    "logId" UUID,
    "count" INTEGER NOT NULL,
    "readings" JSON NOT NULL,
    "sha256" TEXT,
    "addedById" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "ReadingBatch_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Inspection" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "assembly" TEXT NOT NULL,
    "inspectedOn" TEXT NOT NULL,
    "inspector" TEXT NOT NULL,
    "magnification" DOUBLE PRECISION NOT NULL,
    "jointsSeen" INTEGER NOT NULL,
    "defects" JSONB NOT NULL,
    "note" TEXT NOT NULL,
    "addedById" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "withdrawnAt" TIMESTAMPTZ(3),
    "withdrawnWhy" TEXT,

    CONSTRAINT "Inspection_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Record" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "data" JSONB NOT NULL,
    "addedById" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "withdrawnAt" TIMESTAMPTZ(3),
    "withdrawnWhy" TEXT,

    CONSTRAINT "Record_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Action" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "itemKey" TEXT NOT NULL,
    "from" TEXT NOT NULL,
    "to" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "question" TEXT NOT NULL,
    "dueOn" TEXT NOT NULL,
    "askedById" UUID NOT NULL,
    "askedAt" TIMESTAMPTZ(3) NOT NULL,
    "answer" JSONB,
    "answeredById" UUID,
    "answeredAt" TIMESTAMPTZ(3),
    "outcome" TEXT,
    "outcomeWhy" TEXT,
    "closedById" UUID,
    "closedAt" TIMESTAMPTZ(3),

    CONSTRAINT "Action_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Approval" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "itemKey" TEXT NOT NULL,
    "department" TEXT NOT NULL,
    "personId" UUID NOT NULL,
    "personName" TEXT NOT NULL,
    "digest" TEXT NOT NULL,
    "cover" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "Approval_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "Concession" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "itemKey" TEXT NOT NULL,
    "rule" TEXT NOT NULL,
    "findingDigest" TEXT NOT NULL,
    "why" TEXT NOT NULL,
    "quantity" INTEGER,
    "untilOn" TEXT,
    "requestedById" UUID NOT NULL,
    "requestedAt" TIMESTAMPTZ(3) NOT NULL,
    "designById" UUID,
    "designName" TEXT,
    "designAt" TIMESTAMPTZ(3),
    "qualityById" UUID,
    "qualityName" TEXT,
    "qualityAt" TIMESTAMPTZ(3),
    "refusedById" UUID,
    "refusedAt" TIMESTAMPTZ(3),
    "refusedWhy" TEXT,

    CONSTRAINT "Concession_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "GateSignature" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "stage" TEXT NOT NULL,
    "department" TEXT NOT NULL,
    "personId" UUID NOT NULL,
    "personName" TEXT NOT NULL,
    "digest" TEXT NOT NULL,
    "cover" TEXT NOT NULL,
    "merkleRoot" TEXT NOT NULL,
    "trailSeq" INTEGER NOT NULL,
    "headHash" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "GateSignature_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "OptionStudy" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "itemKey" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "alternatives" JSONB NOT NULL,
    "openedById" UUID NOT NULL,
    "openedAt" TIMESTAMPTZ(3) NOT NULL,
    "adopted" TEXT,
    "adoptedWhy" TEXT,
    "adoptedById" UUID,
    "adoptedAt" TIMESTAMPTZ(3),

    CONSTRAINT "OptionStudy_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "MachineToken" (
    "id" UUID NOT NULL,
    "programmeId" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "tokenHash" TEXT NOT NULL,
    "createdById" UUID NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL,
    "revokedAt" TIMESTAMPTZ(3),

    CONSTRAINT "MachineToken_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "Person_email_key" ON "Person"("email");

-- CreateIndex
CREATE UNIQUE INDEX "Person_identity_key" ON "Person"("identity");

-- CreateIndex
CREATE INDEX "TrailEntry_trailId_command_seq_idx" ON "TrailEntry"("trailId", "command", "seq");

-- CreateIndex
CREATE INDEX "TrailEntry_trailId_actorId_seq_idx" ON "TrailEntry"("trailId", "actorId", "seq");

-- CreateIndex
CREATE INDEX "Idempotency_at_idx" ON "Idempotency"("at");

-- CreateIndex
CREATE UNIQUE INDEX "Programme_code_key" ON "Programme"("code");

-- CreateIndex
CREATE INDEX "Membership_personId_idx" ON "Membership"("personId");

-- CreateIndex
CREATE INDEX "Requirement_programmeId_idx" ON "Requirement"("programmeId");

-- CreateIndex
CREATE INDEX "Evidence_programmeId_itemKey_idx" ON "Evidence"("programmeId", "itemKey");

-- CreateIndex
CREATE INDEX "Evidence_sha256_idx" ON "Evidence"("sha256");

-- CreateIndex
CREATE UNIQUE INDEX "Instrument_tag_key" ON "Instrument"("tag");

-- CreateIndex
CREATE UNIQUE INDEX "Lot_programmeId_code_key" ON "Lot"("programmeId", "code");

-- CreateIndex
CREATE INDEX "LotTest_programmeId_idx" ON "LotTest"("programmeId");

-- CreateIndex
CREATE UNIQUE INDEX "Log_programmeId_code_key" ON "Log"("programmeId", "code");

-- CreateIndex
CREATE INDEX "ReadingBatch_programmeId_idx" ON "ReadingBatch"("programmeId");

-- CreateIndex
CREATE INDEX "Inspection_programmeId_idx" ON "Inspection"("programmeId");

-- CreateIndex
CREATE INDEX "Record_programmeId_kind_idx" ON "Record"("programmeId", "kind");

-- CreateIndex
CREATE UNIQUE INDEX "Action_programmeId_number_key" ON "Action"("programmeId", "number");

-- CreateIndex
CREATE INDEX "Approval_programmeId_itemKey_idx" ON "Approval"("programmeId", "itemKey");

-- CreateIndex
CREATE UNIQUE INDEX "Concession_programmeId_number_key" ON "Concession"("programmeId", "number");

-- CreateIndex
CREATE INDEX "GateSignature_programmeId_stage_idx" ON "GateSignature"("programmeId", "stage");

-- CreateIndex
CREATE UNIQUE INDEX "OptionStudy_programmeId_number_key" ON "OptionStudy"("programmeId", "number");

-- CreateIndex
CREATE UNIQUE INDEX "MachineToken_tokenHash_key" ON "MachineToken"("tokenHash");

-- CreateIndex
CREATE INDEX "MachineToken_programmeId_idx" ON "MachineToken"("programmeId");

-- AddForeignKey
ALTER TABLE "TrailEntry" ADD CONSTRAINT "TrailEntry_trailId_fkey" FOREIGN KEY ("trailId") REFERENCES "Trail"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Membership" ADD CONSTRAINT "Membership_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Membership" ADD CONSTRAINT "Membership_personId_fkey" FOREIGN KEY ("personId") REFERENCES "Person"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "PlanItem" ADD CONSTRAINT "PlanItem_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Revision" ADD CONSTRAINT "Revision_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Requirement" ADD CONSTRAINT "Requirement_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Evidence" ADD CONSTRAINT "Evidence_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Lot" ADD CONSTRAINT "Lot_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LotTest" ADD CONSTRAINT "LotTest_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "LotTest" ADD CONSTRAINT "LotTest_lotId_fkey" FOREIGN KEY ("lotId") REFERENCES "Lot"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Log" ADD CONSTRAINT "Log_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ReadingBatch" ADD CONSTRAINT "ReadingBatch_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ReadingBatch" ADD CONSTRAINT "ReadingBatch_lotTestId_fkey" FOREIGN KEY ("lotTestId") REFERENCES "LotTest"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "ReadingBatch" ADD CONSTRAINT "ReadingBatch_logId_fkey" FOREIGN KEY ("logId") REFERENCES "Log"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Inspection" ADD CONSTRAINT "Inspection_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Record" ADD CONSTRAINT "Record_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Action" ADD CONSTRAINT "Action_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Approval" ADD CONSTRAINT "Approval_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "Concession" ADD CONSTRAINT "Concession_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "GateSignature" ADD CONSTRAINT "GateSignature_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "OptionStudy" ADD CONSTRAINT "OptionStudy_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "MachineToken" ADD CONSTRAINT "MachineToken_programmeId_fkey" FOREIGN KEY ("programmeId") REFERENCES "Programme"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- The trail is append-only: nobody, the application included, changes or removes an entry.
CREATE FUNCTION refuse_change_of_trail() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'The trail is append-only: % is refused.', TG_OP USING ERRCODE = 'restrict_violation';
END
$$;
CREATE TRIGGER trail_entry_is_append_only BEFORE UPDATE OR DELETE ON "TrailEntry"
  FOR EACH ROW EXECUTE FUNCTION refuse_change_of_trail();
CREATE TRIGGER trail_entry_is_not_truncated BEFORE TRUNCATE ON "TrailEntry"
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change_of_trail();
