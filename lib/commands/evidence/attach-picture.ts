import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, optionalLine, programmeCode, sha256Hex, wholeNumber } from '@/lib/commands/inputs'
import { claimFile } from '@/lib/evidence/claim-file'
import { Refused } from '@/shared/refused'

const about = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('nonconformity'),
    number: wholeNumber('The nonconformity', 1, 1_000_000),
  }),
  z.strictObject({
    kind: z.literal('joint'),
    assembly: line('The assembly', 40),
    joint: line('The joint', 40),
  }),
])

/** Attaches a stored picture to a nonconformity, or to one joint of an assembly. */
export const attachPicture = defineCommand({
  name: 'attach-picture',
  input: z.strictObject({
    programme: programmeCode,
    about,
    note: optionalLine('The note', 500),
    sha256: sha256Hex,
    fileName: line('The file name', 255),
  }),
  async load(tx, { about: shown, sha256 }, { trailId, actor }) {
    if (shown.kind === 'nonconformity') {
      const { number } = shown
      const found = await tx.nonconformity.findFirst({
        where: { programmeId: trailId, number },
        select: { id: true },
      })
      if (!found) throw new Refused(`There is no nonconformity ${number} in this programme.`)
    }
    const stored = await claimFile(tx, sha256, { personId: actor.personId, trailId })
    if (!stored) throw new Refused('The file did not arrive. Upload it again.', { file: 'Upload it again.' })
    return stored
  },
  decide({ size, mediaType }, { about: shown, note, sha256, fileName }, { newId }) {
    if (!mediaType.startsWith('image/'))
      throw new Refused('This is no picture. Send a PNG, JPEG, WebP or TIFF file.', {
        file: 'Choose a picture.',
      })
    const picture = { id: newId(), about: shown, kind: 'picture', note, sha256, fileName }
    return {
      change: picture,
      record: { ...picture, size, mediaType },
      result: { evidence: picture.id },
    }
  },
  async apply(tx, picture, { trailId, actor, now }) {
    await tx.evidence.create({ data: { ...picture, trailId, addedById: actor.personId, at: now } })
  },
})
