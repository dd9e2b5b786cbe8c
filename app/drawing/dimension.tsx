type AcrossProps = {
  from: number
  to: number
  /** Height of the dimension line. */
  y: number
  /** Height at which the extension lines begin, at the thing measured. */
  start: number
  text: string
}

/** A dimension measured across, in the manner of ISO 129: extension lines, arrows, text above the line. */
export function AcrossDimension({ from, to, y, start, text }: AcrossProps) {
  const past = y < start ? -4 : 4
  const tight = to - from < 26
  return (
    <g>
      <path
        className="line-thin"
        d={`M${from} ${start}V${y + past}M${to} ${start}V${y + past}M${tight ? from - 22 : from} ${y}H${tight ? to + 22 : to}`}
      />
      <path
        className="fill-ink"
        d={arrow(from, y, tight ? 'right' : 'left') + arrow(to, y, tight ? 'left' : 'right')}
      />
      <text x={(from + to) / 2} y={y - 4} textAnchor="middle" className="text-haloed">
        {text}
      </text>
    </g>
  )
}

type UprightProps = { from: number; to: number; x: number; start: number; text: string }

/** A dimension measured upright; its text reads from the right, as on a drawing. */
export function UprightDimension({ from, to, x, start, text }: UprightProps) {
  const past = x < start ? -4 : 4
  const middle = (from + to) / 2
  return (
    <g>
      <path
        className="line-thin"
        d={`M${start} ${from}H${x + past}M${start} ${to}H${x + past}M${x} ${from}V${to}`}
      />
      <path className="fill-ink" d={arrow(x, from, 'up') + arrow(x, to, 'down')} />
      <text
        x={x - 4}
        y={middle}
        textAnchor="middle"
        transform={`rotate(-90 ${x - 4} ${middle})`}
        className="text-haloed"
      >
        {text}
      </text>
    </g>
  )
}

/** A slim filled arrowhead with its point at x, y. */
export function arrow(x: number, y: number, points: 'left' | 'right' | 'up' | 'down'): string {
  const [length, half] = [9, 1.6]
  const back = points === 'left' || points === 'up' ? length : -length
  return points === 'left' || points === 'right'
    ? `M${x} ${y}L${x + back} ${y - half}V${y + half}Z`
    : `M${x} ${y}L${x - half} ${y + back}H${x + half}Z`
}
