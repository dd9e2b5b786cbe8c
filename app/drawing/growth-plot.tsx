import { useId } from 'react'
import { scaleLog } from 'd3-scale'
import { formatNumber } from '@/shared/quantity/format'
import type { GrowthShown } from '@/shared/reliability/growth-shown'
import {
  currentMeanTimeInterval,
  expectedFailures,
  expectedFailuresInterval,
} from '@/shared/reliability/growth/crow-amsaa-bounds'
import { Axes } from './axes'
import { Drawing } from './drawing'
import { frameOf } from './frame'
import { logTicks } from './log-ticks'
import { BandLayer, EndNames, FrameClip, LineLayer, RingsLayer } from './plot-layers'

interface GrowthPlotProps {
  title: string
  growth: GrowthShown
  /** "board-hours". */
  unit: string
  /** Failures that the target allows by the end; undefined while there is no target. */
  allowed: number | undefined
  /** Of the bounds, two-sided, 0 to 1. */
  confidence: number
}

const WIDTH = 440
const HEIGHT = 310
/** Beyond this factor from what was counted, bounds and target run out of the frame. */
const REACH = 4
const STEPS = 40

/** Failures counted over time on logarithmic axes: the power law's straight line, its bounds, and what the target allows. */
export function GrowthPlot({ title, growth, unit, allowed, confidence }: GrowthPlotProps) {
  const clip = useId()
  const { times, end, crow } = growth
  const frame = frameOf(WIDTH, HEIGHT, { right: 74 })
  const [from, max] = [times[0]! / 1.5, times.length]
  const x = scaleLog([from, end], [frame.left, frame.right])
  const y = scaleLog([1 / REACH, Math.max(max * REACH, (allowed ?? 0) * 1.5)], [frame.bottom, frame.top])
  const seen = { fit: crow, failures: times.length, end }
  const onLine = (time: number) => ({
    time,
    expected: expectedFailures(crow, time),
    ...expectedFailuresInterval(seen, time, confidence),
  })
  const points = Array.from({ length: STEPS + 1 }, (_, step) => onLine(from * (end / from) ** (step / STEPS)))
  const place = { x, y, frame }
  const meanTime = currentMeanTimeInterval(seen, confidence)
  const percent = `${formatNumber(confidence * 100)} %`
  const lastOf = onLine(end)
  return (
    <Drawing
      title={title}
      description={`${times.length} failures over ${formatNumber(end)} ${unit}, on logarithmic axes. The power law has a slope of ${formatNumber(crow.shape, 3)}; below 1 failures grow rarer. ${allowed ? `The target allows ${formatNumber(allowed, 3)} by the end.` : ''}`}
      width={WIDTH}
      height={HEIGHT}
      numbersPlace="beside"
      numbers={{
        columns: [
          { label: 'Failure' },
          { label: 'After' },
          { label: 'Power law' },
          { label: 'At least' },
          { label: 'At most' },
          { label: 'Target' },
        ],
        rows: [...times, end].map((time, position) => {
          const { expected, lower, upper } = onLine(time)
          return [
            position < times.length ? String(position + 1) : 'end',
            round(time),
            ...[expected, lower, upper].map((value) => formatNumber(value, 3)),
            allowed ? formatNumber((allowed * time) / end, 3) : '–',
          ]
        }),
      }}
      note={`Rings: failures as counted. After: ${unit}. Dashed: ${percent} bounds of the line. Steep as the target, failures come at one rate; flatter, they grow rarer. At the end one in ${round(crow.currentMeanTime)} ${unit} (bounds ${round(meanTime.lower)} to ${round(meanTime.upper)})${allowed ? `; the target allows one in ${round(end / allowed)}` : ''}. The bounds are those of many failures, and rough for few.`}
    >
      <FrameClip id={clip} frame={frame} />
      <BandLayer
        place={place}
        clip={clip}
        points={points.map(({ time, lower, upper }) => [time, lower, upper])}
      />
      <Axes
        frame={frame}
        across={{ title: `${unit}, logarithmic`, ticks: logTicks(from, end, x) }}
        up={{ title: 'Failures so far, logarithmic', ticks: logTicks(y.domain()[0]!, y.domain()[1]!, y) }}
      />
      <g clipPath={`url(#${clip})`}>
        <LineLayer place={place} ink="line-bound" points={points.map(({ time, upper }) => [time, upper])} />
        <LineLayer place={place} ink="line-bound" points={points.map(({ time, lower }) => [time, lower])} />
        {allowed && (
          <LineLayer
            place={place}
            ink="line-limit"
            points={[from, end].map((time) => [time, (allowed * time) / end])}
          />
        )}
        <LineLayer place={place} points={points.map(({ time, expected }) => [time, expected])} />
      </g>
      <RingsLayer place={place} points={times.map((time, position) => [time, position + 1])} />
      <EndNames
        frame={frame}
        size="text-small"
        ends={[
          { name: 'at most', height: y(lastOf.upper) },
          { name: 'power law', height: y(lastOf.expected) },
          { name: 'at least', height: y(lastOf.lower) },
          ...(allowed ? [{ name: 'target', height: y(allowed) }] : []),
        ]}
      />
    </Drawing>
  )
}

/** Three digits, also before the point: a mean time of few failures is no better known. */
const round = (value: number): string => formatNumber(Number(value.toPrecision(3)), 12)
