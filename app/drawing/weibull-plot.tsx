import { useId } from 'react'
import { scaleLinear, scaleLog } from 'd3-scale'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { Axes } from './axes'
import { Drawing } from './drawing'
import { frameOf } from './frame'
import { logTicks } from './log-ticks'
import { BandLayer, FrameClip, LineLayer, RingsLayer } from './plot-layers'

interface WeibullPlotProps {
  title: string
  /** Failures with their plotting positions and bounds, shares between 0 and 1. */
  ranks: readonly { life: number; shareFailed: number; min: number; max: number }[]
  /** Lives of specimens that did not fail. */
  suspensions: readonly number[]
  fit: { shape: number; scale: number } | undefined
  /** Of the band, in percent. */
  confidencePct: number
}

const WIDTH = 440
const HEIGHT = 300
const SHARES = [0.001, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 0.632, 0.9, 0.99]

/** Height on Weibull paper: ln(−ln(1 − F)). */
const height = (share: number): number => Math.log(-Math.log1p(-share))

/** Lives on Weibull paper: median ranks, the fitted line, and the band of the ranks about it. */
export function WeibullPlot({ title, ranks, suspensions, fit, confidencePct }: WeibullPlotProps) {
  const clip = useId()
  const frame = frameOf(WIDTH, HEIGHT, { left: 58 })
  const lives = [...ranks.map(({ life }) => life), ...suspensions].filter((life) => life > 0)
  const x = scaleLog([Math.min(...lives) / 1.6, Math.max(...lives) * 1.4], [frame.left, frame.right])
  const lowest = Math.max(1e-4, Math.min(0.01, ...ranks.map(({ min }) => min)))
  const y = scaleLinear([height(lowest), height(0.995)], [frame.bottom, frame.top])
  // Where the fit puts a share; without a fit, where the failure itself lies.
  const lifeAt = (share: number, life: number): number =>
    fit ? fit.scale * (-Math.log1p(-share)) ** (1 / fit.shape) : life
  const clamp = (share: number): number => Math.min(0.995, Math.max(lowest, share))
  const place = { x, y, frame }
  const [from, to] = x.domain() as [number, number]
  return (
    <Drawing
      title={title}
      description={`${ranks.length} failures and ${suspensions.length} specimens that did not fail, on Weibull paper.${fit ? ` Fitted shape ${formatNumber(fit.shape, 3)}, characteristic life ${formatNumber(fit.scale)} cycles.` : ''}`}
      width={WIDTH}
      height={HEIGHT}
      numbers={{
        columns: [
          { label: 'Failure' },
          { label: 'Test cycles' },
          { label: 'Median rank' },
          { label: `At least (${confidencePct} %)` },
          { label: `At most (${confidencePct} %)` },
        ],
        rows: ranks.map(({ life, shareFailed, min, max }, position) => [
          String(position + 1),
          formatNumber(life, 6),
          formatQuantity(shareFailed * 100, '%', 3),
          formatQuantity(min * 100, '%', 3),
          formatQuantity(max * 100, '%', 3),
        ]),
      }}
      note={`Rings: failures at their median ranks. Ticks on the base: specimens that did not fail. Band: ${confidencePct} % bounds of the ranks.`}
    >
      <FrameClip id={clip} frame={frame} />
      {ranks.length > 1 && (
        <BandLayer
          place={place}
          points={ranks.map(({ life, shareFailed, min, max }) => [
            lifeAt(shareFailed, life),
            height(clamp(min)),
            height(clamp(max)),
          ])}
        />
      )}
      <Axes
        frame={frame}
        across={{
          title: 'Test cycles, logarithmic',
          ticks: logTicks(from, to, x),
        }}
        up={{
          title: 'Share failed',
          ticks: SHARES.filter((share) => share >= lowest).map((share) => ({
            at: y(height(share)),
            text: formatQuantity(share * 100, '%', 3),
          })),
        }}
      />
      {fit && (
        <LineLayer
          place={place}
          clip={clip}
          points={[from, to].map((life) => [life, fit.shape * Math.log(life / fit.scale)])}
        />
      )}
      {suspensions.map((life, position) => (
        <path key={position} className="line-seen" d={`M${x(life)} ${frame.bottom}v-9`} />
      ))}
      <RingsLayer place={place} points={ranks.map(({ life, shareFailed }) => [life, height(shareFailed)])} />
    </Drawing>
  )
}
