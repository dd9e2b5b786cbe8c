import { notFound } from 'next/navigation'
import { addressPart } from '@/app/address-part'
import { itemAddress, routeCardAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Notice } from '@/app/ui/notice'
import { OnThisSheet } from '@/app/ui/on-this-sheet'
import { findBoardArchive, otherArchives, readBoard } from '@/lib/queries/board-files'
import type { Board } from '@/shared/board/board'
import { boardFindings } from '@/shared/board/judged/board-findings'
import { itemStateFor } from '@/shared/gate/judgement'
import { formatQuantity } from '@/shared/quantity/format'
import { BoardPicture } from './board-picture'
import { BoardMarks, ConductorWidths, HoleGroups } from './board-tables'
import { ComponentJoints } from './component-joints'
import { Details, hasDetails } from './details'
import { FollowsFromBoard } from './follows-from-board'
import { JudgedBoard } from './judged-board'
import { LayerFiles } from './layer-files'
import { OtherArchives } from './other-archives'
import { Placement } from './placement'

export const generateMetadata = programmeTitle(({ code }) => `Board files, ${code}`)

/** What an archive of board files says of the board. */
export default programmePage<{ evidence: string }>(async ({ visit, code, params: { evidence } }) => {
  const archive = await findBoardArchive(visit.view.state.programme.id, addressPart(evidence))
  if (!archive) notFound()
  const [read, others] = await Promise.all([
    readBoard(archive, visit.view.state.facts),
    otherArchives(visit.view.state.programme.id, archive),
  ])
  const board = 'reading' in read ? read.reading.board : undefined
  const findings = board ? boardFindings(board, visit.view.state.facts) : []
  const box = board?.outline?.box
  const item = itemStateFor(visit.view.judgement, archive.itemKey)?.item.definition
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={routeCardAddress(code)}
      place={[
        ...(item ? [{ text: item.title, href: `${itemAddress(code, item.key)}#evidence` }] : []),
        { text: archive.fileName },
      ]}
      title={archive.fileName}
      supplement="The board as its production files have it"
      cells={
        board
          ? [
              { label: 'Holes', value: board.holes.length },
              {
                label: 'Outline',
                value: box
                  ? `${formatQuantity(box.maxX - box.minX, 'mm', 5)} × ${formatQuantity(box.maxY - box.minY, 'mm', 5)}${board.outline?.closed ? '' : ', open'}`
                  : 'not found',
              },
              { label: 'Pieces of copper', value: board.pieces },
            ]
          : []
      }
    >
      {(view) =>
        'refused' in read || !board ? (
          <Notice kind="refusal">{'refused' in read ? read.refused : 'The files hold no board.'}</Notice>
        ) : (
          <>
            <OnThisSheet
              parts={partsOf(board, { others: others.length > 0, details: hasDetails(findings) })}
            />
            {archive.confirmed ? (
              <Notice kind="success">
                What each file is was confirmed by {archive.confirmed.byName}. Confirm again where it is
                wrong.
              </Notice>
            ) : (
              <Notice kind="refusal">What each file is was proposed and nobody has confirmed it yet.</Notice>
            )}
            <LayerFiles view={view} evidence={archive.evidence} files={read.reading.files} />
            <BoardPicture
              layers={read.reading.pictures.map((picture) => picture.code)}
              code={view.code}
              archive={archive}
              board={board}
              findings={findings}
            />
            <JudgedBoard findings={findings} />
            <Details
              layers={read.reading.pictures.map((picture) => picture.code)}
              code={view.code}
              archive={archive}
              board={board}
              findings={findings}
            />
            <FollowsFromBoard view={view} archive={archive} board={board} />
            <Placement view={view} board={board} />
            <ComponentJoints view={view} board={board} />
            <HoleGroups board={board} />
            <ConductorWidths board={board} />
            <BoardMarks board={board} />
            <OtherArchives code={view.code} evidence={archive.evidence} others={others} />
          </>
        )
      }
    </ProgrammeSheet>
  )
})

/** The parts of the sheet that have something in them. */
const partsOf = (board: Board, { others, details }: { others: boolean; details: boolean }) =>
  [
    { id: 'files', text: 'Files', there: true },
    { id: 'picture', text: 'The board', there: true },
    { id: 'judged', text: 'Judged', there: true },
    { id: 'details', text: 'Details', there: details },
    { id: 'follows', text: 'Specification', there: true },
    { id: 'placement', text: 'Placement', there: board.placement !== undefined },
    { id: 'joints', text: 'Joints', there: board.joints.length > 0 },
    { id: 'holes', text: 'Holes', there: true },
    { id: 'conductors', text: 'Drawn widths', there: board.conductors.length > 0 },
    { id: 'marks', text: 'Fiducials', there: board.marks.length > 0 },
    { id: 'others', text: 'Compare', there: others },
  ].filter(({ there }) => there)
