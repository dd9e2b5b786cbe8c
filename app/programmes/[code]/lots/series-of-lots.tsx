import { findingAddress, lotAddress } from '@/app/addresses'
import { InspectionTrack } from '@/app/drawing/inspection-track'
import { lotsInSeries } from '@/app/lots/lots-in-series'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { inspectionSeries, type InspectionSeries } from '@/shared/sampling/inspection-series'

const MAX_DRAWN = 24

/** How the next lot of every supplier and part is inspected, and which lots made it so. */
export function SeriesOfLots({ view }: { view: ProgrammeView }) {
  const series = inspectionSeries(view.state.facts)
  if (series.length === 0) return null
  const histories = series.filter(({ steps, next }) => steps.length > 1 || next.severity !== 'normal')
  return (
    <Section
      id="series"
      heading="State of inspection"
      lead={`By supplier, part and test, over all lots of the works; switching by ${series[0]!.edition}.`}
      aside={<a href={findingAddress(view.code, 'inspection-state')}>The finding</a>}
    >
      <RuledTable
        caption="How the next lot is inspected"
        captionHidden
        narrow="cards-early"
        rows={series}
        rowKey={({ supplier, part, label }) => `${supplier} ${part} ${label}`}
        columns={[
          { label: 'Supplier and part', names: true, cell: ({ supplier, part }) => `${supplier}, ${part}` },
          { label: 'Test', cell: ({ label }) => label },
          { label: 'Next lot', set: 'shrink', cell: ({ next }) => <strong>{next.severity}</strong> },
          { label: 'Why', cell: ({ next }) => next.because },
          { label: 'Lots so far', cell: lotsInSeries },
          { label: 'Plan of the next', cell: ({ nextPlanMessage }) => nextPlanMessage },
        ]}
      />
      {histories.length > 0 && (
        <div className="picture-row">
          {histories.slice(0, MAX_DRAWN).map((one) => (
            <History key={`${one.supplier} ${one.part} ${one.label}`} code={view.code} series={one} />
          ))}
        </div>
      )}
    </Section>
  )
}

function History({ code, series }: { code: string; series: InspectionSeries }) {
  const { supplier, part, label, steps, next } = series
  const shown = steps.slice(-MAX_DRAWN)
  return (
    <div>
      <InspectionTrack
        title={`${supplier}, ${part}, ${label.toLowerCase()}`}
        lots={shown.map(({ lot, severity, outcome, switched }) => ({
          name: lot,
          level: severity,
          outcome,
          said: switched ? `${switched.to}: ${switched.because} (${switched.by.join(', ')})` : '–',
        }))}
        next={next.severity}
      />
      <ul className="what-rests" aria-label="What changed the inspection">
        {shown.flatMap(({ lot, elsewhere, switched }) =>
          switched
            ? [
                <li key={lot}>
                  After {elsewhere ? lot : <a href={lotAddress(code, lot)}>{lot}</a>}: {switched.to}.{' '}
                  {switched.because} {switched.by.length > 1 && `These were ${switched.by.join(', ')}.`}
                </li>,
              ]
            : [],
        )}
      </ul>
    </div>
  )
}
