import { formatQuantity } from '@/shared/quantity/format'
import { Drawing } from './drawing'
import type { Numbers } from './numbers-table'

interface BridgingGapProps {
  title: string
  gapMm: number
  /** How far the two run side by side; unknown for a mere point. */
  runMm: number
  /** Between the run and the travel of the board. */
  angleDeg: number
  /** The part of the run that lies across the travel. */
  acrossMm: number
  numbers: Numbers
}

const WIDTH = 440
const HEIGHT = 190
const CENTRE = { x: 250, y: 98 }
/** Longest run drawn, in the drawing's units; a longer one is drawn shorter. */
const MAX_RUN = 130

/** Two bare conductors from the solder side, as they meet the wave: the gap to scale with the run where there is room. */
export function BridgingGap({ title, gapMm, runMm, angleDeg, acrossMm, numbers }: BridgingGapProps) {
  const scale = Math.min(40, MAX_RUN / Math.max(runMm, 1.2))
  const [run, gap, width] = [Math.max(runMm, 0.6) * scale, Math.max(5, gapMm * scale), 12]
  const bar = (from: number) => `M${-run / 2} ${from}h${run}v${width}h${-run}Z`
  const across = (acrossMm * scale) / 2
  return (
    <Drawing
      title={title}
      description={`Two bare conductors ${formatQuantity(gapMm, 'mm')} apart, side by side for ${formatQuantity(runMm, 'mm')} at ${formatQuantity(angleDeg, '°')} to the travel: ${formatQuantity(acrossMm, 'mm', 3)} of it lies across the travel.`}
      width={WIDTH}
      height={HEIGHT}
      size="narrow"
      numbersPlace="beside"
      numbers={numbers}
    >
      <path className="line-heavy" d="M20 98H96" />
      <path className="fill-ink" d="M104 98l-12 -5v10Z" />
      <text x={20} y={86} className="text-soft">
        travel of the board
      </text>
      <g transform={`translate(${CENTRE.x} ${CENTRE.y}) rotate(${-angleDeg})`}>
        <path
          className="fill-copper-bright"
          stroke="var(--color-ink)"
          strokeWidth="1.2"
          d={bar(-gap / 2 - width) + bar(gap / 2)}
        />
        <rect x={-run / 2} y={-gap / 2} width={run} height={gap} className="fill-solder" fillOpacity="0.55" />
        <path
          className="line-bound"
          d={`M${-run / 2} ${-gap / 2}V${gap / 2}M${run / 2} ${-gap / 2}V${gap / 2}`}
        />
      </g>
      {across > 1 && (
        <g>
          <path
            className="line-thin"
            d={`M366 ${CENTRE.y - across}V${CENTRE.y + across}M360 ${CENTRE.y - across}h12M360 ${CENTRE.y + across}h12`}
          />
          <text x={378} y={CENTRE.y + 4}>
            {formatQuantity(acrossMm, 'mm', 3)}
          </text>
        </g>
      )}
    </Drawing>
  )
}
