import { formatNumber } from '@/shared/quantity/format'
import { roomForText } from './room-for-text'
import type { Tick } from './ticks'

/** Ticks of a logarithmic axis: the decades, with 2 and 5 between them while there are few. */
export function logTicks(from: number, to: number, scale: (value: number) => number): Tick[] {
  if (!(from > 0 && to > from)) throw new RangeError('A logarithmic axis runs from above zero upwards.')
  return ticksAt(Math.log10(to / from) > 3.2 ? DECADES : FINER, from, to, scale)
}

/** The same across, with the decades alone where the numbers between them would meet on a phone. */
export function logTicksAcross(from: number, to: number, scale: (value: number) => number): Tick[] {
  const ticks = logTicks(from, to, scale)
  const meet = ticks.some(({ at, text }, position) => {
    const before = ticks[position - 1]
    return before && at - before.at < (roomForText([before.text]) + roomForText([text])) / 2
  })
  return meet ? ticksAt(DECADES, from, to, scale) : ticks
}

const DECADES = [1]
const FINER = [1, 2, 5]

function ticksAt(
  steps: readonly number[],
  from: number,
  to: number,
  scale: (value: number) => number,
): Tick[] {
  const ticks: Tick[] = []
  for (let decade = Math.floor(Math.log10(from)); 10 ** decade <= to; decade++) {
    for (const step of steps) {
      const value = Number((step * 10 ** decade).toPrecision(3))
      if (value >= from && value <= to) ticks.push({ at: scale(value), text: formatNumber(value) })
    }
  }
  return ticks
}
