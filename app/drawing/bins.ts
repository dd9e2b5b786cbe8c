import { scaleLinear } from 'd3-scale'

/** Readings from `from` up to, not including, `to`. */
export type Bin = { from: number; to: number; count: number }

const MAX_BINS = 40

/** Readings sorted into bins of one round width; about as many bins as the root of the readings. */
export function binsOf(values: ArrayLike<number>, [min, max]: readonly [number, number]): Bin[] {
  const wanted = Math.max(5, Math.min(MAX_BINS, Math.ceil(Math.sqrt(values.length))))
  const edges = scaleLinear([min, max], [0, 1]).ticks(wanted)
  const width = (edges[1] ?? min + 1) - (edges[0] ?? min)
  const first = Math.floor(min / width + 1e-9)
  const bins = Array.from(
    { length: Math.max(1, Math.floor(max / width + 1e-9) - first + 1) },
    (_, index) => ({
      from: Number(((first + index) * width).toPrecision(12)),
      to: Number(((first + index + 1) * width).toPrecision(12)),
      count: 0,
    }),
  )
  for (let index = 0; index < values.length; index++) {
    const place = Math.floor(values[index]! / width + 1e-9) - first
    bins[Math.max(0, Math.min(bins.length - 1, place))]!.count++
  }
  return bins
}
