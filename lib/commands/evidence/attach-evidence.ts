import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, optionalLine, programmeCode, sha256Hex } from '@/lib/commands/inputs'
import { loadPlanItem } from '@/lib/commands/plan/load-plan-item'
import { claimFile } from '@/lib/evidence/claim-file'
import { Refused } from '@/shared/refused'

const file = z.strictObject({ sha256: sha256Hex, fileName: line('The file name', 255) })
const link = z.strictObject({
  url: z.url({ protocol: /^https?$/, error: 'A link starts with https:// or http://.' }).max(2000),
})

/** Attaches a stored file, or a link, to an item. */
export const attachEvidence = defineCommand({
  name: 'attach-evidence',
  input: z.strictObject({
    programme: programmeCode,
    item: line('The item'),
    kind: line('The kind of evidence', 60),
    note: optionalLine('The note', 500),
    what: z.union([file, link], { error: 'Choose a file or give a link.' }),
  }),
  async load(tx, { item, what }, { trailId, actor }) {
    const hash = 'sha256' in what ? what.sha256 : null
    return {
      item: await loadPlanItem(tx, trailId, item),
      stored: hash ? await claimFile(tx, hash, { personId: actor.personId, trailId }) : null,
      twin: await tx.evidence.findFirst({
        where: {
          trailId,
          itemKey: item,
          withdrawnAt: null,
          ...(hash ? { sha256: hash } : { url: (what as { url: string }).url }),
        },
      }),
    }
  },
  decide({ item, stored, twin }, { kind, note, what }, { newId }) {
    if ('sha256' in what && !stored)
      throw new Refused('The file did not arrive. Upload it again.', { file: 'Upload it again.' })
    if (twin) throw new Refused('This very evidence is attached to the item already.')
    const [sha256, fileName, url] =
      'sha256' in what ? [what.sha256, what.fileName, null] : [null, null, what.url]
    const evidence = { id: newId(), itemKey: item.definition.key, kind, note, sha256, fileName, url }
    return {
      change: evidence,
      record: { ...evidence, size: stored?.size ?? null, mediaType: stored?.mediaType ?? null },
      result: { evidence: evidence.id },
    }
  },
  async apply(tx, evidence, { trailId, actor, now }) {
    await tx.evidence.create({ data: { ...evidence, trailId, addedById: actor.personId, at: now } })
  },
})
