import { AcrossTicks } from './across-ticks'
import type { Frame } from './frame'
import type { Tick } from './ticks'

type Axis = { title: string; ticks: readonly Tick[]; grid?: boolean }

/** Grid, frame, ticks and titles of a plot. The upward title lies flat above its axis. */
export function Axes({ frame, across, up }: { frame: Frame; across: Axis; up?: Axis }) {
  const { left, right, top, bottom } = frame
  return (
    <g>
      <path className="line-grid" d={gridOf(frame, across, up)} />
      <path className="line-thin" d={`M${left} ${top}V${bottom}H${right}`} />
      <AcrossTicks ticks={across.ticks} bottom={bottom} />
      <text x={right} y={bottom + 33} textAnchor="end">
        {across.title}
      </text>
      {up?.ticks.map(({ at, text }) => (
        <g key={at}>
          <path className="line-thin" d={`M${left} ${at}h-4`} />
          <text x={left - 7} y={at + 4} textAnchor="end" className="text-soft text-small">
            {text}
          </text>
        </g>
      ))}
      {up && (
        <text x={4} y={top - 16}>
          {up.title}
        </text>
      )}
    </g>
  )
}

function gridOf({ left, right, top, bottom }: Frame, across: Axis, up?: Axis): string {
  const upright = (across.grid ?? true) ? across.ticks.map(({ at }) => `M${at} ${top}V${bottom}`) : []
  const level = up && (up.grid ?? true) ? up.ticks.map(({ at }) => `M${left} ${at}H${right}`) : []
  return [...upright, ...level].join('')
}
