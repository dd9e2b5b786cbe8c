import { scaleLinear } from 'd3-scale'
import { formatQuantity } from '@/shared/quantity/format'
import { Axes } from './axes'
import { Drawing } from './drawing'
import { frameOf } from './frame'
import { LineLayer } from './plot-layers'
import { pointShape } from './point-shape'
import { numberTicks } from './ticks'

/** How probably a lot with so many defective pieces is accepted; both from 0 to 1. */
export type AcceptancePoint = { fractionDefective: number; probability: number }

type OperatingCurveProps = {
  title: string
  /** The plan in words, such as "sample 125, accept on 3". */
  plan: string
  points: readonly AcceptancePoint[]
  /** Points to read off, such as the supplier's and the buyer's risk. */
  marks?: readonly (AcceptancePoint & { name: string })[]
}

const WIDTH = 440
const HEIGHT = 280

/** The operating characteristic of a sampling plan. */
export function OperatingCurve({ title, plan, points, marks = [] }: OperatingCurveProps) {
  const frame = frameOf(WIDTH, HEIGHT, { left: 48 })
  const max = Math.max(...points.map(({ fractionDefective }) => fractionDefective))
  const x = scaleLinear([0, max * 100], [frame.left, frame.right])
  const y = scaleLinear([0, 100], [frame.bottom, frame.top])
  const percent = (share: number) => formatQuantity(share * 100, '%', 3)
  const said = marks.map(
    (mark) =>
      `${mark.name}: ${percent(mark.fractionDefective)} defective is accepted with ${percent(mark.probability)}`,
  )
  return (
    <Drawing
      title={title}
      description={`Probability of acceptance against fraction defective, ${plan}. ${said.join('; ')}.`}
      width={WIDTH}
      height={HEIGHT}
      note={plan}
      numbers={{
        columns: [{ label: 'Point' }, { label: 'Defective' }, { label: 'Accepted' }],
        rows: [
          ...marks.map((mark) => [mark.name, percent(mark.fractionDefective), percent(mark.probability)]),
          ...points
            .filter((_, at) => at % Math.max(1, Math.ceil(points.length / 10)) === 0)
            .map((point) => ['On the curve', percent(point.fractionDefective), percent(point.probability)]),
        ],
      }}
    >
      <Axes
        frame={frame}
        across={{ title: 'Defective in the lot, %', ticks: numberTicks(x, 6) }}
        up={{ title: 'Accepted, %', ticks: numberTicks(y, 5) }}
      />
      <LineLayer
        place={{ x, y, frame }}
        points={points.map(({ fractionDefective, probability }) => [
          fractionDefective * 100,
          probability * 100,
        ])}
      />
      {marks.map((mark, at) => {
        const [markX, markY] = [x(mark.fractionDefective * 100), y(mark.probability * 100)]
        return (
          <g key={mark.name}>
            <path className="line-bound" d={`M${frame.left} ${markY}H${markX}V${frame.bottom}`} />
            <path
              className="fill-sheet"
              stroke="var(--color-ink)"
              strokeWidth="1.6"
              d={pointShape(at % 2 ? 'square' : 'ring', markX, markY, 4.5)}
            />
            <text x={markX + 9} y={markY - 5} className="text-haloed">
              {mark.name}
            </text>
          </g>
        )
      })}
    </Drawing>
  )
}
