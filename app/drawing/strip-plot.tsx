import { isOutside, type ReadingLimits } from '@/shared/lot-tests/readings-summary'
import { UprightLimit } from './limit-line'
import { percentDots, type PercentPlace } from './percent-dots'
import { pointShape } from './point-shape'
import { thinned } from './thinned-dots'
import type { Tick } from './ticks'

interface StripPlotProps {
  /** From a reading to hundredths of the width. */
  readonly x: (value: number) => number
  readonly ticks: readonly Tick[]
  readonly limits: ReadingLimits
  readonly size: 'small' | 'large'
  /** The strip in a sentence. */
  readonly says: string
  readonly counted: readonly number[]
  readonly setAside: readonly number[]
}

/** In hundredths of the width: dots keep apart where a strip is as narrow as on a phone. */
const DOT_WIDTH = 1.3
const STEP_PX = 6.5
/** Heights in pixels, whatever the width. */
const SIZES = { small: { least: 24, stack: 40 }, large: { least: 56, stack: 150 } } as const
const FOOT_PX = 6

/**
 * The dots of one lot. Places across are shares of the width, sizes are in pixels, so that the strip takes the width
 * it has and neither dots nor lines are blown up with it.
 */
export function StripPlot({ x, ticks, limits, size, says, counted, setAside }: StripPlotProps) {
  const readings = [
    ...thinned(counted).map((value) => ({ value, hollow: false })),
    ...thinned(setAside).map((value) => ({ value, hollow: true })),
  ]
  const dots = percentDots(readings, x, DOT_WIDTH)
  const levels = dots.reduce((most, { level }) => Math.max(most, level + 1), 1)
  const { least, stack } = SIZES[size]
  const step = Math.min(STEP_PX, stack / levels)
  const height = Math.ceil(Math.max(least, levels * step + 2 * FOOT_PX))
  const y = ({ level }: PercentPlace) => height - FOOT_PX - level * step
  const inside = dots.filter(({ value }) => !isOutside(value, limits))
  const path = (of: readonly PercentPlace[]) =>
    of.map((dot) => `M${(dot.at * 10).toFixed(1)} ${y(dot).toFixed(1)}h0`).join('')
  return (
    <svg
      className={`strip-plot strip-plot-${size}`}
      role="img"
      aria-label={says}
      width="100%"
      height={height}
    >
      {ticks.map(({ at }) => (
        <line key={at} className="line-grid" x1={`${at}%`} x2={`${at}%`} y1={0} y2={height} />
      ))}
      <line className="line-thin" x1="0" x2="100%" y1={height - 0.5} y2={height - 0.5} />
      <svg viewBox={`0 0 1000 ${height}`} width="100%" height={height} preserveAspectRatio="none">
        <path className="strip-dots" d={path(inside)} />
        {setAside.length > 0 && (
          <path className="strip-dots-hollow" d={path(inside.filter(({ hollow }) => hollow))} />
        )}
      </svg>
      {dots
        .filter(({ value }) => isOutside(value, limits))
        .map((dot, at) => (
          <svg key={at} x={`${dot.at}%`} y={y(dot)} overflow="visible">
            <path className="ink-carmine outlined" strokeWidth="1.6" d={pointShape('cross', 0, 0, 3)} />
          </svg>
        ))}
      {limits.atLeast !== undefined && <Limit at={x(limits.atLeast)} height={height} beyond="left" />}
      {limits.atMost !== undefined && <Limit at={x(limits.atMost)} height={height} beyond="right" />}
    </svg>
  )
}

const Limit = ({ at, height, beyond }: { at: number; height: number; beyond: 'left' | 'right' }) => (
  <svg x={`${at}%`} overflow="visible">
    <UprightLimit x={0} top={0} bottom={height} beyond={beyond} />
  </svg>
)
