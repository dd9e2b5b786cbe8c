-- AlterTable
ALTER TABLE "SignInThrottle" ADD COLUMN     "lastSuccess" TIMESTAMPTZ(3),
ALTER COLUMN "failures" SET DATA TYPE DOUBLE PRECISION;

-- CreateTable
CREATE TABLE "Session" (
    "id" UUID NOT NULL,
    "personId" UUID NOT NULL,
    "credentialEpoch" INTEGER NOT NULL,
    "startedAt" TIMESTAMPTZ(3) NOT NULL,
    "lastSeenAt" TIMESTAMPTZ(3) NOT NULL,
    "browser" TEXT NOT NULL,
    "address" TEXT NOT NULL,

    CONSTRAINT "Session_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "Session_personId_idx" ON "Session"("personId");

-- CreateIndex
CREATE INDEX "Session_lastSeenAt_idx" ON "Session"("lastSeenAt");

-- CreateIndex
CREATE INDEX "SignInThrottle_lastFailure_idx" ON "SignInThrottle"("lastFailure");

-- AddForeignKey
ALTER TABLE "Session" ADD CONSTRAINT "Session_personId_fkey" FOREIGN KEY ("personId") REFERENCES "Person"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
