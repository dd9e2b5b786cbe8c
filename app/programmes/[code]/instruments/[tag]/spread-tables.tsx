import { RuledTable } from '@/app/ui/ruled-table'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import type { StudiedGauge } from '@/shared/instruments/gauge-study'
import { POOL_ABOVE_P_VALUE } from '@/shared/statistics/gauge/by-variance'
import { gaugeFigures } from '@/shared/statistics/gauge/verdict-figures'

type Complete = Exclude<StudiedGauge['result'], { readonly incomplete: string }>

/** The spreads by both computations, and the figures a gauge is judged by. */
export function SpreadTable({ studied: { byVariance, byRanges, figures } }: { studied: Complete }) {
  const ranged = byRanges && byRanges.total > 0 ? gaugeFigures(byRanges) : undefined
  const percent = (share: number | undefined) => (share === undefined ? '–' : formatQuantity(share, '%', 3))
  const spread = (value: number | undefined) => (value === undefined ? '–' : formatNumber(value, 4))
  const rows = [
    ['Repeatability: one person, again', spread(byVariance.repeatability), spread(byRanges?.repeatability)],
    [
      'Reproducibility: another person',
      spread(byVariance.reproducibility),
      spread(byRanges?.reproducibility),
    ],
    ['of which from part to part', spread(byVariance.interaction), 'not seen'],
    ['Gauge: both together', spread(byVariance.gauge), spread(byRanges?.gauge)],
    ['Parts', spread(byVariance.parts), spread(byRanges?.parts)],
    ['Whole study', spread(byVariance.total), spread(byRanges?.total)],
    [
      'Gauge, share of the spread',
      percent(figures.gaugeShareOfTotalPct),
      percent(ranged?.gaugeShareOfTotalPct),
    ],
    [
      'Categories told apart',
      formatNumber(figures.distinctCategories),
      ranged ? formatNumber(ranged.distinctCategories) : '–',
    ],
  ] as const
  return (
    <div>
      <RuledTable
        caption="Standard deviations, in the unit of the readings"
        rows={rows}
        rowKey={([name]) => name}
        columns={[
          { label: 'Spread', names: true, cell: ([name]) => name },
          { label: 'Analysis of variance', set: 'number', cell: ([, one]) => one },
          { label: 'Averages and ranges', set: 'number', cell: ([, , other]) => other },
        ]}
      />
      <p className="field-hint">
        Judged by the analysis of variance: averages and ranges cannot see that a person differs on some parts
        only, and take that for repeatability.
      </p>
    </div>
  )
}

/** The analysis of variance as its table. */
export function VarianceTableShown({ studied: { byVariance } }: { studied: Complete }) {
  const { table, interactionPValue, branch } = byVariance
  const rows = [
    ['Parts', table.parts],
    ['People', table.appraisers],
    ['People by part', table.interaction],
    ['Trials', table.trials],
  ] as const
  return (
    <div>
      <RuledTable
        caption="Analysis of variance"
        rows={rows}
        rowKey={([name]) => name}
        columns={[
          { label: 'Source', names: true, cell: ([name]) => name },
          { label: 'Degrees of freedom', set: 'number', cell: ([, line]) => line.degreesOfFreedom },
          { label: 'Sum of squares', set: 'number', cell: ([, line]) => formatNumber(line.sumOfSquares, 5) },
          { label: 'Mean square', set: 'number', cell: ([, line]) => formatNumber(line.meanSquare, 5) },
        ]}
      />
      <p className="field-hint">
        {`People by part: p ${formatNumber(interactionPValue, 3)}, ${branch === 'pooled' ? `above ${POOL_ABOVE_P_VALUE}: counted with the trials` : `not above ${POOL_ABOVE_P_VALUE}: counted by itself`}. Reproducibility rests on ${table.appraisers.degreesOfFreedom} ${table.appraisers.degreesOfFreedom === 1 ? 'degree' : 'degrees'} of freedom: two or three people show a difference between people only roughly.`}
      </p>
    </div>
  )
}
