import { coverageMin, holeRiseMin, wettingTimeMax } from '@/shared/plan/limits/evaluation-solderability'
import type { TestMethodKey } from '@/shared/methods/test-methods'
import { platingConfidenceMin, platingCoverageMin } from '@/shared/plan/limits/evaluation-plating'
import type { ReadingLimits } from '@/shared/lot-tests/readings-summary'
import { governingRequirement, type GoverningRequirement, type Limit } from '@/shared/plan/requirement'
import { formatNumber } from '@/shared/quantity/format'
import type { Lot, LotTest } from '@/shared/records/lot'
import { PLATING_PLACES, type Deposit, type PlatingPlace } from '@/shared/methods/plating-thickness'
import { numbersOf } from '@/shared/records/readings'
import { platingReads, specificationFrom } from '@/shared/plating/plating-reads'
import { platingWindow, hasWindow } from '@/shared/plating/plating-window'
import { toleranceShown } from '@/shared/plating/tolerance-shown'
import type { Facts } from '@/shared/rules/facts'
import { readableOf, take, type Inputs } from '@/shared/rules/rule'

/** Readings that share a limit, as they are drawn against it. */
export interface DrawnReadings {
  readonly name: string
  readonly values: readonly number[]
  readonly limits: ReadingLimits
  /** Which document the limit rests on, and with which authority; absent where the specification's own values give it. */
  readonly from?: Pick<GoverningRequirement, 'authority' | 'document'>
  /** What the readings prove of the rest, against the lower limit. */
  readonly bound?: { readonly value: number; readonly name: string }
}

/** How the readings of a test's charted column are drawn with the limits of the specification. */
export type Drawn = (test: LotTest, lot: Lot, charted: string, facts: Facts) => DrawnReadings[]

/** All readings of the column against one limit in force. */
const against =
  (limit: Limit): Drawn =>
  ({ readings }, _lot, charted, { requirements }) => {
    const values = numbersOf(readings, charted)
    const { value, authority, document } = governingRequirement(limit, requirements)
    const limits = limit.direction === 'at most' ? { atMost: value } : { atLeast: value }
    return values.length > 0 ? [{ name: '', values, limits, from: { authority, document } }] : []
  }

/** Plating, place by place. */
const platingDrawn: Drawn = ({ readings, conditions }, lot, _charted, facts) => {
  const specification = specificationFrom(
    Object.fromEntries(
      Object.entries(platingReads).map(([name, read]) => [name, take(readableOf(read), facts)]),
    ) as unknown as Inputs<typeof platingReads>,
  )
  const share = governingRequirement(platingCoverageMin, facts.requirements).value
  const sure = governingRequirement(platingConfidenceMin, facts.requirements).value
  return (Object.keys(PLATING_PLACES) as PlatingPlace[]).flatMap((place) => {
    const bySpecimen = thicknessesAt(place, readings)
    const values = bySpecimen.flat()
    if (values.length === 0) return []
    const window = platingWindow({ lot, deposit: conditions['deposit'] as Deposit, place }, specification)
    const name = PLATING_PLACES[place].label
    if (!hasWindow(window)) return [{ name, values, limits: {} }]
    const { bound } = toleranceShown(
      bySpecimen,
      { side: 'lower', value: window.minUm, ofTwo: window.maxUm !== undefined },
      { coverage: share / 100, confidence: sure / 100 },
    )
    return [
      {
        name,
        values,
        limits: { atLeast: window.minUm, ...(window.maxUm !== undefined && { atMost: window.maxUm }) },
        ...(bound !== undefined && {
          bound: {
            value: bound,
            name: `${formatNumber(share)} % of places, ${formatNumber(sure)} % confident`,
          },
        }),
      },
    ]
  })
}

/** The readings of each specimen at a place. */
function thicknessesAt(place: PlatingPlace, { columns, count }: LotTest['readings']): number[][] {
  const bySpecimen = new Map<unknown, number[]>()
  for (let row = 0; row < count; row++) {
    const thickness = columns['thicknessUm']?.[row]
    if (columns['place']?.[row] !== place || typeof thickness !== 'number') continue
    const specimen = columns['specimen']?.[row]
    bySpecimen.set(specimen, [...(bySpecimen.get(specimen) ?? []), thickness])
  }
  return [...bySpecimen.values()]
}

/** How the readings of each method that measures something stand against a limit, by the method's key. */
export const DRAWN: Readonly<Partial<Record<TestMethodKey, Drawn>>> = {
  'rotary-dip': against(wettingTimeMax),
  'dip-and-look': against(coverageMin),
  'plated-hole-rise': against(holeRiseMin),
  'plating-thickness': platingDrawn,
}
