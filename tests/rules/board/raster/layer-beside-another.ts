import { copperLayer } from '@/shared/board/copper'
import type { Box } from '@/shared/board/geometry/solid'
import type { Drawn } from '@/shared/board/gerber/gerber-layer'
import { edgePixels, rasterised, type Frame } from './bitmap'
import { drawnByAnother, tellable } from './other-renderer'

/** One layer as this program reads it beside the same file as another draws it. */
export interface BesideAnother {
  /** Pixels that this program covers. */
  readonly area: number
  /** Of the area: pixels that differ and lie on no edge. */
  readonly offEdges: number
  /** How far edges lie outside those of the other program on average, in pixels; below 0 inside. */
  readonly edgeShift: number
}

/** Pixels of 42 µm. At whole tens of micrometres the other program draws bars where lines have no width. */
const PIXEL_MM = 25.4 / 600
const MARGIN_MM = 1

/** Undefined where the layer shows nothing. */
export function besideAnother(text: string, drawn: readonly Drawn[]): BesideAnother | undefined {
  const { copper } = copperLayer(drawn)
  if (copper.length === 0) return undefined
  const frame = frameOf(copper.map(({ box }) => box))
  const ours = rasterised(
    copper.map(({ solid }) => solid),
    frame,
  )
  const theirs = drawnByAnother(text, frame)
  if (theirs.width !== frame.width || theirs.height !== frame.height)
    throw new Error(
      `A picture of ${frame.width} × ${frame.height} came as ${theirs.width} × ${theirs.height}.`,
    )
  const edges = edgePixels(
    drawn.map(({ solid }) => solid),
    frame,
  )
  return counted(ours.covered, theirs.covered, edges, frame.width)
}

function frameOf(boxes: readonly Box[]): Frame {
  const [minX, minY] = [Math.min(...boxes.map((box) => box.minX)), Math.min(...boxes.map((box) => box.minY))]
  const [maxX, maxY] = [Math.max(...boxes.map((box) => box.maxX)), Math.max(...boxes.map((box) => box.maxY))]
  const [left, bottom] = [tellable(minX - MARGIN_MM), tellable(minY - MARGIN_MM)]
  const pixels = (mm: number): number => Math.ceil((mm + MARGIN_MM) / PIXEL_MM)
  return { left, bottom, width: pixels(maxX - left), height: pixels(maxY - bottom), pixelMm: PIXEL_MM }
}

function counted(ours: Uint8Array, theirs: Uint8Array, edges: Uint8Array, width: number): BesideAnother {
  let [area, more, differing, outline] = [0, 0, 0, 0]
  for (let at = 0; at < ours.length; at++) {
    const covered = ours[at]!
    area += covered
    more += covered - theirs[at]!
    if (covered !== theirs[at] && edges[at] === 0) differing++
    if (covered !== ours[at - 1] || covered !== ours[at - width]) outline++
  }
  return { area, offEdges: differing / area, edgeShift: more / outline }
}
