import { Readable } from 'node:stream'
import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, optionalLine } from '@/lib/commands/inputs'
import { loadPlanItem } from '@/lib/commands/plan/load-plan-item'
import { reviewNamed } from '@/lib/commands/reviews/load-open-review'
import { installedStore } from '@/lib/evidence/installed-store'
import { loadReview } from '@/lib/programme/load-review'
import { Refused } from '@/shared/refused'

/**
 * Names signed minutes as evidence of an item. The text that the chair signed is the file, so that the hash of the
 * evidence is the digest of the signature.
 */
export const nameMinutes = defineCommand({
  name: 'name-minutes',
  input: z.strictObject({
    ...reviewNamed,
    item: line('The item'),
    note: optionalLine('The note', 500),
  }),
  async load(tx, { review: number, item }, { programmeId }) {
    const review = await loadReview(tx, programmeId, number)
    if (!review?.closed)
      throw new Refused(`Review ${number} has no signed minutes yet. Its chair closes it first.`)
    const { cover, digest } = review.closed
    const twin = await tx.evidence.findFirst({
      where: { trailId: programmeId, itemKey: item, withdrawnAt: null, sha256: digest },
    })
    if (twin) throw new Refused('These minutes are evidence of the item already.')
    return {
      item: await loadPlanItem(tx, programmeId, item),
      file: await (await installedStore()).put(Readable.from([Buffer.from(cover)])),
    }
  },
  decide({ item, file: { sha256, size, mediaType } }, { review, note }, { newId }) {
    const evidence = {
      id: newId(),
      itemKey: item.definition.key,
      kind: 'minutes',
      note,
      sha256,
      fileName: `minutes-of-review-${review}.json`,
      url: null,
    }
    return {
      change: { evidence, file: { sha256, size, mediaType } },
      record: { ...evidence, review, size, mediaType },
      result: { evidence: evidence.id },
    }
  },
  async apply(tx, { evidence, file }, { programmeId, actor, now }) {
    await tx.storedFile.upsert({
      where: { sha256: file.sha256 },
      create: { ...file, storedAt: now },
      update: { storedAt: now },
    })
    await tx.evidence.create({
      data: { ...evidence, trailId: programmeId, addedById: actor.personId, at: now },
    })
  },
})
