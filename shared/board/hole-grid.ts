import type { Point } from './geometry/solid'

/** Places on a grid of one pitch, laid where it meets most of them. */
export interface OnGrid {
  readonly pitchMm: number
  /** For each place whether it lies on the grid. */
  readonly on: readonly boolean[]
}

/** How far off a place may lie and still be on the grid, mm: what files round, both ways. */
export const GRID_REACH_MM = 0.02

/** So many origins tell as well as all: each is one of the places. */
const ORIGINS_MAX = 400

/** The grid of a pitch that meets most of some places; its origin is one of them. */
export function onGrid(places: readonly Point[], pitchMm: number): OnGrid {
  let best: readonly boolean[] = places.map(() => false)
  let most = 0
  for (const origin of originsOf(places, pitchMm)) {
    const on = places.map((place) => [0, 1].every((axis) => isOn(place[axis]! - origin[axis]!, pitchMm)))
    const count = on.filter(Boolean).length
    if (count > most) [best, most] = [on, count]
  }
  return { pitchMm, on: best }
}

const isOn = (off: number, pitchMm: number): boolean =>
  Math.abs(off - pitchMm * Math.round(off / pitchMm)) <= GRID_REACH_MM

/** One place of each place within the grid's squares. */
function originsOf(places: readonly Point[], pitchMm: number): Point[] {
  const within = (mm: number): number => Math.round((mm - pitchMm * Math.floor(mm / pitchMm)) / GRID_REACH_MM)
  const seen = new Map<string, Point>()
  for (const place of places) {
    const key = place.map(within).join()
    if (!seen.has(key)) seen.set(key, place)
    if (seen.size >= ORIGINS_MAX) break
  }
  return [...seen.values()]
}
