import { lotsAddress } from '@/app/addresses'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { lotsInSeries } from '@/app/lots/lots-in-series'
import type { SeriesInProgramme } from '@/lib/queries/works/suppliers'

/** How the next lot of each part is inspected: one series over all lots, as each programme specifies its sampling. */
export function SupplierSeries({ series }: { series: readonly SeriesInProgramme[] }) {
  if (series.length === 0) return null
  return (
    <Section
      id="series"
      heading="State of inspection"
      lead="Over all lots of a part, whichever programme they went to. Programmes differ where they specify another plan, limit or test."
    >
      <RuledTable
        caption="How the next lot is inspected"
        captionHidden
        narrow="cards-early"
        rows={series}
        rowKey={({ programme, part, label }) => `${programme} ${part} ${label}`}
        columns={[
          { label: 'Part', names: true, cell: ({ part }) => part },
          { label: 'Test', cell: ({ label }) => label },
          {
            label: 'As specified in',
            set: 'shrink',
            cell: ({ programme }) => <a href={`${lotsAddress(programme)}#series`}>{programme}</a>,
          },
          { label: 'Next lot', set: 'shrink', cell: ({ next }) => <strong>{next.severity}</strong> },
          { label: 'Why', cell: ({ next }) => next.because },
          { label: 'Lots so far', cell: lotsInSeries },
          { label: 'Plan of the next', cell: ({ nextPlanMessage }) => nextPlanMessage },
        ]}
      />
    </Section>
  )
}
