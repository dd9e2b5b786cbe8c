import { verdictOn, type Margin } from '@/shared/rules/finding'
import { formatAgainst } from '@/shared/quantity/format'
import { VERDICT_INK } from '@/app/ui/joint-drawing'
import { marginText } from '@/app/ui/margin-text'
import { LIMIT_AT, marginGeometry } from '@/app/ui/margin-geometry'
import { Drawing } from './drawing'
import { hatchRectangle } from './hatch-rectangle'
import { arrow } from './dimension'

type MarginBarsProps = {
  title: string
  /** What was judged, such as a finding's or a joint's name, with its margin. */
  margins: readonly { name: string; margin: Margin }[]
}

const WIDTH = 440
const LEFT = 6
const RIGHT = WIDTH - 6
const ROW = 52
const TOP = 22

/** Many margins against one common limit line, least room first. */
export function MarginBars({ title, margins }: MarginBarsProps) {
  const rows = margins
    .filter(({ margin }) => verdictOn(margin) !== 'undetermined')
    .map((row) => ({ ...row, drawn: marginGeometry(row.margin) }))
    .sort((a, b) => b.drawn.found - a.drawn.found)
  const height = TOP + rows.length * ROW + 8
  const place = (share: number) => LEFT + share * (RIGHT - LEFT)
  const limitX = place(LIMIT_AT)
  return (
    <Drawing
      title={title}
      description={`${rows.length} margins against their limits, the least first. Inside the limit lies at the left.`}
      width={WIDTH}
      height={height}
      numbers={{
        columns: [
          { label: 'What' },
          { label: 'Found' },
          { label: 'Limit' },
          { label: 'Room' },
          { label: 'Verdict', set: 'text' },
        ],
        rows: margins.map(({ name, margin }) => {
          const { found, limit } = formatAgainst(margin.found, margin.limit, margin.unit)
          return [name, found, `${margin.direction} ${limit}`, marginText(margin), verdictOn(margin)]
        }),
      }}
    >
      <text x={limitX - 6} y={13} textAnchor="end" className="text-soft">
        inside
      </text>
      <text x={limitX + 6} y={13} className="text-soft">
        beyond the limit
      </text>
      <path className="line-seen" d={`M${limitX} ${TOP - 18}v12`} />
      {rows.map(({ name, margin, drawn }, position) => {
        const y = TOP + position * ROW + 26
        const foundX = place(drawn.found)
        const verdict = verdictOn(margin)
        return (
          <g key={name} className={VERDICT_INK[verdict]}>
            <path className="line-grid" d={`M${LEFT} ${y}H${limitX}`} />
            <path
              className="margin-beyond"
              strokeWidth="0.6"
              d={hatchRectangle(limitX, y - 6, RIGHT - limitX, 12, 5)}
            />
            <path
              className="margin-guard"
              d={`M${place(drawn.guard)} ${y - 6}H${limitX}V${y + 6}H${place(drawn.guard)}Z`}
            />
            <path
              className="fill-current"
              d={`M${Math.min(foundX, limitX)} ${y - 3}H${Math.max(foundX, limitX)}v6H${Math.min(foundX, limitX)}Z`}
            />
            <path className="line-seen" d={`M${limitX} ${y - 9}v18`} />
            <path
              className="fill-ink"
              d={
                drawn.clipped
                  ? arrow(foundX, y, drawn.found < 0.5 ? 'left' : 'right')
                  : `M${foundX} ${y - 7}l5 7l-5 7l-5 -7Z`
              }
            />
            <text x={LEFT} y={y - 10} className="text-haloed">
              {name}
            </text>
            <text x={RIGHT} y={y + 19} textAnchor="end" className="text-soft text-haloed">
              {verdict}, {marginText(margin)}
            </text>
          </g>
        )
      })}
    </Drawing>
  )
}
