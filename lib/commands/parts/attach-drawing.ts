import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, optionalLine, sha256Hex, worksCode } from '@/lib/commands/inputs'
import { partInUse } from '@/lib/commands/parts/load-part'
import { claimFile } from '@/lib/evidence/claim-file'
import { Refused } from '@/shared/refused'

/** Attaches a stored file, a drawing or data sheet, to a part of the works. */
export const attachDrawing = defineCommand({
  name: 'attach-drawing',
  input: z.strictObject({
    part: worksCode('The part'),
    note: optionalLine('The note', 500),
    sha256: sha256Hex,
    fileName: line('The file name', 255),
  }),
  async load(tx, { sha256 }, { trailId, actor }) {
    const { code } = await partInUse(tx, trailId)
    const stored = await claimFile(tx, sha256, { personId: actor.personId, trailId })
    const twin = await tx.evidence.findFirst({
      where: { trailId, sha256, withdrawnAt: null },
      select: { id: true },
    })
    return { code, stored, twin }
  },
  decide({ code, stored, twin }, { note, sha256, fileName }, { newId }) {
    if (!stored) throw new Refused('The file did not arrive. Upload it again.', { file: 'Upload it again.' })
    if (twin) throw new Refused('This very file is attached to the part already.')
    const drawing = { id: newId(), kind: 'drawing', note, sha256, fileName }
    return {
      change: drawing,
      record: { part: code, ...drawing, size: stored.size, mediaType: stored.mediaType },
      result: { evidence: drawing.id },
    }
  },
  async apply(tx, drawing, { trailId, actor, now }) {
    await tx.evidence.create({ data: { ...drawing, trailId, addedById: actor.personId, at: now } })
  },
})
