-- AlterTable
ALTER TABLE "Person" ADD COLUMN     "oneTimePasswordUntil" TIMESTAMPTZ(3);

-- One-time passwords given earlier are good for 72 hours from now on.
UPDATE "Person" SET "oneTimePasswordUntil" = now() + interval '72 hours' WHERE "mustChangePassword";
