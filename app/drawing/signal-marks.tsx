import { pointShape, shapeFor } from './point-shape'

/** A place on a plot where a rule was broken, in words. */
export type SignalMark = { x: number; y: number; message: string }

const A_ROW = 2

/** Room that the words below the plot take, for so many kinds of mark. */
export const legendHeight = (kinds: number): number => Math.ceil(kinds / A_ROW) * 22

/** Marks by shape, one shape a rule, with what each shape says below; marks that would lie on one another are one. */
export function SignalMarks({
  marks,
  legend: { left, top },
}: {
  marks: readonly SignalMark[]
  legend: { left: number; top: number }
}) {
  const kinds = [...new Set(marks.map(({ message }) => message))]
  return kinds.map((message, position) => {
    const shape = shapeFor(position + 2)
    return (
      <g key={message}>
        <path
          className="ink-carmine outlined-filled"
          strokeWidth="1.8"
          d={apart(marks.filter((mark) => mark.message === message))
            .map(({ x, y }) => pointShape(shape, x, y, 5))
            .join('')}
        />
        <g
          transform={`translate(${left + (position % A_ROW) * 400} ${top + Math.floor(position / A_ROW) * 22})`}
        >
          <path className="ink-carmine outlined" strokeWidth="1.8" d={pointShape(shape, 5, -4, 5)} />
          <text x={16}>{message}</text>
        </g>
      </g>
    )
  })
}

/** Of marks within two units of one another the first. */
function apart(marks: readonly SignalMark[]): SignalMark[] {
  const taken = new Set<string>()
  return marks.filter(({ x, y }) => {
    const cell = `${Math.round(x / 2)} ${Math.round(y / 2)}`
    if (taken.has(cell)) return false
    taken.add(cell)
    return true
  })
}
