import { platingConfidenceLeast, platingCoverageLeast } from '@/shared/plan/limits/evaluation-plating'
import { coverageLeast, holeRiseLeast, wettingTimeMost } from '@/shared/plan/limits/evaluation-solderability'
import { rulingOn } from '@/shared/plan/requirement'
import { formatNumber } from '@/shared/quantity/format'
import type { Lot, LotTest } from '@/shared/records/lot'
import { PLATING_PLACES, type Deposit, type PlatingPlace } from '@/shared/methods/plating-thickness'
import { numbersOf } from '@/shared/records/readings'
import { platingReads, specificationFrom } from '@/shared/plating/plating-reads'
import { platingWindow } from '@/shared/plating/plating-window'
import { toleranceShown } from '@/shared/plating/tolerance-shown'
import type { Facts } from '@/shared/rules/facts'
import { readableOf, take, type Inputs } from '@/shared/rules/rule'

/** Readings that share a limit, as they are drawn against it. */
export interface DrawnReadings {
  readonly name: string
  readonly values: readonly number[]
  readonly limits: { readonly atLeast?: number; readonly atMost?: number }
  /** What the readings prove of the rest, against the lower limit. */
  readonly bound?: { readonly value: number; readonly name: string }
}

/** The readings of a test's charted column with the limits of the specification; plating place by place. */
export function readingsDrawn(test: LotTest, lot: Lot, charted: string, facts: Facts): DrawnReadings[] {
  if (test.method === 'plating-thickness') return platingDrawn(test, lot, facts)
  const values = numbersOf(test.readings, charted)
  return values.length > 0 ? [{ name: '', values, limits: limitsOf(test.method, facts) }] : []
}

function limitsOf(method: string, { requirements }: Facts): DrawnReadings['limits'] {
  switch (method) {
    case 'rotary-dip':
      return { atMost: rulingOn(wettingTimeMost, requirements).value }
    case 'dip-and-look':
      return { atLeast: rulingOn(coverageLeast, requirements).value }
    case 'plated-hole-rise':
      return { atLeast: rulingOn(holeRiseLeast, requirements).value }
    default:
      return {}
  }
}

function platingDrawn({ readings, conditions }: LotTest, lot: Lot, facts: Facts): DrawnReadings[] {
  const specification = specificationFrom(
    Object.fromEntries(
      Object.entries(platingReads).map(([name, read]) => [name, take(readableOf(read), facts)]),
    ) as unknown as Inputs<typeof platingReads>,
  )
  const share = rulingOn(platingCoverageLeast, facts.requirements).value
  const sure = rulingOn(platingConfidenceLeast, facts.requirements).value
  return (Object.keys(PLATING_PLACES) as PlatingPlace[]).flatMap((place) => {
    const values = thicknessesAt(place, readings)
    if (values.length === 0) return []
    const window = platingWindow({ lot, deposit: conditions['deposit'] as Deposit, place }, specification)
    const name = PLATING_PLACES[place].label
    if (typeof window === 'string') return [{ name, values, limits: {} }]
    const { bound } = toleranceShown(
      values,
      { side: 'lower', value: window.leastUm },
      { coverage: share / 100, confidence: sure / 100 },
    )
    return [
      {
        name,
        values,
        limits: { atLeast: window.leastUm, ...(window.mostUm !== undefined && { atMost: window.mostUm }) },
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

const thicknessesAt = (place: PlatingPlace, { columns, count }: LotTest['readings']): number[] =>
  Array.from({ length: count }, (_, row) => row).flatMap((row) => {
    const thickness = columns['thicknessUm']?.[row]
    return columns['place']?.[row] === place && typeof thickness === 'number' ? [thickness] : []
  })
