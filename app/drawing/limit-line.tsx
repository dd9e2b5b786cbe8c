/** A limit standing upright: a thick line with teeth on the side that is not allowed. */
export function UprightLimit({
  x,
  top,
  bottom,
  beyond,
}: {
  x: number
  top: number
  bottom: number
  beyond: 'left' | 'right'
}) {
  const reach = beyond === 'right' ? 6 : -6
  return (
    <g>
      <path className="line-limit" d={`M${x} ${top}V${bottom}`} />
      <path className="line-limit-teeth" d={teeth(top, bottom, (y) => `M${x} ${y}l${reach} -6`)} />
    </g>
  )
}

/** A limit lying level: a thick line with teeth on the side that is not allowed. */
export function LevelLimit({
  y,
  left,
  right,
  beyond,
}: {
  y: number
  left: number
  right: number
  beyond: 'above' | 'below'
}) {
  const reach = beyond === 'above' ? -6 : 6
  return (
    <g>
      <path className="line-limit" d={`M${left} ${y}H${right}`} />
      <path className="line-limit-teeth" d={teeth(left, right, (x) => `M${x} ${y}l6 ${reach}`)} />
    </g>
  )
}

function teeth(from: number, to: number, tooth: (at: number) => string): string {
  let path = ''
  for (let at = from + 8; at <= to; at += 8) path += tooth(at)
  return path
}
