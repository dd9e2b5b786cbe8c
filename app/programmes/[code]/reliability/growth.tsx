import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { formatNumber } from '@/shared/quantity/format'
import { fieldGrowth } from '@/shared/reliability/field-shown'
import { lifeTestGrowth } from '@/shared/reliability/life-tests-shown'
import type { Known } from './known'

/** Whether failures grow rarer as the design and the process are mended. */
export function Growth({ known: { specimens, returns, exposures } }: { known: Known }) {
  const rows = [
    {
      name: 'Life tests, one after another',
      unit: 'specimen-cycles of service',
      ...lifeTestGrowth(specimens),
    },
    { name: 'Boards in service', unit: 'board-hours', ...fieldGrowth(returns, exposures) },
  ]
  return (
    <Section
      heading="Growth"
      lead="It means something only where a cause was mended between failures. The power law counts the time after the last failure too; Duane’s slope looks at the failures alone, so the two can differ."
    >
      <RuledTable
        caption="Growth"
        captionHidden
        rows={rows}
        rowKey={({ name }) => name}
        columns={[
          { label: 'Of', names: true, cell: ({ name }) => name },
          {
            label: 'Power law (Crow, MIL-HDBK-189)',
            cell: ({ growth, why }) =>
              growth
                ? `shape ${formatNumber(growth.crow.shape, 3)}: failures ${growth.crow.shape < 1 ? 'grow rarer' : 'do not grow rarer'}`
                : why,
          },
          {
            label: 'Duane’s slope',
            cell: ({ growth }) =>
              growth?.duane
                ? `${formatNumber(growth.duane.growthSlope, 3)} (r² ${formatNumber(growth.duane.rSquared, 3)})`
                : '–',
          },
          {
            label: 'Mean time between failures, at the end',
            set: 'number',
            cell: ({ growth, unit }) =>
              growth ? `${formatNumber(growth.crow.currentMeanTime)} ${unit}` : '–',
          },
          {
            label: 'Over all the time',
            set: 'number',
            cell: ({ growth, unit }) =>
              growth ? `${formatNumber(growth.crow.cumulativeMeanTime)} ${unit}` : '–',
          },
        ]}
      />
    </Section>
  )
}
