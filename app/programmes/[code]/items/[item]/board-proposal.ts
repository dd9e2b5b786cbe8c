import { findBoardArchive, readBoard, type BoardArchive } from '@/lib/queries/board-files'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Board } from '@/shared/board/board'
import { holeGroups } from '@/shared/board/hole-groups'
import { proposedConductors } from '@/shared/board/proposed/proposed-conductors'
import { proposedLeadHoles } from '@/shared/board/proposed/proposed-lead-holes'
import {
  proposedCopperToEdge,
  proposedSize,
  proposedSurfaceJoints,
} from '@/shared/board/proposed/proposed-sizes'
import { proposedPartsList } from '@/shared/board/proposed/proposed-parts-list'
import { proposedSpacings } from '@/shared/board/proposed/proposed-spacings'
import { boardLength, boardWidth } from '@/shared/plan/parameters/assessment-inspection'
import { conductors } from '@/shared/plan/parameters/conductors'
import { surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { netClasses } from '@/shared/plan/parameters/net-classes'
import type { Parameter } from '@/shared/plan/parameter'
import { partsList } from '@/shared/plan/parameters/parts-list'
import { copperToEdge, spacings } from '@/shared/plan/parameters/spacings'
import type { FilledIn } from './filled-in'
import type { Asked } from './proposal-asked'
import { proposalsFor, type ValueProposal } from './value-proposal'

/** What follows from a board's files for the specification, and how it differs from what stands. */
export function boardProposals(view: ProgrammeView, board: Board): ValueProposal[] {
  const { values } = view.state.facts
  const now = <T>({ key }: Parameter<T>): T | undefined => values.get(key) as T | undefined
  const classes = now(netClasses) ?? []
  const size = proposedSize(board, { lengthMm: now(boardLength), widthMm: now(boardWidth) })
  return proposalsFor(view, [
    [partsList, proposedPartsList(board, now(partsList) ?? [])],
    [leadHoles, proposedLeadHoles(holeGroups(board.holes), now(leadHoles) ?? [])],
    [conductors, proposedConductors(board, now(conductors) ?? [], classes)],
    [spacings, proposedSpacings(board.gaps, now(spacings) ?? [], classes)],
    [copperToEdge, proposedCopperToEdge(board)],
    [boardLength, size?.lengthMm],
    [boardWidth, size?.widthMm],
    [surfaceMountJoints, proposedSurfaceJoints(board)],
  ])
}

/** The value that the address asks to be filled in from board files; undefined where it does not, or they are not there. */
export async function boardProposal(
  view: ProgrammeView,
  { revise, board }: Asked,
): Promise<FilledIn | undefined> {
  if (revise === undefined || board === undefined) return undefined
  const { state } = view
  const archive = await findBoardArchive(state.programme.id, board)
  const read = archive && (await readBoard(archive, state.facts))
  if (!archive || !read || !('reading' in read)) return undefined
  const found = boardProposals(view, read.reading.board).find(({ parameter }) => parameter.key === revise)
  return (
    found && {
      from: 'board files',
      parameter: revise,
      value: found.value,
      reason: reasonFrom(archive),
    }
  )
}

/** What the reason says of where a value comes from. */
export const reasonFrom = ({ fileName, sha256, confirmed }: BoardArchive): string =>
  `From the board files ${fileName} (SHA-256 ${sha256.slice(0, 12)})${confirmed ? `, confirmed by ${confirmed.byName}` : ', not confirmed yet'}.`
