import type { Tick } from './ticks'

/** Ticks below a level axis, with what each stands for. */
export function AcrossTicks({ ticks, bottom }: { ticks: readonly Tick[]; bottom: number }) {
  return ticks.map(({ at, text }) => (
    <g key={at}>
      <path className="line-thin" d={`M${at} ${bottom}v4`} />
      <text x={at} y={bottom + 16} textAnchor="middle" className="text-soft text-small">
        {text}
      </text>
    </g>
  ))
}
