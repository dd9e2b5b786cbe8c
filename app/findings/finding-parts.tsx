import { FoundWithRemedy } from '@/app/findings/found-with-remedy'
import { MarginBar } from '@/app/ui/margin-bar'
import { RuledTable } from '@/app/ui/ruled-table'
import { VerdictMark } from '@/app/ui/verdict-mark'
import { WANTS_REMEDY, type Part } from '@/shared/rules/finding'

/** The finding for each hole, joint, lot or line. */
export function FindingParts({
  parts,
  caption,
  code,
  inFull = true,
}: {
  parts: readonly Part[]
  caption: string
  code?: string | undefined
  /** Whether paper has every part; else those that want a hand. */
  inFull?: boolean
}) {
  return (
    <RuledTable
      caption={caption}
      captionHidden
      narrow="cards-early"
      rows={parts}
      onPaper={inFull ? undefined : ({ verdict }) => WANTS_REMEDY[verdict]}
      rowKey={({ subject }, position) => `${subject} ${position}`}
      columns={[
        { label: 'Which', names: true, cell: ({ subject }) => subject },
        { label: 'Verdict', set: 'shrink', cell: ({ verdict }) => <VerdictMark verdict={verdict} /> },
        {
          label: 'Found',
          cell: (part) => <FoundWithRemedy part={part} code={code} />,
        },
        { label: 'Margin', cell: ({ margin }) => (margin ? <MarginBar margin={margin} /> : '–') },
      ]}
    />
  )
}
