-- CreateIndex
CREATE INDEX "TrailEntry_at_idx" ON "TrailEntry"("at");
