import { formatNumber } from '@/shared/quantity/format'
import type { Tick } from './ticks'

/** Ticks of a logarithmic axis: the decades, with 2 and 5 between them while there are few. */
export function logTicks(from: number, to: number, scale: (value: number) => number): Tick[] {
  if (!(from > 0 && to > from)) throw new RangeError('A logarithmic axis runs from above zero upwards.')
  const steps = Math.log10(to / from) > 3.2 ? [1] : [1, 2, 5]
  const ticks: Tick[] = []
  for (let decade = Math.floor(Math.log10(from)); 10 ** decade <= to; decade++) {
    for (const step of steps) {
      const value = Number((step * 10 ** decade).toPrecision(3))
      if (value >= from && value <= to) ticks.push({ at: scale(value), text: formatNumber(value) })
    }
  }
  return ticks
}
