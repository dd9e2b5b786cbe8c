import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { id, line, programmeCode } from '@/lib/commands/inputs'
import { loadArchive } from '@/lib/commands/evidence/load-archive'
import { UNPACK_LIMITS } from '@/lib/board-files/unpack'
import { roleFrom } from '@/shared/board/role-code'
import { Refused } from '@/shared/refused'

const file = z.strictObject({
  name: line('The name of a file', 255),
  role: line('What a file is', 40),
})

/** States what each file of an attached archive is for the board; the newest statement is what it is read by. */
export const confirmBoardFiles = defineCommand({
  name: 'confirm-board-files',
  input: z.strictObject({
    programme: programmeCode,
    evidence: id,
    files: z.array(file).min(1, 'The archive has no file that is read.').max(UNPACK_LIMITS.files),
  }),
  load: (tx, { evidence }, { programmeId }) => loadArchive(tx, programmeId, evidence),
  decide({ id: evidence, fileName, sha256 }, { files }, { newId }) {
    const unknown = files.find(({ role }) => !roleFrom(role))
    if (unknown) throw new Refused(`${unknown.name} cannot be “${unknown.role}”. Choose from the list.`)
    const twice = ONE_EACH.find((role) => files.filter((each) => each.role === role).length > 1)
    if (twice) throw new Refused('Two files are said to be the same layer. Leave one of them out.')
    const row = { id: newId(), evidenceId: evidence, files }
    return {
      change: row,
      record: { id: row.id, evidence, fileName: fileName ?? '', sha256, files },
      result: { confirmation: row.id },
    }
  },
  async apply(tx, row, { programmeId, actor, now }) {
    await tx.boardConfirmation.create({ data: { ...row, programmeId, byId: actor.personId, at: now } })
  },
})

/** Layers of which a board has one. */
const ONE_EACH = [
  'copper-top',
  'copper-bottom',
  'mask-top',
  'mask-bottom',
  'outline',
  'netlist',
  'parts-list',
]
