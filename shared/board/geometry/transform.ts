/** x' = a·x + b·y + tx, y' = c·x + d·y + ty; lengths grow by `scale` in every direction. */
export interface Transform {
  readonly a: number
  readonly b: number
  readonly c: number
  readonly d: number
  readonly tx: number
  readonly ty: number
  readonly scale: number
}

export const UNMOVED: Transform = { a: 1, b: 0, c: 0, d: 1, tx: 0, ty: 0, scale: 1 }

export const moved = (tx: number, ty: number): Transform => ({ ...UNMOVED, tx, ty })

/** Mirrored first, then turned, then scaled, then moved: the order of the Gerber specification 4.9. */
export function placed(placing: {
  mirrorX: boolean
  mirrorY: boolean
  rotationDeg: number
  scale: number
  x: number
  y: number
}): Transform {
  const { mirrorX, mirrorY, scale } = placing
  const [cos, sin] = cosSin(placing.rotationDeg)
  const [signX, signY] = [mirrorX ? -1 : 1, mirrorY ? -1 : 1]
  return {
    a: scale * cos * signX,
    b: -scale * sin * signY,
    c: scale * sin * signX,
    d: scale * cos * signY,
    tx: placing.x,
    ty: placing.y,
    scale,
  }
}

/** Exact at the quarter turns, where a rounding would tilt every edge of a board. */
export function cosSin(degrees: number): readonly [number, number] {
  const quarter = ((degrees % 360) + 360) % 360
  if (quarter === 0) return [1, 0]
  if (quarter === 90) return [0, 1]
  if (quarter === 180) return [-1, 0]
  if (quarter === 270) return [0, -1]
  const angle = (quarter * Math.PI) / 180
  return [Math.cos(angle), Math.sin(angle)]
}

export const applied = (t: Transform, x: number, y: number): readonly [number, number] => [
  t.a * x + t.b * y + t.tx,
  t.c * x + t.d * y + t.ty,
]
