import { formatQuantity } from '@/shared/quantity/format'
import { Drawing } from './drawing'
import { hatchRectangle } from './hatch-rectangle'
import { pointShape } from './point-shape'

type ParetoProps = {
  title: string
  /** What is counted, such as "defects". */
  what: string
  counts: readonly { name: string; count: number }[]
}

const WIDTH = 440
const LEFT = 6
const RIGHT = WIDTH - 52
const TOP = 22
const ROW = 36

/** Kinds by how often they occur, most first, with the share they make up so far. */
export function Pareto({ title, what, counts }: ParetoProps) {
  const rising = counts.filter(({ count }) => count > 0)
  const total = rising.reduce((sum, { count }) => sum + count, 0)
  const rows = rising
    .toSorted((a, b) => b.count - a.count)
    .reduce<{ name: string; count: number; soFar: number }[]>((done, row) => {
      const before = done.at(-1)?.soFar ?? 0
      return [...done, { ...row, soFar: before + row.count / total }]
    }, [])
  const height = TOP + rows.length * ROW + 6
  const place = (share: number) => LEFT + share * (RIGHT - LEFT)
  const middle = (position: number) => TOP + position * ROW + 26
  const percent = (share: number) => formatQuantity(share * 100, '%', 3)
  return (
    <Drawing
      title={title}
      description={rows.map(({ name, count }) => `${name}: ${count}`).join('; ') || `No ${what}.`}
      width={WIDTH}
      height={height}
      numbers={{
        columns: [{ label: 'Kind' }, { label: `Number of ${what}` }, { label: 'Share' }, { label: 'So far' }],
        rows: rows.map(({ name, count, soFar }) => [
          name,
          String(count),
          percent(count / total),
          percent(soFar),
        ]),
      }}
    >
      <text x={RIGHT} y={13} textAnchor="end" className="text-soft">
        share so far
      </text>
      <path className="line-thin" d={`M${LEFT} ${TOP}V${height - 4}`} />
      <path className="line-bound" d={`M${RIGHT} ${TOP}V${height - 4}`} />
      {rows.map(({ name, count }, position) => {
        const width = place(count / total) - LEFT
        return (
          <g key={name}>
            <path
              className="fill-copper-wash"
              d={`M${LEFT} ${middle(position) - 7}h${width}v14h${-width}Z`}
            />
            <path
              className="ink-copper outlined"
              strokeWidth="0.9"
              d={hatchRectangle(LEFT, middle(position) - 7, width, 14, 5)}
            />
            <path className="line-thin" d={`M${LEFT} ${middle(position) - 7}h${width}v14h${-width}`} />
            <text x={LEFT + 4} y={middle(position) - 11} className="text-haloed">
              {name} <tspan className="text-strong">{count}</tspan>
            </text>
          </g>
        )
      })}
      <path
        className="line-thin"
        d={`M${rows.map(({ soFar }, position) => `${place(soFar)} ${middle(position)}`).join('L')}`}
      />
      {rows.map(({ name, soFar }, position) => (
        <g key={name}>
          <path
            className="fill-sheet"
            stroke="var(--color-ink)"
            strokeWidth="1.4"
            d={pointShape('ring', place(soFar), middle(position), 3.5)}
          />
          <text x={place(soFar) + 8} y={middle(position) + 4} className="text-haloed text-small">
            {percent(soFar)}
          </text>
        </g>
      ))}
    </Drawing>
  )
}
