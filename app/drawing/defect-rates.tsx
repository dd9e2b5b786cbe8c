import { scaleLog } from 'd3-scale'
import { countText } from '@/shared/quantity/digits-in-threes'
import { formatEstimate, formatNumber } from '@/shared/quantity/format'
import { Drawing } from './drawing'
import { UprightLimit } from './limit-line'
import { pointShape } from './point-shape'

interface KindRate {
  readonly name: string
  readonly joints: number
  readonly perMillion: number
  readonly lower: number
  readonly upper: number
  /** Whether it keeps the budget, in words. */
  readonly held: string
}

type DefectRatesProps = {
  title: string
  /** The defects per million that the specification allows, all kinds together. */
  budget: number
  rows: readonly KindRate[]
  /** How sure the bounds are, in per cent. */
  confidencePct: number
}

const WIDTH = 440
const LEFT = 10
const RIGHT = WIDTH - 16
const TOP = 34
const ROW = 38

/** Each kind’s rate per million with its exact bounds, on a scale of tens, against the budget. */
export function DefectRates({ title, budget, rows, confidencePct }: DefectRatesProps) {
  const rates = rows
    .flatMap(({ perMillion, lower, upper }) => [perMillion, lower, upper])
    .filter((one) => one > 0)
  const min = 10 ** Math.floor(Math.log10(Math.min(budget, ...rates)))
  const max = 10 ** Math.ceil(Math.log10(Math.max(budget, ...rates)))
  const x = scaleLog([min, Math.max(max, min * 100)], [LEFT, RIGHT]).clamp(true)
  const bottom = TOP + rows.length * ROW + 4
  const tens = x.ticks().filter((tick) => Number.isInteger(Math.round(Math.log10(tick) * 1e9) / 1e9))
  const budgetRight = x(budget) > WIDTH / 2
  return (
    <Drawing
      title={title}
      description={`Budget ${formatNumber(budget)} per million. ${rows.map(inWords).join('; ')}.`}
      width={WIDTH}
      height={bottom + 40}
      numbers={{
        columns: [
          { label: 'Kind' },
          { label: 'Joints' },
          { label: 'Per million' },
          { label: `At least (${confidencePct} %)` },
          { label: `At most (${confidencePct} %)` },
          { label: 'Against the budget', set: 'text' },
        ],
        rows: rows.map((row) => {
          const { value, lower, upper } = rateOf(row)
          return [row.name, countText(row.joints), value, lower, upper, row.held]
        }),
      }}
      numbersPlace="below"
    >
      <path className="line-grid" d={tens.map((ten) => `M${x(ten)} ${TOP}V${bottom}`).join('')} />
      {tens.map((ten) => (
        <text key={ten} x={x(ten)} y={bottom + 16} textAnchor="middle" className="text-soft text-small">
          {countText(ten)}
        </text>
      ))}
      <text x={RIGHT} y={bottom + 34} textAnchor="end">
        defective joints per million
      </text>
      <UprightLimit x={x(budget)} top={TOP - 6} bottom={bottom} beyond="right" />
      <text
        x={x(budget) + (budgetRight ? -4 : 4)}
        y={TOP - 14}
        textAnchor={budgetRight ? 'end' : 'start'}
        className="text-haloed"
      >
        budget {formatNumber(budget)}
      </text>
      {rows.map(({ name, joints, perMillion, lower, upper }, at) => {
        const middle = TOP + at * ROW + 26
        return (
          <g key={name}>
            <path
              className={at === 0 ? 'line-seen' : 'line-thin'}
              d={`M${x(Math.max(lower, min))} ${middle}H${x(upper)}M${x(upper)} ${middle - 4}v8${lower > 0 ? `M${x(lower)} ${middle - 4}v8` : ''}`}
            />
            <path
              className="fill-sheet ink-copper"
              stroke="currentColor"
              strokeWidth="2"
              d={perMillion > 0 ? pointShape(at === 0 ? 'diamond' : 'ring', x(perMillion), middle, 4) : ''}
            />
            <text
              x={LEFT + 2}
              y={middle - 10}
              className={at === 0 ? 'text-haloed text-strong' : 'text-haloed'}
            >
              {name} <tspan className="text-strong">{joints}</tspan>
            </text>
          </g>
        )
      })}
    </Drawing>
  )
}

const rateOf = ({ perMillion, lower, upper }: KindRate) =>
  formatEstimate({ value: perMillion, lower, upper }, '1')

function inWords(row: KindRate): string {
  const { value, lower, upper } = rateOf(row)
  return `${row.name}: ${value}, between ${lower} and ${upper}`
}
