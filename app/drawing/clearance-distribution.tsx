import { useId } from 'react'
import { scaleLinear } from 'd3-scale'
import { area, curveLinear } from 'd3-shape'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { Axes } from './axes'
import { Drawing } from './drawing'
import { frameOf } from './frame'
import { UprightLimit } from './limit-line'
import { axisTitle, numberTicks } from './ticks'

type ClearanceDistributionProps = {
  title: string
  meanMm: number
  standardDeviationMm: number
  windowMm: { from: number; to: number }
  /** Shares of joints below, inside and above the window, as the rule found them. */
  shares: { below: number; inside: number; above: number }
}

/** Tails beyond any real process are told as such, not to the last power of ten. */
const MIN_TOLD = 1e-9
const WIDTH = 440
const HEIGHT = 250

/** The radial clearance as it will scatter, against its window; what falls outside is hatched. */
export function ClearanceDistribution(props: ClearanceDistributionProps) {
  const { title, meanMm, standardDeviationMm, windowMm, shares } = props
  const hatch = useId()
  const frame = frameOf(WIDTH, HEIGHT, { left: 16, top: 46 })
  const reach = 4 * standardDeviationMm
  const from = Math.min(meanMm - reach, windowMm.from - standardDeviationMm)
  const to = Math.max(meanMm + reach, windowMm.to + standardDeviationMm)
  const x = scaleLinear([from, to], [frame.left, frame.right])
  const y = scaleLinear([0, 1.05], [frame.bottom, frame.top])
  const density = (mm: number) => Math.exp(-(((mm - meanMm) / standardDeviationMm) ** 2) / 2)
  const under = (start: number, end: number) =>
    area<number>(x, frame.bottom, (mm) => y(density(mm))).curve(curveLinear)(steps(start, end)) ?? ''
  const share = (value: number) =>
    value > 0 && value < MIN_TOLD ? 'none expected' : formatQuantity(value * 100, '%', 3)
  return (
    <Drawing
      title={title}
      description={`Normal density with mean ${formatQuantity(meanMm, 'mm')} and standard deviation ${formatQuantity(standardDeviationMm, 'mm', 3)}; ${share(shares.inside)} inside the window from ${windowMm.from} to ${windowMm.to} mm.`}
      width={WIDTH}
      height={HEIGHT}
      numbers={{
        columns: [{ label: 'What' }, { label: 'Value' }],
        rows: [
          ['Mean clearance', formatQuantity(meanMm, 'mm')],
          ['Standard deviation', formatQuantity(standardDeviationMm, 'mm', 3)],
          ['Window', `${formatNumber(windowMm.from)} to ${formatQuantity(windowMm.to, 'mm')}`],
          ['Below the window', share(shares.below)],
          ['Inside the window', share(shares.inside)],
          ['Above the window', share(shares.above)],
        ],
      }}
    >
      <pattern id={hatch} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path className="ink-carmine outlined" strokeWidth="1.6" d="M0 0V5" />
      </pattern>
      <Axes
        frame={frame}
        across={{ title: axisTitle('Radial clearance', 'mm'), ticks: numberTicks(x, 6), grid: false }}
      />
      <path className="fill-mask-wash" d={under(Math.max(from, windowMm.from), Math.min(to, windowMm.to))} />
      {windowMm.from > from && <path fill={`url(#${hatch})`} d={under(from, windowMm.from)} />}
      {windowMm.to < to && <path fill={`url(#${hatch})`} d={under(windowMm.to, to)} />}
      <path className="line-seen" d={outline(under(from, to))} />
      <path className="line-chain" d={`M${x(meanMm)} ${frame.top}V${frame.bottom}`} />
      <UprightLimit x={x(windowMm.from)} top={frame.top - 4} bottom={frame.bottom} beyond="left" />
      <UprightLimit x={x(windowMm.to)} top={frame.top - 4} bottom={frame.bottom} beyond="right" />
      <text
        x={(x(windowMm.from) + x(windowMm.to)) / 2}
        y={frame.top - 26}
        textAnchor="middle"
        className="text-strong"
      >
        {share(shares.inside)} inside
      </text>
      <text x={frame.left} y={frame.top - 10}>
        {share(shares.below)} below
      </text>
      <text x={frame.right} y={frame.top - 10} textAnchor="end">
        {share(shares.above)} above
      </text>
    </Drawing>
  )
}

const STEPS = 80
const steps = (start: number, end: number): number[] =>
  Array.from({ length: STEPS + 1 }, (_, step) => start + ((end - start) * step) / STEPS)

/** The upper edge alone of a d3 area: its path up to where it turns back along the axis. */
const outline = (path: string): string =>
  path
    .split('L')
    .slice(0, STEPS + 1)
    .join('L')
