import { scalePoint } from 'd3-scale'
import { Drawing } from './drawing'
import { pointShape, type PointShape } from './point-shape'

export const TRACK_LEVELS = ['discontinued', 'tightened', 'normal', 'reduced'] as const
export type TrackLevel = (typeof TRACK_LEVELS)[number]
export type TrackOutcome = 'accepted' | 'accepted in the gap' | 'rejected' | undefined

interface InspectionTrackProps {
  title: string
  lots: readonly { name: string; level: TrackLevel; outcome: TrackOutcome; said: string }[]
  next: TrackLevel
}

const WIDTH = 440
const LEFT = 108
const TOP = 22
const ROW = 42
const BOTTOM = TOP + 3 * ROW + 20

/** How a series of lots moved between the states of inspection: a step for every lot, the next one open. */
export function InspectionTrack({ title, lots, next }: InspectionTrackProps) {
  const width = Math.max(WIDTH, LEFT + (lots.length + 1) * 46 + 20)
  const x = scalePoint<number>([...lots.map((_, at) => at), lots.length], [LEFT + 18, width - 34])
  const y = (level: TrackLevel) => TOP + TRACK_LEVELS.indexOf(level) * ROW
  const steps = [...lots.map(({ level }) => level), next]
  const half = x.step() / 2 || 20
  const used = [...new Set(lots.map(({ outcome }) => outcome))]
  return (
    <Drawing
      title={title}
      description={`${lots.length} lots in order of receipt: ${lots.map(({ name, level, outcome }) => `${name} ${level}, ${outcome ?? 'not decided'}`).join('; ')}. The next lot: ${next}.`}
      width={width}
      height={BOTTOM + 74}
      size={width > 640 ? 'wide' : 'normal'}
      numbers={{
        columns: [
          { label: 'Lot' },
          { label: 'Inspected', set: 'text' },
          { label: 'Outcome', set: 'text' },
          { label: 'What it did', set: 'text' },
        ],
        rows: lots.map(({ name, level, outcome, said }) => [name, level, outcome ?? 'not decided', said]),
      }}
    >
      {TRACK_LEVELS.map((level) => (
        <g key={level}>
          <path className="line-grid" d={`M${LEFT} ${y(level)}H${width - 12}`} />
          <text x={LEFT - 8} y={y(level) + 4} textAnchor="end">
            {level}
          </text>
        </g>
      ))}
      <path
        className="line-data outlined ink-copper"
        d={steps
          .slice(0, -1)
          .map(
            (level, at) => `${at ? 'L' : 'M'}${Math.max(LEFT, x(at)! - half)} ${y(level)}H${x(at)! + half}`,
          )
          .join('')}
      />
      <path
        className="line-bound"
        d={`M${x(lots.length)! - half} ${y(steps.at(-2) ?? next)}V${y(next)}H${x(lots.length)! + 14}`}
      />
      <path className="fill-ink" d={`M${x(lots.length)! + 22} ${y(next)}l-9 -5v10Z`} />
      {lots.map(({ name, level, outcome }, at) => (
        <g key={`${at} ${name}`}>
          <path
            className={outcome === 'rejected' ? 'outlined-filled ink-carmine' : 'outlined-filled ink-copper'}
            strokeWidth={outcome === 'rejected' ? 2.4 : 1.6}
            d={pointShape(SHAPES[outcome ?? 'not decided'], x(at)!, y(level), 5)}
          />
          <text
            transform={`translate(${x(at)! + 4} ${BOTTOM + 4}) rotate(-32)`}
            textAnchor="end"
            className="text-small"
          >
            {name}
          </text>
        </g>
      ))}
      <text x={x(lots.length)} y={BOTTOM + 10} textAnchor="middle" className="text-small text-strong">
        next
      </text>
      {used.map((outcome, at) => (
        <g key={outcome ?? 'not decided'} transform={`translate(${8 + at * 148} ${BOTTOM + 68})`}>
          <path
            className={outcome === 'rejected' ? 'outlined-filled ink-carmine' : 'outlined-filled ink-copper'}
            strokeWidth={1.6}
            d={pointShape(SHAPES[outcome ?? 'not decided'], 5, -4, 4.5)}
          />
          <text x={16}>{outcome ?? 'not decided'}</text>
        </g>
      ))}
    </Drawing>
  )
}

const SHAPES: Readonly<Record<NonNullable<TrackOutcome> | 'not decided', PointShape>> = {
  accepted: 'ring',
  'accepted in the gap': 'triangle',
  rejected: 'cross',
  'not decided': 'square',
}
