-- AlterTable
ALTER TABLE "Lesson" ADD COLUMN     "retiredAt" TIMESTAMPTZ(3),
ADD COLUMN     "retiredById" UUID,
ADD COLUMN     "retiredByName" TEXT,
ADD COLUMN     "retiredWhy" TEXT;
