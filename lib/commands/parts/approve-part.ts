import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { sha256Hex, worksCode } from '@/lib/commands/inputs'
import { partInUse } from '@/lib/commands/parts/load-part'
import { Refused } from '@/shared/refused'
import { partContent, partDigest } from '@/shared/works/part-content'

/** Quality of the works signs a part's values as they stand; `digest` is of those that the person had before them. */
export const approvePart = defineCommand({
  name: 'approve-part',
  input: z.strictObject({ part: worksCode('The part'), digest: sha256Hex }),
  load: async (tx, _input, { trailId }) => {
    const part = await partInUse(tx, trailId)
    const digest = partDigest(part.code, part.newest.values)
    return {
      ...part,
      digest,
      signed: await tx.partApproval.findFirst({ where: { partId: trailId, digest }, select: { id: true } }),
    }
  },
  subject: ({ newest }) => ({ authorId: newest.authorId }),
  decide({ code, newest, digest, signed }, { digest: seen }, { newId }) {
    if (digest !== seen)
      throw new Refused('The part was revised since you opened it. Read it again before you sign.')
    if (signed) throw new Refused(`Part ${code} is approved as it stands.`)
    const approval = {
      id: newId(),
      revision: newest.number,
      digest,
      cover: partContent(code, newest.values),
    }
    return { change: approval, record: { part: code, ...approval }, result: { part: code } }
  },
  async apply(tx, approval, { trailId, actor, now }) {
    await tx.partApproval.create({
      data: { ...approval, partId: trailId, personId: actor.personId, personName: actor.name, at: now },
    })
  },
})
