import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { standingOf } from '@/lib/commands/corrections/correction'
import { id, line, optionalLine, sha256Hex } from '@/lib/commands/inputs'
import { recordable } from '@/lib/commands/recordable'
import { claimFile } from '@/lib/evidence/claim-file'
import { training } from '@/shared/records/kinds/training'
import type { CorrectedValues } from '@/shared/records/correction'
import { Refused } from '@/shared/refused'
import type { JsonValue } from '@/shared/trail/canonical-json'

/** Attaches a stored certificate to a training, wherever that was recorded. */
export const attachCertificate = defineCommand({
  name: 'attach-certificate',
  input: z.strictObject({
    record: id,
    note: optionalLine('The note', 500),
    sha256: sha256Hex,
    fileName: line('The file name', 255),
  }),
  async load(tx, { record: key, sha256 }, { trailId, actor }) {
    const record = await tx.record.findFirst({
      where: { id: key, kind: training.key, withdrawnAt: null },
    })
    if (!record) throw new Refused('This training does not count any more.')
    const stored = await claimFile(tx, sha256, { personId: actor.personId, trailId })
    if (!stored) throw new Refused('The file did not arrive. Upload it again.', { file: 'Upload it again.' })
    const twin = await tx.evidence.findFirst({
      where: { trailId, sha256, withdrawnAt: null, about: { path: ['record'], equals: key } },
      select: { id: true },
    })
    if (twin) throw new Refused('This very file is attached to the training already.')
    const { values } = await standingOf(tx, 'record', key, record.data as CorrectedValues)
    return { stored, of: recordable(values) as Record<string, JsonValue> }
  },
  decide({ stored: { size, mediaType }, of }, { record: key, note, sha256, fileName }, { newId }) {
    const evidence = {
      id: newId(),
      about: { kind: 'record', record: key },
      kind: 'certificate',
      note,
      sha256,
      fileName,
    }
    return {
      change: evidence,
      record: { ...evidence, of, size, mediaType },
      result: { evidence: evidence.id },
    }
  },
  async apply(tx, evidence, { trailId, actor, now }) {
    await tx.evidence.create({ data: { ...evidence, trailId, addedById: actor.personId, at: now } })
  },
})
