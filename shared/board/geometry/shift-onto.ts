import { byPlace } from './by-place'
import type { Point } from './solid'

/** So many places tell a shift as well as all of them. */
const TRIED = 40
/** A shift that brings fewer places than this share onto others explains nothing. */
const FITS_SHARE = 0.8
/** Places that the first one may have come to. */
const CANDIDATES = 5000

/**
 * The one move that brings places onto others; undefined where none brings
 * most of them. Of several that do, the one that brings most.
 */
export function shiftOnto(places: readonly Point[], onto: readonly Point[]): Point | undefined {
  const some = places.filter((_, at) => at % Math.ceil(places.length / TRIED) === 0)
  const first = some[0]
  if (!first) return undefined
  const there = byPlace(onto, (at) => at)
  const fits = ([dx, dy]: Point): number =>
    some.filter(([x, y]) => there([x + dx, y + dy]).length > 0).length / some.length
  let best: { readonly shift: Point; readonly share: number } | undefined
  for (const [x, y] of onto.slice(0, CANDIDATES)) {
    const shift: Point = [x - first[0], y - first[1]]
    const share = fits(shift)
    if (share >= FITS_SHARE && share > (best?.share ?? 0)) best = { shift, share }
  }
  return best?.shift
}
