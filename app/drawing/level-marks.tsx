import { formatNumber } from '@/shared/quantity/format'
import type { Frame } from './frame'
import { LevelLimit } from './limit-line'
import { spreadLabels } from './spread-labels'

/** A level named at the right of a plot; `named` says that its line is drawn already. */
export type Level = { name: string; value: number; kind: 'at least' | 'at most' | 'named' }

/** As it is named at the right of its plot. */
export const levelInWords = ({ name, value }: Pick<Level, 'name' | 'value'>): string =>
  `${name} ${formatNumber(value)}`

/** Levels across a plot with their names and values at its right, kept from overprinting. */
export function LevelMarks({
  frame: { left, right, top, bottom },
  levels,
  y,
}: {
  frame: Frame
  levels: readonly Level[]
  y: (value: number) => number
}) {
  const labels = spreadLabels(
    levels.map(({ value }) => y(value)),
    15,
    top,
    bottom,
  )
  return levels.map(({ name, value, kind }, position) => (
    <g key={name}>
      {kind === 'at most' && <LevelLimit y={y(value)} left={left} right={right} beyond="above" />}
      {kind === 'at least' && <LevelLimit y={y(value)} left={left} right={right} beyond="below" />}
      <path className="line-thin" d={`M${right + 2} ${y(value)}L${right + 12} ${labels[position]}`} />
      <text x={right + 15} y={labels[position]! + 4}>
        {levelInWords({ name, value })}
      </text>
    </g>
  ))
}
