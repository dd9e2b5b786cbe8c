import { byPlace } from '../geometry/by-place'
import type { Point } from '../geometry/solid'
import { middleOf } from '../joined-copper'
import type { Drilled } from '../drill/drill-file'
import type { NetPoint } from './netlist-file'

/** So many holes of a netlist tell its shift as well as all of them. */
const TRIED = 40
/** A shift that brings fewer holes than this share onto theirs explains nothing. */
const FITS_SHARE = 0.8

/**
 * The one move that brings the holes of a netlist onto drilled ones; undefined
 * where none does. It is told, never made: whoever sent the files has to say
 * which of them is where it should be.
 */
export function shiftOnto(points: readonly NetPoint[], drilled: readonly Drilled[]): Point | undefined {
  const listed = points.filter(({ kind }) => kind !== 'land')
  const some = listed.filter((_, at) => at % Math.ceil(listed.length / TRIED) === 0)
  const first = some[0]
  if (!first) return undefined
  const holesAt = byPlace(drilled, middleOf)
  const fits = ([dx, dy]: Point): number =>
    some.filter(({ at: [x, y] }) => holesAt([x + dx, y + dy]).length > 0).length
  const tried = drilled.slice(0, READ_AT_MOST).map((hole): Point => {
    const [x, y] = middleOf(hole)
    return [x - first.at[0], y - first.at[1]]
  })
  const best = tried.map((shift) => ({ shift, share: fits(shift) / some.length }))
  return best.reduce<{ shift: Point; share: number } | undefined>(
    (most, each) => (each.share >= FITS_SHARE && each.share > (most?.share ?? 0) ? each : most),
    undefined,
  )?.shift
}

const READ_AT_MOST = 5000
