import { scaleLinear } from 'd3-scale'
import { formatQuantity } from '@/shared/quantity/format'
import { Drawing } from './drawing'
import { hatchRectangle } from './hatch-rectangle'
import { numberTicks } from './ticks'

interface SharesSideBySideProps {
  title: string
  description: string
  /** The two ways of working it out, in the order of `shares`. */
  ways: readonly [string, string]
  /** In percent; a share that one way does not see is left out. */
  rows: readonly { name: string; shares: readonly [number | undefined, number | undefined] }[]
}

const WIDTH = 440
const LEFT = 130
const RIGHT = WIDTH - 54
const ROW = 46
const TOP = 22

/** Shares of a whole by two ways of working them out: the first filled, the second hatched. */
export function SharesSideBySide({ title, description, ways, rows }: SharesSideBySideProps) {
  const bottom = TOP + rows.length * ROW
  const x = scaleLinear([0, 100], [LEFT, RIGHT])
  const percent = (share: number | undefined) =>
    share === undefined ? 'not seen' : formatQuantity(share, '%', 3)
  return (
    <Drawing
      title={title}
      description={description}
      width={WIDTH}
      height={bottom + 62}
      numbers={{
        columns: [{ label: 'Share' }, { label: ways[0] }, { label: ways[1] }],
        rows: rows.map(({ name, shares }) => [name, percent(shares[0]), percent(shares[1])]),
      }}
    >
      <path
        className="line-grid"
        d={numberTicks(x, 5)
          .map(({ at }) => `M${at} ${TOP - 8}V${bottom}`)
          .join('')}
      />
      <path className="line-thin" d={`M${LEFT} ${TOP - 8}V${bottom}H${RIGHT}`} />
      {numberTicks(x, 5).map(({ at, text }) => (
        <text key={at} x={at} y={bottom + 16} textAnchor="middle" className="text-soft text-small">
          {text}
        </text>
      ))}
      <text x={RIGHT} y={bottom + 33} textAnchor="end">
        Share, %
      </text>
      {rows.map(({ name, shares }, at) => (
        <g key={name} transform={`translate(0 ${TOP + at * ROW})`}>
          <text x={LEFT - 9} y={20} textAnchor="end">
            {name}
          </text>
          {shares.map((share, way) => (
            <Bar key={way} share={share} hatched={way === 1} top={way * 17} x={x} said={percent(share)} />
          ))}
        </g>
      ))}
      {ways.map((way, at) => (
        <g key={way} transform={`translate(${4 + at * 200} ${bottom + 55})`}>
          <Swatch left={0} top={-10} width={18} hatched={at === 1} />
          <text x={25}>{way}</text>
        </g>
      ))}
    </Drawing>
  )
}

interface BarProps {
  share: number | undefined
  hatched: boolean
  top: number
  x: (share: number) => number
  said: string
}

function Bar({ share, hatched, top, x, said }: BarProps) {
  const width = share === undefined ? 0 : Math.max(0, x(share) - LEFT)
  return (
    <g>
      {width > 0 && <Swatch left={LEFT} top={top} width={width} hatched={hatched} />}
      <text x={LEFT + width + 5} y={top + 11} className="text-small">
        {said}
      </text>
    </g>
  )
}

function Swatch({
  left,
  top,
  width,
  hatched,
}: {
  left: number
  top: number
  width: number
  hatched: boolean
}) {
  const outline = `M${left} ${top}h${width}v13h${-width}Z`
  if (!hatched) return <path className="ink-copper fill-current" d={outline} />
  return (
    <>
      <path className="line-hatch" d={hatchRectangle(left, top, width, 13, 4)} />
      <path className="line-thin" d={outline} />
    </>
  )
}
