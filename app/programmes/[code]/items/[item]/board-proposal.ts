import { findBoardArchive, readBoard } from '@/lib/queries/board-files'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { holeGroups } from '@/shared/board/hole-groups'
import { proposedLeadHoles } from '@/shared/board/proposed-lead-holes'
import { leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import type { FilledIn } from './filled-in'
import type { Asked } from './proposal-asked'

/** The table that the address asks to be filled in from board files; undefined where it does not, or they are not there. */
export async function boardProposal(
  { state }: ProgrammeView,
  { revise, board }: Asked,
): Promise<FilledIn | undefined> {
  if (revise !== leadHoles.key || board === undefined) return undefined
  const archive = await findBoardArchive(state.programme.id, board)
  const read = archive && (await readBoard(archive, state.facts))
  if (!archive || !read || !('reading' in read)) return undefined
  const before = (state.revisions.get(leadHoles.key)?.value ?? []) as readonly LeadHole[]
  return {
    from: 'board files',
    parameter: leadHoles.key,
    value: proposedLeadHoles(holeGroups(read.reading.board.holes), before),
    reason: `From the board files ${archive.fileName} (SHA-256 ${archive.sha256.slice(0, 12)}).`,
  }
}
