import { notFound } from 'next/navigation'
import { addressPart } from '@/app/address-part'
import { boardAddress, routeCardAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Notice } from '@/app/ui/notice'
import { OnThisSheet } from '@/app/ui/on-this-sheet'
import { Section } from '@/app/ui/section'
import { findBoardArchive, readBoard, type BoardArchive } from '@/lib/queries/board-files'
import { GAP_REACH_MM } from '@/shared/board/board'
import type { BoardDifferences, Size } from '@/shared/board/compared/compare-boards'
import { formatQuantity } from '@/shared/quantity/format'
import { BoardSides } from '../../board-sides'
import { comparison, LETTERS, marksOf, type Comparison } from './comparison'
import { ChangedGaps, ChangedHoles, ChangedRings, TurnedFindings } from './comparison-tables'

export const generateMetadata = programmeTitle(({ code }) => `Board files compared, ${code}`)

/** What changed from an earlier archive of board files to a later one. */
export default programmePage<{ evidence: string; before: string }>(async ({ visit, code, params }) => {
  const { programme, facts } = visit.view.state
  const [after, before] = await Promise.all([
    findBoardArchive(programme.id, addressPart(params.evidence)),
    findBoardArchive(programme.id, addressPart(params.before)),
  ])
  if (!after || !before) notFound()
  const [is, was] = await Promise.all([readBoard(after, facts), readBoard(before, facts)])
  const compared =
    'reading' in is && 'reading' in was ? comparison(was.reading.board, is.reading, facts) : undefined
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={routeCardAddress(code)}
      place={[{ text: after.fileName, href: boardAddress(code, after.evidence) }, { text: 'Compared' }]}
      title={`${after.fileName} against ${before.fileName}`}
      supplement="What changed on the board"
      cells={
        compared
          ? [
              { label: 'Holes changed', value: compared.differences.holes.length },
              { label: 'Rings changed', value: compared.differences.rings.length },
              { label: 'Gaps changed', value: compared.differences.gaps.length },
              {
                label: 'Places that turn',
                value: compared.turned.reduce((sum, { places }) => sum + places.length, 0),
              },
            ]
          : []
      }
    >
      {(view) =>
        compared ? (
          <Compared code={view.code} archives={{ before, after }} compared={compared} />
        ) : (
          <>
            {[was, is].map((read, at) =>
              'refused' in read ? (
                <Notice key={at} kind="refusal">
                  {(at === 0 ? before : after).fileName}: {read.refused}
                </Notice>
              ) : null,
            )}
          </>
        )
      }
    </ProgrammeSheet>
  )
})

interface ComparedProps {
  code: string
  archives: { before: BoardArchive; after: BoardArchive }
  compared: Comparison
}

function Compared({ code, archives: { before, after }, compared }: ComparedProps) {
  const { board, differences, turned, alike } = compared
  return (
    <>
      <OnThisSheet
        parts={[
          { id: 'picture', text: 'The board' },
          { id: 'turned', text: 'Judged' },
          { id: 'holes', text: 'Holes' },
          { id: 'rings', text: 'Rings' },
          { id: 'gaps', text: 'Gaps' },
        ]}
      />
      {[before, after]
        .filter(({ confirmed }) => !confirmed)
        .map(({ evidence, fileName }) => (
          <Notice key={evidence} kind="refusal">
            What each file of <a href={boardAddress(code, evidence)}>{fileName}</a> is was proposed and nobody
            has confirmed it yet.
          </Notice>
        ))}
      <Whole differences={differences} />
      <Section
        id="picture"
        heading="The board"
        lead={`${after.fileName}, seen from the top. Changed holes are marked ${LETTERS.holes}, broken where they are gone; places that turn ${LETTERS.turned}; rings and gaps when their names are followed.`}
      >
        <BoardSides
          layers={compared.layers}
          code={code}
          archive={after}
          board={board}
          marks={marksOf(compared)}
        />
      </Section>
      <TurnedFindings turned={turned} places={alike.turned} />
      <ChangedHoles holes={alike.holes} />
      <ChangedRings rings={alike.rings} />
      <ChangedGaps gaps={alike.gaps} reachMm={GAP_REACH_MM} />
    </>
  )
}

/** What changed of the board as a whole. */
function Whole({ differences: { shift, outline, holes } }: { differences: BoardDifferences }) {
  const mm = (value: number): string => formatQuantity(Math.round(value * 1000) / 1000, 'mm', 6)
  const size = (is: Size | undefined): string => (is ? `${mm(is[0])} × ${mm(is[1])}` : 'not found')
  return (
    <>
      {shift && (
        <p>
          The whole board lies elsewhere in the later files, by {mm(shift[0])} in x and {mm(shift[1])} in y.
          That is taken out of all that follows.
        </p>
      )}
      {outline && (
        <p>
          The outline was {size(outline.before)} and is {size(outline.after)}.
        </p>
      )}
      {holes.length === 0 && !shift && !outline && (
        <p>Every hole is where it was, and the outline is the same.</p>
      )}
    </>
  )
}
