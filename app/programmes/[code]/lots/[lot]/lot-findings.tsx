import { findingAddress } from '@/app/addresses'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { VERDICTS, WANTS_REMEDY } from '@/shared/rules/finding'
import { detailOf, type LotPart } from '../lot-parts'

/** What the rules found on this very lot, and what would mend it. */
export function LotFindings({ view, parts }: { view: ProgrammeView; parts: readonly LotPart[] }) {
  if (parts.length === 0) return null
  return (
    <Section heading="Findings on this lot">
      <RuledTable
        caption="Findings on this lot"
        captionHidden
        rows={[...parts].sort(worstFirst)}
        rowKey={({ rule }, position) => `${rule} ${position}`}
        columns={[
          {
            label: 'Finding',
            names: true,
            cell: ({ rule, title, part }) => (
              <>
                <a href={findingAddress(view.code, rule)}>{title}</a>
                {detailOf(part)}
              </>
            ),
          },
          { label: 'Verdict', set: 'shrink', cell: ({ part }) => <VerdictMark verdict={part.verdict} /> },
          {
            label: 'Found',
            cell: ({ part }) => (
              <>
                {part.found}
                {WANTS_REMEDY[part.verdict] && part.remedy && (
                  <>
                    {' '}
                    <strong>Remedy:</strong> {part.remedy.message}
                  </>
                )}
              </>
            ),
          },
        ]}
      />
    </Section>
  )
}

const worstFirst = ({ part: one }: LotPart, { part: other }: LotPart): number =>
  VERDICTS.indexOf(other.verdict) - VERDICTS.indexOf(one.verdict)
