import { scaleLinear } from 'd3-scale'
import { UprightLimit } from './limit-line'
import { numberTicks } from './ticks'

export type ClearanceGaugeProps = {
  /** Worst-case radial clearance and its nominal value. */
  minMm: number
  nominalMm: number
  greatestMm: number
  windowMm: { from: number; to: number }
}

const LEFT = 14
const RIGHT = 426

/** The range of a clearance as a bar over its window; to be placed inside an `svg` 440 wide. */
export function ClearanceGauge({ minMm, nominalMm, greatestMm, windowMm }: ClearanceGaugeProps) {
  const all = [0, minMm, greatestMm, windowMm.from, windowMm.to]
  const max = Math.max(...all)
  const x = scaleLinear([Math.min(...all), max * 1.12], [LEFT, RIGHT])
  return (
    <g>
      <rect
        x={x(windowMm.from)}
        y={0}
        width={x(windowMm.to) - x(windowMm.from)}
        height={24}
        className="fill-mask-wash"
      />
      <UprightLimit x={x(windowMm.from)} top={-6} bottom={30} beyond="left" />
      <UprightLimit x={x(windowMm.to)} top={-6} bottom={30} beyond="right" />
      <text x={(x(windowMm.from) + x(windowMm.to)) / 2} y={-11} textAnchor="middle">
        window {windowMm.from}–{windowMm.to}
      </text>
      <path
        className="line-heavy"
        d={`M${x(minMm)} 5V19M${x(greatestMm)} 5V19M${x(minMm)} 12H${x(greatestMm)}`}
      />
      <path className="fill-ink" d={`M${x(nominalMm)} 5l5 7l-5 7l-5 -7Z`} />
      <path className="line-thin" d={`M${LEFT} 30H${RIGHT}`} />
      {numberTicks(x, 6).map(({ at, text }) => (
        <g key={at}>
          <path className="line-thin" d={`M${at} 30v4`} />
          <text x={at} y={46} textAnchor="middle" className="text-soft text-small">
            {text}
          </text>
        </g>
      ))}
      <text x={RIGHT} y={63} textAnchor="end">
        Radial clearance, mm
      </text>
    </g>
  )
}
