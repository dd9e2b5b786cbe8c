import { ringsOf } from './geometry/flattened'
import type { Solid } from './geometry/solid'
import type { Drawn } from './gerber/gerber-layer'

/** More than this a browser draws slowly: a picture of more leaves the smallest strokes out. */
const PATH_CHARS_MAX = 1_500_000

/**
 * Everything dark of a layer as one path for a picture, in mm with y downwards
 * and two decimals: 10 µm, which no screen shows. What is clear is left out,
 * for a picture leads to a place and is not measured from.
 */
export function layerPath(drawn: readonly Drawn[]): string {
  const parts: string[] = []
  let length = 0
  for (const { solid, dark } of drawn) {
    if (!dark) continue
    const part = pathOf(solid)
    length += part.length
    if (length > PATH_CHARS_MAX) break
    parts.push(part)
  }
  return parts.join('')
}

const mm = (value: number): string => String(Math.round(value * 100) / 100)

/** Corners of a round end in a picture: enough at the scale of a whole board. */
const pathOf = (solid: Solid): string =>
  solid.kind === 'capsule'
    ? capsulePath(solid)
    : ringsOf(solid)
        .map((ring) => {
          let path = ''
          for (let i = 0; i < ring.length; i += 2)
            path += `${i === 0 ? 'M' : 'L'}${mm(ring[i]!)} ${mm(-ring[i + 1]!)}`
          return `${path}Z`
        })
        .join('')

function capsulePath({ a, b, radius }: Extract<Solid, { kind: 'capsule' }>): string {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1])
  const [nx, ny] =
    length === 0 ? [radius, 0] : [(-(b[1] - a[1]) / length) * radius, ((b[0] - a[0]) / length) * radius]
  const r = mm(radius)
  const point = (x: number, y: number) => `${mm(x)} ${mm(-y)}`
  return `M${point(a[0] + nx, a[1] + ny)}A${r} ${r} 0 0 0 ${point(a[0] - nx, a[1] - ny)}L${point(b[0] - nx, b[1] - ny)}A${r} ${r} 0 0 0 ${point(b[0] + nx, b[1] + ny)}Z`
}
