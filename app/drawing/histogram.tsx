import { scaleLinear } from 'd3-scale'
import { formatQuantity } from '@/shared/quantity/format'
import { printedUnit, type Unit } from '@/shared/quantity/unit'
import { Axes } from './axes'
import { binsOf } from './bins'
import { Drawing } from './drawing'
import { extentOf } from './extent'
import { frameOf } from './frame'
import { hatchRectangle } from './hatch-rectangle'
import { UprightLimit } from './limit-line'
import { axisTitle, numberTicks } from './ticks'

type HistogramProps = {
  title: string
  across: { label: string; unit: Unit }
  values: readonly number[]
  limits: { atLeast?: number; atMost?: number }
  /** A normal spread to draw over the bars. */
  normal: { mean: number; sigma: number }
}

const WIDTH = 440
const HEIGHT = 280
const CURVE_PLACES = 60

/** Readings by size against their limits, with the normal curve that an index of capability presumes. */
export function Histogram({ title, across, values, limits, normal }: HistogramProps) {
  const { atLeast, atMost } = limits
  const frame = frameOf(WIDTH, HEIGHT, { right: 14 })
  const bins = binsOf(values, extentOf([values]))
  const { mean, sigma } = normal
  const ends = [atLeast, atMost].filter((value) => value !== undefined)
  const [min, max] = extentOf([
    bins.flatMap(({ from, to }) => [from, to]),
    [mean - 3.5 * sigma, mean + 3.5 * sigma],
    ends,
  ])
  const marginValue = (max - min) * 0.03
  const width = bins[0]!.to - bins[0]!.from
  const curve = (value: number): number =>
    ((values.length * width) / (sigma * Math.sqrt(2 * Math.PI))) *
    Math.exp(-(((value - mean) / sigma) ** 2) / 2)
  const highest = Math.max(...bins.map(({ count }) => count), curve(mean))
  const x = scaleLinear([min - marginValue, max + marginValue], [frame.left, frame.right])
  const y = scaleLinear([0, highest * 1.08], [frame.bottom, frame.top]).nice(5)
  const path = Array.from({ length: CURVE_PLACES + 1 }, (_, index) => {
    const value = mean + sigma * (-3.5 + (7 * index) / CURVE_PLACES)
    return `${tenth(x(value))} ${tenth(y(curve(value)))}`
  }).join('L')
  const said = (value: number): string => formatQuantity(value, across.unit, 6)
  return (
    <Drawing
      title={title}
      description={`${values.length} readings in ${bins.length} classes${atLeast === undefined ? '' : `; at least ${said(atLeast)}`}${atMost === undefined ? '' : `; at most ${said(atMost)}`}.`}
      width={WIDTH}
      height={HEIGHT}
      numbers={{
        columns: [
          { label: 'From' },
          { label: 'to less than' },
          { label: 'Readings' },
          { label: 'Normal curve' },
        ],
        rows: bins.map(({ from, to, count }) => [
          said(from),
          said(to),
          String(count),
          curve((from + to) / 2).toFixed(1),
        ]),
      }}
    >
      <Axes
        frame={frame}
        across={{
          title: axisTitle(across.label, printedUnit(across.unit)),
          ticks: numberTicks(x, 6),
          grid: false,
        }}
        up={{ title: 'Readings', ticks: numberTicks(y, 5) }}
      />
      {bins.map(({ from, to, count }) => {
        const [left, right, top] = [x(from), x(to), y(count)]
        if (count === 0) return null
        return (
          <g key={from}>
            <path
              className="fill-copper-wash"
              d={`M${tenth(left)} ${frame.bottom}V${tenth(top)}H${tenth(right)}V${frame.bottom}Z`}
            />
            <path
              className="ink-copper outlined"
              strokeWidth="0.7"
              d={hatchRectangle(left, top, right - left, frame.bottom - top, 6)}
            />
            <path
              className="line-thin"
              d={`M${tenth(left)} ${frame.bottom}V${tenth(top)}H${tenth(right)}V${frame.bottom}`}
            />
          </g>
        )
      })}
      <path className="line-seen" d={`M${path}`} />
      <path className="line-chain" d={`M${tenth(x(mean))} ${frame.top}V${frame.bottom}`} />
      {atLeast !== undefined && (
        <UprightLimit x={x(atLeast)} top={frame.top} bottom={frame.bottom} beyond="left" />
      )}
      {atMost !== undefined && (
        <UprightLimit x={x(atMost)} top={frame.top} bottom={frame.bottom} beyond="right" />
      )}
    </Drawing>
  )
}

const tenth = (value: number): number => Math.round(value * 10) / 10
