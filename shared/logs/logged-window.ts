import { processWindowGuard } from '@/shared/plan/limits/guard-bands'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { roundingTolerance } from '@/shared/quantity/rounding-tolerance'
import { formatQuantity } from '@/shared/quantity/format'
import type { Unit } from '@/shared/quantity/unit'
import { verdictOn, worstVerdict, type Margin, type Verdict } from '@/shared/rules/finding'
import { governingName } from '@/shared/rules/governing-source'

/** One side of a process window and the document that sets it. */
export interface Bound {
  readonly value: number
  readonly document: string
}
export interface ProcessWindow {
  readonly min?: Bound
  readonly max?: Bound
  readonly unit: Unit
  /** Of its width, or of its one limit, inside which a reading is only just good; the usual share where it is not said. */
  readonly guardShare?: number
}

export const boundBy = (governing: GoverningRequirement): Bound => ({
  value: governing.value,
  document: governingName(governing),
})

/** A window of so much to either side of a target. Binary rounding error is taken off, so that a typed limit counts as itself. */
export const windowAround = (
  target: number,
  tolerance: number,
  unit: Unit,
  document: string,
): ProcessWindow => ({
  min: { value: Number((target - tolerance).toPrecision(12)), document },
  max: { value: Number((target + tolerance).toPrecision(12)), document },
  unit,
})

/** The part common to two windows in the same unit: the higher of the lower bounds, the lower of the upper. */
export const bothWindows = (one: ProcessWindow, other: ProcessWindow): ProcessWindow => ({
  min: tighter(one.min, other.min, (a, b) => a > b),
  max: tighter(one.max, other.max, (a, b) => a < b),
  unit: one.unit,
  ...((one.guardShare ?? other.guardShare) !== undefined && {
    guardShare: one.guardShare ?? other.guardShare,
  }),
})
const tighter = (
  one: Bound | undefined,
  other: Bound | undefined,
  isTighter: (a: number, b: number) => boolean,
): Bound | undefined => {
  if (!one || !other) return one ?? other
  return isTighter(other.value, one.value) ? other : one
}

/** The same window with the guard share that rules in a programme. */
export const guarded = (window: ProcessWindow, guard: GoverningRequirement): ProcessWindow => ({
  ...window,
  guardShare: guard.value / 100,
})

/** Inside by less than this is marginal: a share of the window's width, or of its one limit. */
export function guardBandOf({
  min,
  max,
  guardShare = processWindowGuard.byDefault.value / 100,
}: ProcessWindow): number {
  if (min && max) return Math.abs(max.value - min.value) * guardShare
  return Math.abs((min ?? max)?.value ?? 0) * guardShare
}

/** Stretches of consecutive readings outside the window: index of the first and of the last of each. */
export function excursionsFrom(
  values: readonly number[],
  { min, max }: ProcessWindow,
): { first: number; last: number }[] {
  const low = min?.value ?? -Infinity
  const high = max?.value ?? Infinity
  const slackLow = roundingTolerance(low, low)
  const slackHigh = roundingTolerance(high, high)
  const found: { first: number; last: number }[] = []
  for (let index = 0; index < values.length; index++) {
    const value = values[index]!
    if (value >= low - slackLow && value <= high + slackHigh) continue
    const open = found[found.length - 1]
    if (open && open.last === index - 1) open.last = index
    else found.push({ first: index, last: index })
  }
  return found
}

/** "240 °C (DOC A) to 260 °C (DOC B)". */
export function windowInWords({ min, max, unit }: ProcessWindow): string {
  const worded = ({ value, document }: Bound): string => `${formatQuantity(value, unit)} (${document})`
  if (min && max) return `At least ${worded(min)} and at most ${worded(max)}.`
  if (min) return `At least ${worded(min)}.`
  return max ? `At most ${worded(max)}.` : 'No limit is set.'
}

/** The margin to whichever limit lies nearer, and the verdict against both. */
export function marginIn(
  window: ProcessWindow,
  found: number,
): { verdict: Verdict; margin: Margin | undefined } {
  const guardBand = guardBandOf(window)
  const { min, max, unit } = window
  const margins: Margin[] = []
  if (min) margins.push({ found, limit: min.value, unit, direction: 'at least', guardBand })
  if (max) margins.push({ found, limit: max.value, unit, direction: 'at most', guardBand })
  const marginValue = (margin: Margin): number =>
    margin.direction === 'at most' ? margin.limit - margin.found : margin.found - margin.limit
  const nearest = margins.reduce<Margin | undefined>(
    (near, next) => (near === undefined || marginValue(next) < marginValue(near) ? next : near),
    undefined,
  )
  return { verdict: worstVerdict(margins.map(verdictOn)), margin: nearest }
}
