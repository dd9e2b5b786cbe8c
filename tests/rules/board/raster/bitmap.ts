import type { Solid } from '@/shared/board/geometry/solid'
import { ringsOf } from '@/shared/board/geometry/flattened'

/** Which pixels of a layer are covered, row by row from the top. */
export interface Bitmap {
  readonly width: number
  readonly height: number
  readonly covered: Uint8Array
}

/** Where pixels lie on a board: the lower left corner of the picture in mm, and how large it is. */
export interface Frame {
  readonly left: number
  readonly bottom: number
  readonly width: number
  readonly height: number
  readonly pixelMm: number
}

/** A pixel is covered where its middle lies in a solid, by the nonzero rule. */
export function rasterised(solids: readonly Solid[], frame: Frame): Bitmap {
  const { width, height } = frame
  const covered = new Uint8Array(width * height)
  for (const solid of solids) fill(solid, frame, covered)
  return { width, height, covered }
}

/** Along the middle of every row: where rings are crossed, and which way. */
function fill(solid: Solid, { left, bottom, width, height, pixelMm }: Frame, covered: Uint8Array): void {
  const crossings = new Map<number, [column: number, turn: number][]>()
  for (const ring of ringsOf(solid))
    for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      const x1 = (ring[j]! - left) / pixelMm - 0.5
      const y1 = (ring[j + 1]! - bottom) / pixelMm - 0.5
      const x2 = (ring[i]! - left) / pixelMm - 0.5
      const y2 = (ring[i + 1]! - bottom) / pixelMm - 0.5
      if (y1 === y2) continue
      const [from, to] = y1 < y2 ? [y1, y2] : [y2, y1]
      const last = Math.min(height - 1, Math.ceil(to) - 1)
      for (let row = Math.max(0, Math.ceil(from)); row <= last; row++) {
        const column = x1 + ((row - y1) / (y2 - y1)) * (x2 - x1)
        const there = crossings.get(row)
        if (there) there.push([column, y1 < y2 ? 1 : -1])
        else crossings.set(row, [[column, y1 < y2 ? 1 : -1]])
      }
    }
  for (const [row, met] of crossings) {
    met.sort(([one], [other]) => one - other)
    const start = (height - 1 - row) * width
    let winding = 0
    met.forEach(([column, turn], at) => {
      if (winding !== 0) {
        const first = Math.max(0, Math.ceil(met[at - 1]![0]))
        const end = Math.min(width, Math.ceil(column))
        if (end > first) covered.fill(1, start + first, start + end)
      }
      winding += turn
    })
  }
}

/**
 * Pixels on the edge of a thing drawn: those whose middle may lie on either side, for the edge
 * passes through them or their neighbour. Buried edges count, and things drawn with no width are all edge.
 */
export function edgePixels(
  solids: readonly Solid[],
  { left, bottom, width, height, pixelMm }: Frame,
): Uint8Array {
  const edges = new Uint8Array(width * height)
  const mark = (x: number, y: number): void => {
    const [column, row] = [Math.floor(x), height - 1 - Math.floor(y)]
    const [from, to] = [Math.max(0, column - 1), Math.min(width, column + 2)]
    for (let at = Math.max(0, row - 1); at < Math.min(height, row + 2); at++)
      if (to > from) edges.fill(1, at * width + from, at * width + to)
  }
  for (const solid of solids)
    for (const ring of ringsOf(solid))
      for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
        const [x1, y1] = [(ring[j]! - left) / pixelMm, (ring[j + 1]! - bottom) / pixelMm]
        const [x2, y2] = [(ring[i]! - left) / pixelMm, (ring[i + 1]! - bottom) / pixelMm]
        const steps = Math.max(1, Math.ceil(Math.max(Math.abs(x2 - x1), Math.abs(y2 - y1))))
        for (let step = 0; step < steps; step++)
          mark(x1 + ((x2 - x1) * step) / steps, y1 + ((y2 - y1) * step) / steps)
      }
  return edges
}
