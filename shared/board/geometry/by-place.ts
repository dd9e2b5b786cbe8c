import type { Point } from './solid'

/** How near a place has to be to another to be one with it, mm: files round, to 13 µm at worst. */
export const SAME_PLACE_MM = 0.05

/** What lies within a reach of a place, the nearest first. */
export function byPlace<T>(
  things: readonly T[],
  placeOf: (thing: T) => Point,
  reachMm = SAME_PLACE_MM,
): (at: Point) => T[] {
  const cells = new Map<string, T[]>()
  const cellOf = (at: Point): readonly [number, number] => [
    Math.floor(at[0] / reachMm),
    Math.floor(at[1] / reachMm),
  ]
  for (const thing of things) {
    const key = cellOf(placeOf(thing)).join()
    const there = cells.get(key)
    if (there) there.push(thing)
    else cells.set(key, [thing])
  }
  return (at) => {
    const [column, row] = cellOf(at)
    const away = (thing: T): number => Math.hypot(placeOf(thing)[0] - at[0], placeOf(thing)[1] - at[1])
    return BESIDE.flatMap((dx) => BESIDE.flatMap((dy) => cells.get(`${column + dx},${row + dy}`) ?? []))
      .filter((thing) => away(thing) <= reachMm)
      .sort((one, other) => away(one) - away(other))
  }
}

const BESIDE = [-1, 0, 1]
