import { randomUUID } from 'node:crypto'
import { Readable } from 'node:stream'
import { strToU8, zipSync } from 'fflate'
import { database } from '@/lib/db/client'
import { installedStore } from '@/lib/evidence/installed-store'
import { registerFile } from '@/lib/evidence/register-file'
import type { World } from '@/tests/commands/world'
import { ONE_HOLE } from '@/tests/rules/board/small-board'

/** A zip of a board of one hole, attached to an item; answers the evidence's id. */
export async function attachBoardFiles(world: World): Promise<string> {
  const archive = zipSync({
    'top.gbr': strToU8(ONE_HOLE.top),
    'board-PTH.drl': strToU8(`;${randomUUID()}\n${ONE_HOLE.drill}`),
  })
  const content = await (
    await installedStore()
  ).put(Readable.from([Buffer.from(archive)]), { fileName: 'board.zip' })
  const { id } = await database().programme.findUniqueOrThrow({ where: { code: world.code } })
  await registerFile(content, { personId: world.person.design, trailId: id })
  const attached = await world.must('design', 'attach-evidence', {
    programme: world.code,
    item: 'holes-and-lands',
    kind: 'drawing',
    note: '',
    what: { sha256: content.sha256, fileName: 'board.zip' },
  })
  return attached.result.evidence
}
