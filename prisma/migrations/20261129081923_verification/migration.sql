-- CreateTable
CREATE TABLE "Verification" (
    "trailId" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "intact" BOOLEAN NOT NULL,
    "entries" INTEGER NOT NULL,
    "breaks" INTEGER NOT NULL,
    "clockSteps" INTEGER NOT NULL,
    "unhashedRows" INTEGER NOT NULL,

    CONSTRAINT "Verification_pkey" PRIMARY KEY ("trailId")
);
