-- AlterTable
ALTER TABLE "Concession" ADD COLUMN     "findingData" TEXT;
