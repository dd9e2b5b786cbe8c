import { boardComparisonAddress } from '@/app/addresses'
import { Moment } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { OtherArchive } from '@/lib/queries/board-files'

interface OtherArchivesProps {
  code: string
  evidence: string
  others: readonly OtherArchive[]
}

/** Ways to hold this archive against another of the programme. */
export function OtherArchives({ code, evidence, others }: OtherArchivesProps) {
  if (others.length === 0) return null
  return (
    <Section
      id="others"
      heading="Compare"
      lead="What changed from another archive of this programme to this one: holes, rings, gaps, and what is judged of them."
    >
      <RuledTable
        caption="Other archives"
        captionHidden
        rows={others}
        rowKey={({ evidence: key }) => key}
        columns={[
          {
            label: 'Archive',
            names: true,
            cell: ({ evidence: before, fileName }) => (
              <a href={boardComparisonAddress(code, evidence, before)}>From {fileName} to this one</a>
            ),
          },
          { label: 'Attached', cell: ({ at }) => <Moment at={at} /> },
        ]}
      />
    </Section>
  )
}
