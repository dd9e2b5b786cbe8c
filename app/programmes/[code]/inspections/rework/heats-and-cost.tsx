import { ReadingsAgainstLimit } from '@/app/drawing/readings-against-limit'
import { governingFor, valueOf } from '@/app/pictures/value-of'
import { RuledTable } from '@/app/ui/ruled-table'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { reworkSummary } from '@/shared/inspection/rework-summary'
import { reworkHeatsMax } from '@/shared/plan/limits/assessment-rework'
import { workingHourCost } from '@/shared/plan/parameters/assessment-proof'
import { formatNumber } from '@/shared/quantity/format'
import type { RecordOf } from '@/shared/records/record-kinds'
import { JudgedRecords } from '../judged-records'

type Rework = RecordOf<'rework'>

/** Heats of each joint against the limit, and hours and money by the defect that caused them. */
export function HeatsAndCost({ view }: { view: ProgrammeView }) {
  const rows = (view.state.facts.records.byKind.get('rework') ?? []) as readonly Rework[]
  const max = governingFor(view, reworkHeatsMax).value
  const { joints } = reworkSummary(rows)
  return (
    <JudgedRecords
      view={view}
      kind="rework"
      rule="rework-limits"
      heading="Rework"
      record="Record rework"
      none="No joint was reworked"
      first="The first is recorded as soon as a joint was heated again: which, how, and by whom."
    >
      <div className="picture-row">
        <div>
          <ReadingsAgainstLimit
            title="Heats of each joint reworked"
            characteristic="Heats, all visits together"
            unit="cycles"
            readings={joints.map(({ heats }) => heats)}
            limits={{ atMost: max }}
          />
          <RuledTable
            caption="By defect that caused it"
            rows={byDefect(rows, valueOf(view, workingHourCost))}
            rowKey={({ defect }) => defect}
            columns={[
              { label: 'Because of', names: true, cell: ({ defect }) => defect },
              { label: 'Visits', set: 'number', cell: ({ visits }) => visits },
              { label: 'Hours', set: 'number', cell: ({ minutes }) => formatNumber(minutes / 60, 3) },
              { label: 'Material', set: 'number', cell: ({ material }) => formatNumber(material) },
              {
                label: 'Cost',
                set: 'number',
                cell: ({ cost }) => (cost === undefined ? 'no price of an hour' : formatNumber(cost)),
              },
            ]}
          />
        </div>
        <RuledTable
          caption="Joints reworked, most heated first"
          rows={[...joints].sort((a, b) => b.heats - a.heats).slice(0, 50)}
          rowKey={({ assembly, joint }) => `${assembly} ${joint}`}
          columns={[
            { label: 'Joint', names: true, cell: ({ joint }) => joint },
            { label: 'Assembly', cell: ({ assembly }) => assembly },
            { label: 'Visits', set: 'number', cell: ({ visits }) => visits },
            { label: 'Heats', set: 'number', cell: ({ heats }) => heats },
            {
              label: 'May still be heated',
              cell: ({ heats }) =>
                heats > max ? 'too often already' : heats === max ? 'no more' : `${max - heats} more`,
            },
          ]}
        />
      </div>
    </JudgedRecords>
  )
}

function byDefect(rows: readonly Rework[], hourCost: number | undefined) {
  return [...new Set(rows.map(({ defect }) => defect))]
    .map((defect) => {
      const { visits, minutes, material, cost } = reworkSummary(
        rows.filter((row) => row.defect === defect),
        hourCost,
      )
      return { defect, visits, minutes, material, cost: hourCost === undefined ? undefined : cost }
    })
    .sort((a, b) => b.minutes - a.minutes)
}
