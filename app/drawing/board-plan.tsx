import { Drawing } from './drawing'
import { pointShape, shapeFor } from './point-shape'

/** A defect at its place on the board, millimetres from the lower left corner. */
export type DefectAt = { kind: string; xMm: number; yMm: number }

type BoardPlanProps = {
  title: string
  /** Corners of the board's outline, in order, millimetres from the lower left. */
  outlineMm: readonly { xMm: number; yMm: number }[]
  /** Every joint, drawn faintly, when known. */
  joints?: readonly { xMm: number; yMm: number }[]
  defects: readonly DefectAt[]
  /** Names to find one's way by, at the middle of what they name. */
  components?: readonly { component: string; xMm: number; yMm: number }[]
  /** Which way the board travels over the solder. */
  travel?: 'left' | 'right' | 'up' | 'down'
}

const WIDTH = 440
const ROOM = 34
const TURN = { right: 0, down: 90, left: 180, up: 270 }

/** The board from its soldered side, with defects by kind where they were found. */
export function BoardPlan({
  title,
  outlineMm,
  joints = [],
  components = [],
  defects,
  travel,
}: BoardPlanProps) {
  const across = outlineMm.map(({ xMm }) => xMm)
  const up = outlineMm.map(({ yMm }) => yMm)
  const [left, bottom] = [Math.min(...across), Math.min(...up)]
  const [wideMm, highMm] = [Math.max(...across) - left, Math.max(...up) - bottom]
  const scale = Math.min((WIDTH - 2 * ROOM) / wideMm, 420 / highMm)
  const x = (mm: number) => round(ROOM + (mm - left) * scale)
  const y = (mm: number) => round(ROOM + (highMm - (mm - bottom)) * scale)
  const kinds = countKinds(defects)
  const legendTop = ROOM + highMm * scale + 34
  return (
    <Drawing
      title={title}
      description={`${defects.length} defects on a board of ${round(wideMm)} by ${round(highMm)} mm${travel ? `, travelling ${travel}` : ''}. ${kinds.map(({ kind, count }) => `${kind}: ${count}`).join('; ')}.`}
      width={WIDTH}
      height={legendTop + Math.ceil(kinds.length / 2) * 20 + 4}
      numbers={{
        columns: [{ label: 'Kind' }, { label: 'Defects' }, { label: 'Places (x; y in mm)', set: 'text' }],
        rows: kinds.map(({ kind, count }) => [
          kind,
          String(count),
          defects
            .filter((defect) => defect.kind === kind)
            .slice(0, 12)
            .map(({ xMm, yMm }) => `(${round(xMm)}; ${round(yMm)})`)
            .join(' ') + (count > 12 ? ' …' : ''),
        ]),
      }}
    >
      <path
        className="fill-mask-wash"
        stroke="var(--color-ink)"
        strokeWidth="1.7"
        d={`M${outlineMm.map((corner) => `${x(corner.xMm)} ${y(corner.yMm)}`).join('L')}Z`}
      />
      <path
        className="joint-faint"
        d={joints.map((joint) => `M${x(joint.xMm)} ${y(joint.yMm)}h0`).join('')}
      />
      {components.map(({ component, xMm, yMm }) => (
        <text key={component} x={x(xMm)} y={y(yMm) + 4} textAnchor="middle" className="text-soft text-small">
          {component}
        </text>
      ))}
      {kinds.map(({ kind }, position) => (
        <path
          key={kind}
          className="ink-carmine outlined"
          strokeWidth="1.6"
          d={defects
            .filter((defect) => defect.kind === kind)
            .map((defect) => pointShape(shapeFor(position), x(defect.xMm), y(defect.yMm), 5))
            .join('')}
        />
      ))}
      {travel && (
        <TravelArrow
          travel={travel}
          x={x(left + wideMm / 2)}
          right={x(left + wideMm)}
          y={y(bottom + highMm / 2)}
        />
      )}
      {kinds.map(({ kind, count }, position) => (
        <g
          key={kind}
          transform={`translate(${ROOM + (position % 2) * 190} ${legendTop + Math.floor(position / 2) * 20})`}
        >
          <path
            className="ink-carmine outlined"
            strokeWidth="1.6"
            d={pointShape(shapeFor(position), 5, -4, 5)}
          />
          <text x={17}>
            {kind} <tspan className="text-strong">{count}</tspan>
          </text>
        </g>
      ))}
    </Drawing>
  )
}

type TravelProps = { travel: keyof typeof TURN; x: number; right: number; y: number }

function TravelArrow({ travel, x, right, y }: TravelProps) {
  const level = travel === 'left' || travel === 'right'
  const place = level ? `translate(${x} 26)` : `translate(${right + 22} ${y})`
  return (
    <g transform={place}>
      <path className="fill-ink" transform={`rotate(${TURN[travel]})`} d="M-34 -3H16V-8L34 0L16 8V3H-34Z" />
      <text x={level ? 44 : 0} y={level ? 4 : 54} textAnchor={level ? 'start' : 'middle'}>
        travel
      </text>
    </g>
  )
}

/** Kinds with their counts, most frequent first, so that a kind keeps its shape while it leads. */
function countKinds(defects: readonly DefectAt[]): { kind: string; count: number }[] {
  const counts = new Map<string, number>()
  for (const { kind } of defects) counts.set(kind, (counts.get(kind) ?? 0) + 1)
  return [...counts].map(([kind, count]) => ({ kind, count })).sort((a, b) => b.count - a.count)
}

const round = (value: number): number => Math.round(value * 10) / 10
