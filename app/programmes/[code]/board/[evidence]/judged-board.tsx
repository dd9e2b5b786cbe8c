import { FindingSheet } from '@/app/findings/finding-sheet'
import { FoundWithRemedy } from '@/app/findings/found-with-remedy'
import { MarginBar } from '@/app/ui/margin-bar'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { BoardFinding } from '@/shared/board/judged/board-findings'
import type { PlacedPart } from '@/shared/board/judged/placed-part'
import { placeInWords, PlaceLink, placeName } from './place-name'

/** What the specification makes of the board as it is drawn: each matter with its worst places. */
export function JudgedBoard({ findings }: { findings: readonly BoardFinding[] }) {
  return (
    <Section
      id="judged"
      heading="Judged"
      lead="Every hole, gap and edge of the files against what the programme specifies today. The worst ten places of each lead into the picture; nothing here is signed."
    >
      {findings.map((judged) => (
        <JudgedMatter key={judged.key} judged={judged} />
      ))}
    </Section>
  )
}

function JudgedMatter({ judged: { key, letter, title, why, finding, places } }: { judged: BoardFinding }) {
  const { parts: _, ...whole } = finding
  return (
    <div id={key} className="board-judged">
      <FindingSheet title={title} finding={whole}>
        <p>{why}</p>
      </FindingSheet>
      {places.length > 0 && <Places title={title} letter={letter} places={places} />}
    </div>
  )
}

function Places({ title, letter, places }: { title: string; letter: string; places: readonly PlacedPart[] }) {
  return (
    <RuledTable
      caption={`${title}: the worst places`}
      narrow="cards-early"
      rows={places}
      rowKey={(_, at) => at}
      columns={[
        {
          label: 'Place',
          set: 'shrink',
          cell: (_, at) => <PlaceLink name={placeName(letter, at)} />,
        },
        { label: 'Which', names: true, cell: ({ subject }) => subject },
        { label: 'Verdict', set: 'shrink', cell: ({ verdict }) => <VerdictMark verdict={verdict} /> },
        {
          label: 'Found',
          cell: (part) => <FoundWithRemedy part={part} />,
        },
        { label: 'Margin', cell: ({ margin }) => (margin ? <MarginBar margin={margin} /> : '–') },
        { label: 'At x, y in mm', set: 'number', cell: ({ at }) => placeInWords(at) },
      ]}
    />
  )
}
