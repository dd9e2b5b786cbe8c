import type { scaleUtc } from 'd3-scale'
import { digitsInThrees } from '@/shared/quantity/digits-in-threes'
import { roomForText } from './room-for-text'
import { MS_PER_DAY } from '@/shared/quantity/calendar'
import { zoneOffsetMs } from '@/shared/quantity/works-clock'

/** A tick: where along the axis it stands, and what it says. */
export type Tick = { at: number; text: string }

/** The part of a d3 scale that ticks need. */
type TickScale = {
  (value: number): number
  ticks(count?: number): number[]
  tickFormat(count?: number): (value: number) => string
}

/** Round ticks of a number axis; digits in threes, minus signs real. */
export function numberTicks(scale: TickScale, count = 5): Tick[] {
  const format = scale.tickFormat(count)
  return scale.ticks(count).map((value) => ({
    at: scale(value),
    text: digitsInThrees(format(value).replaceAll(',', '').replace('-', '−')),
  }))
}

const dayOf = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', timeZone: 'UTC' })
const monthOf = new Intl.DateTimeFormat('en-GB', { month: 'short', year: 'numeric', timeZone: 'UTC' })
const clockOf = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit', timeZone: 'UTC' })

/**
 * Round ticks of a time axis by the clock of a time zone, each said as shortly as its spacing allows.
 * An axis of days, which are the same everywhere, is left in UTC.
 */
export function timeTicks(scale: ReturnType<typeof scaleUtc<number>>, count = 6, timeZone = 'UTC'): Tick[] {
  const onClock = (instant: number): number => instant + zoneOffsetMs(instant, timeZone)
  const instantOn = (shown: number): number =>
    shown - zoneOffsetMs(shown - zoneOffsetMs(shown, timeZone), timeZone)
  // What the clock shows, told as if it were UTC, so that round times come out round.
  const times = scale
    .copy()
    .domain(scale.domain().map((end) => onClock(end.getTime())))
    .ticks(count)
  const gapMs = times.length > 1 ? times[1]!.getTime() - times[0]!.getTime() : MS_PER_DAY
  return apart(times.map((time) => ({ at: scale(instantOn(time.getTime())), text: timeText(time, gapMs) })))
}

/** Every tick, or every second, third …, so that what one says keeps clear of the next where letters are largest. */
function apart(ticks: readonly Tick[]): Tick[] {
  const gaps = ticks.slice(1).map(({ at }, position) => at - ticks[position]!.at)
  const gap = Math.min(...gaps)
  const room = roomForText(
    ticks.map(({ text }) => text),
    'wide',
  )
  const step = gap > 0 && gap < Infinity ? Math.ceil(room / gap) : 1
  return ticks.filter((_, position) => position % step === 0)
}

function timeText(time: Date, gapMs: number): string {
  if (gapMs >= 28 * MS_PER_DAY) return monthOf.format(time)
  const midnight = time.getTime() % MS_PER_DAY === 0
  return gapMs >= MS_PER_DAY || midnight ? dayOf.format(time) : clockOf.format(time)
}

/** "Radial clearance, mm"; without the unit when there is none. */
export const axisTitle = (label: string, unit?: string): string => (unit ? `${label}, ${unit}` : label)
