import { logAddress } from '@/app/addresses'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { VerdictMark } from '@/app/ui/verdict-mark'
import { Day } from '@/app/ui/date'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import type { Log } from '@/shared/records/log'
import { bathOutlook, type ConstituentOutlook } from '@/shared/baths/bath-outlook'
import { FEWEST_FOR_TREND } from '@/shared/logs/log-trend'
import type { Facts } from '@/shared/rules/facts'
import { ConstituentPlot } from './constituent-plot'
import { NothingRead } from './nothing-read'

interface BathTrendProps {
  code: string
  log: Log
  facts: Facts
  /** The constituent to draw, by its key; the soonest to its limit otherwise. */
  metal: string | undefined
}

/** Every constituent of a bath against its limit: where it stands, when it gets there, and what to exchange then. */
export function BathTrend({ code, log, facts, metal }: BathTrendProps) {
  if (log.readings.count === 0) return <NothingRead log={log} title="No analyses yet" />
  const outlook = bathOutlook(log, facts)
  if (!outlook)
    return (
      <Empty title="No limits yet">
        The alloy family decides the limits; the edition chosen must be for that family.
      </Empty>
    )
  const { constituents, edition, bathKg, confidence } = outlook
  const drawn = constituents.find((one) => keyOf(one) === metal) ?? constituents[0]
  if (!drawn) return null
  return (
    <Section
      id="chart"
      heading="Trend"
      lead={`Limits by ${edition}. A trend is fitted from ${FEWEST_FOR_TREND} analyses on, since the last exchange; the earlier date is the one before which, with ${formatNumber(confidence * 100, 3)} % confidence, a further analysis stays inside.`}
    >
      <ConstituentPlot log={log} name={drawn.question.label} outlook={drawn} confidence={confidence} />
      <RuledTable
        caption="Constituents, the soonest to its limit first"
        rows={constituents}
        rowKey={keyOf}
        columns={[
          {
            label: 'Constituent',
            names: true,
            cell: (one) => (
              <a
                href={`${logAddress(code, log.code)}?${new URLSearchParams({ metal: keyOf(one) })}#chart`}
                aria-current={one === drawn ? 'true' : undefined}
              >
                {one.question.label}
              </a>
            ),
          },
          {
            label: 'Newest',
            set: 'number',
            cell: ({ newestPct }) =>
              newestPct === undefined ? 'never analysed' : formatQuantity(newestPct, '%'),
          },
          { label: 'At most', set: 'number', cell: ({ limitPct }) => formatQuantity(limitPct, '%') },
          { label: 'Now', cell: ({ verdict }) => (verdict ? <VerdictMark verdict={verdict} /> : '–') },
          {
            label: 'Per month',
            set: 'number',
            cell: ({ trend }) =>
              !trend
                ? 'no trend yet'
                : Math.abs(trend.perMonth) < 1e-9
                  ? 'level'
                  : `${trend.perMonth < 0 ? '−' : '+'}${formatNumber(Math.abs(trend.perMonth), 3)} %`,
          },
          {
            label: 'May reach it',
            cell: ({ trend }) =>
              trend?.mayCrossOn ? <Day at={trend.mayCrossOn} /> : trend ? 'not within ten years' : '–',
          },
          {
            label: 'By the line',
            cell: ({ trend }) => (trend?.crossesOn ? <Day at={trend.crossesOn} /> : '–'),
          },
          { label: 'To exchange', cell: (one) => <ToExchange outlook={one} bathKg={bathKg} /> },
        ]}
      />
    </Section>
  )
}

/** Which constituent it is, for the address. */
const keyOf = ({ question }: ConstituentOutlook): string => question.about['of'] ?? ''

function ToExchange({ outlook, bathKg }: { outlook: ConstituentOutlook; bathKg: number | undefined }) {
  const { exchange, exchangeFrom, question } = outlook
  if (!exchange) return <>needs new solder with less than {formatQuantity(question.addedPct, '%')} of it</>
  const amount =
    exchange.kg === undefined || bathKg === undefined
      ? `${formatNumber(exchange.sharePct, 3)} % of the bath`
      : `${formatNumber(exchange.kg, 3)} kg of ${formatNumber(bathKg)} kg`
  return (
    <>
      {amount} {exchangeFrom}, to come to {formatQuantity(exchange.targetPct, '%', 3)}
    </>
  )
}
