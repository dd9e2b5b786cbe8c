-- CreateTable
CREATE TABLE "Delegation" (
    "id" UUID NOT NULL,
    "personId" UUID NOT NULL,
    "delegateId" UUID NOT NULL,
    "fromOn" TEXT NOT NULL,
    "toOn" TEXT NOT NULL,
    "namedAt" TIMESTAMPTZ(3) NOT NULL,
    "endedById" UUID,
    "endedAt" TIMESTAMPTZ(3),

    CONSTRAINT "Delegation_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "DigestWish" (
    "personId" UUID NOT NULL,
    "wanted" BOOLEAN NOT NULL,
    "chosenAt" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "DigestWish_pkey" PRIMARY KEY ("personId")
);

-- CreateTable
CREATE TABLE "DigestSent" (
    "personId" UUID NOT NULL,
    "sentOn" TEXT NOT NULL,
    "keys" TEXT[],

    CONSTRAINT "DigestSent_pkey" PRIMARY KEY ("personId")
);

-- CreateTable
CREATE TABLE "CalendarAddress" (
    "id" UUID NOT NULL,
    "personId" UUID NOT NULL,
    "tokenHash" TEXT NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL,
    "revokedAt" TIMESTAMPTZ(3),

    CONSTRAINT "CalendarAddress_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "Delegation_personId_idx" ON "Delegation"("personId");

-- CreateIndex
CREATE INDEX "Delegation_delegateId_idx" ON "Delegation"("delegateId");

-- CreateIndex
CREATE UNIQUE INDEX "CalendarAddress_tokenHash_key" ON "CalendarAddress"("tokenHash");

-- CreateIndex
CREATE INDEX "CalendarAddress_personId_idx" ON "CalendarAddress"("personId");
