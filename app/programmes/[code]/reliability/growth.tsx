import { GrowthPlot } from '@/app/drawing/growth-plot'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { estimateInWords, formatNumber } from '@/shared/quantity/format'
import { allowedInService } from '@/shared/reliability/allowed-failures'
import { fieldGrowth } from '@/shared/reliability/field-shown'
import type { GrowthShown } from '@/shared/reliability/growth-shown'
import { currentMeanTimeInterval } from '@/shared/reliability/growth/crow-amsaa-bounds'
import type { Known } from './known'

/** Of the bounds, two-sided. */
const CONFIDENCE = 0.9

/** Whether failures grow rarer as the design and the process are mended. */
export function Growth({ known: { returns, exposures, target } }: { known: Known }) {
  const rows = [
    {
      name: 'Boards in service',
      unit: 'board-hours',
      allowed: allowedInService(
        exposures.reduce((sum, { boards, hoursEach }) => sum + boards * hoursEach, 0),
        target,
      ),
      ...fieldGrowth(returns, exposures, CONFIDENCE),
    },
  ]
  return (
    <Section
      heading="Growth"
      lead="It means something only where a cause was mended between failures; specimens of a life test are not mended, they wear out, and show none. The power law counts the time after the last failure too; Duane’s slope looks at the failures alone, so the two can differ."
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
            cell: ({ growth, why }) => (growth ? powerLawInWords(growth) : why),
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
            cell: ({ growth, unit }) =>
              growth ? `${round(growth.crow.currentMeanTime)} ${unit} (${boundsOf(growth)})` : '–',
          },
          {
            label: 'Over all the time',
            set: 'number',
            cell: ({ growth, unit }) => (growth ? `${round(growth.crow.cumulativeMeanTime)} ${unit}` : '–'),
          },
          {
            label: 'Target',
            set: 'number',
            cell: ({ growth, unit, allowed }) =>
              growth && allowed ? `${round(growth.end / allowed)} ${unit}` : '–',
          },
        ]}
      />
      {rows.map(
        ({ name, unit, growth, allowed }) =>
          growth && (
            <GrowthPlot
              key={name}
              title={`${name}: failures over time`}
              growth={growth}
              unit={unit}
              allowed={allowed}
              confidence={CONFIDENCE}
            />
          ),
      )}
    </Section>
  )
}

function powerLawInWords({ crow, shape, fitTest }: GrowthShown): string {
  const trend =
    shape.upper < 1
      ? 'failures grow rarer'
      : shape.lower > 1
        ? 'failures grow more frequent'
        : 'no growth shown, nor its contrary'
  const fit = !fitTest
    ? ''
    : fitTest.fits
      ? '; the law fits (Cramér–von Mises)'
      : '; the law does not fit (Cramér–von Mises)'
  return `shape ${estimateInWords(crow.shape, shape)}: ${trend}${fit}`
}

function boundsOf({ crow: fit, times }: GrowthShown): string {
  const { lower, upper } = currentMeanTimeInterval({ fit, failures: times.length }, CONFIDENCE)
  return `${round(lower)} to ${round(upper)} with ${formatNumber(CONFIDENCE * 100)} % confidence`
}

/** Three digits, also before the point: no more of it is known. */
const round = (value: number): string => formatNumber(Number(value.toPrecision(3)), 12)
