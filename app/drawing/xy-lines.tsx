import { scaleLinear } from 'd3-scale'
import { formatQuantity } from '@/shared/quantity/format'
import { printedUnit, type Unit } from '@/shared/quantity/unit'
import { Axes } from './axes'
import { Drawing } from './drawing'
import { frameOf } from './frame'
import { BandLayer, dashFor, EndNames, LineLayer, NamedLevel, UprightLayer } from './plot-layers'
import { axisTitle, numberTicks } from './ticks'

/** One line: its points in order of x, and how far it may lie off either way. */
export type Series = {
  name: string
  points: readonly { x: number; y: number; min?: number; max?: number }[]
}

type XyLinesProps = {
  title: string
  description: string
  across: { label: string; unit: Unit }
  up: { label: string; unit: Unit }
  series: readonly Series[]
  /** A limit across, toothed on the side that is not allowed. */
  limit?: { y: number; name: string; beyond: 'above' | 'below' }
  /** A moment or value to read off, drawn upright. */
  upright?: { x: number; name: string }
}

const WIDTH = 440
const HEIGHT = 280

/** Lines of one family, told apart by dash and by name at their ends, with a band where the value is uncertain. */
export function XyLines({ title, description, across, up, series, limit, upright }: XyLinesProps) {
  const frame = frameOf(WIDTH, HEIGHT, { right: 74 })
  const points = series.flatMap((one) => one.points)
  const heights = [...points.flatMap(({ y, min, max }) => [y, min ?? y, max ?? y]), limit?.y ?? 0]
  const x = scaleLinear(spanOf(points.map((point) => point.x)), [frame.left, frame.right])
  const y = scaleLinear(spanOf([0, ...heights]), [frame.bottom, frame.top]).nice(5)
  const place = { x, y, frame }
  return (
    <Drawing
      title={title}
      description={description}
      width={WIDTH}
      height={HEIGHT}
      numbers={{
        columns: [
          { label: 'Line' },
          { label: across.label },
          { label: up.label },
          { label: 'Least' },
          { label: 'Most' },
        ],
        rows: series.flatMap((one) =>
          thinned(one.points).map((point) => [
            one.name,
            formatQuantity(point.x, across.unit, 3),
            formatQuantity(point.y, up.unit, 3),
            point.min === undefined ? '–' : formatQuantity(point.min, up.unit, 3),
            point.max === undefined ? '–' : formatQuantity(point.max, up.unit, 3),
          ]),
        ),
      }}
    >
      <Axes
        frame={frame}
        across={{ title: axisTitle(across.label, printedUnit(across.unit)), ticks: numberTicks(x, 6) }}
        up={{ title: axisTitle(up.label, printedUnit(up.unit)), ticks: numberTicks(y, 5) }}
      />
      {series
        .filter((one) => one.points.some(({ min }) => min !== undefined))
        .map((one) => (
          <BandLayer
            key={one.name}
            place={place}
            opacity={0.8}
            points={one.points.map((point) => [point.x, point.min ?? point.y, point.max ?? point.y])}
          />
        ))}
      {series.map((one, at) => (
        <LineLayer
          key={one.name}
          place={place}
          dash={dashFor(at)}
          points={one.points.map((point) => [point.x, point.y])}
        />
      ))}
      <EndNames
        led
        frame={frame}
        ends={series.map((one) => ({ name: one.name, height: y(one.points.at(-1)?.y ?? 0) }))}
      />
      {limit && <NamedLevel place={place} limit={limit} drop={limit.beyond === 'below' ? 20 : -11} />}
      {upright && <UprightLayer place={place} at={upright.x} name={upright.name} />}
    </Drawing>
  )
}

const spanOf = (values: readonly number[]): [number, number] => [Math.min(...values), Math.max(...values)]

/** At most seven points of a line, ends included, for the table. */
function thinned<T>(points: readonly T[]): readonly T[] {
  const step = Math.max(1, Math.ceil((points.length - 1) / 6))
  return points.filter((_, at) => at % step === 0 || at === points.length - 1)
}
