import {
  coatingLeftUm,
  coatingNeededUm,
  compoundUm,
  hoursUntilLeft,
  HOURS_PER_MONTH,
  type Coat,
  type GrowthBand,
} from '@/shared/physics/intermetallic'
import { formatQuantity } from '@/shared/quantity/format'
import type { Part, Remedy } from '@/shared/rules/finding'
import { partOn } from '@/shared/rules/parts'
import { stepBelow, stepAbove, type CellRemedy } from '@/shared/rules/remedy'

/** Less than this above the least is marginal, µm. */
const GUARD_UM = 0.25
const COATING_STEP_UM = 0.5

/** A tin coating in store, and where its thickness and its time are specified. */
export interface Stored {
  readonly subject: string
  readonly coat: Coat
  readonly months: number
  readonly overNickel: boolean
  readonly thicknessAt: { readonly parameter: string; readonly row?: number; readonly column?: string }
  readonly monthsAt: string
}

/** What is left of a stored coating, judged by the fastest growth of the band. */
export function judgeStored(stored: Stored, band: GrowthBand, leastUm: number, mostUm: number): Part {
  const { subject, coat, months } = stored
  const hours = months * HOURS_PER_MONTH
  const left = (growth: number): number => coatingLeftUm(coat, compoundUm(growth, hours, coat.firstUm))
  const life = (growth: number): number => hoursUntilLeft(coat, leastUm, growth) / HOURS_PER_MONTH
  const span = (low: number, high: number, unit: 'µm' | 'months'): string =>
    `${formatQuantity(low, '1', 2)} to ${formatQuantity(high, unit, 2)}`
  const part = partOn({
    subject,
    found: `of ${formatQuantity(coat.coatingUm, 'µm')}, ${span(left(band.fastest), left(band.slowest), 'µm')} are left after ${formatQuantity(months, 'months')} (fit ${formatQuantity(left(band.fitted), 'µm', 2)}); ${formatQuantity(leastUm, 'µm')} are left after ${span(life(band.fastest), life(band.slowest), 'months')}`,
    margin: {
      found: left(band.fastest),
      limit: leastUm,
      unit: 'µm',
      direction: 'at least',
      guardBand: GUARD_UM,
    },
  })
  if (part.verdict === 'meets') return part
  return { ...part, remedy: remedyFor(stored, band.fastest, leastUm + GUARD_UM, mostUm) }
}

/** A thicker coating while the window allows one, else a shorter storage. */
function remedyFor(stored: Stored, growth: number, aimUm: number, mostUm: number): Remedy {
  const { subject, coat, months, thicknessAt, monthsAt } = stored
  const neededUm = stepAbove(coatingNeededUm(coat, aimUm, growth, months * HOURS_PER_MONTH), COATING_STEP_UM)
  if (neededUm <= mostUm) {
    const says = `${subject}: order at least ${formatQuantity(neededUm, 'µm')} of coating, or store cooler or for less time.`
    const { parameter, row, column } = thicknessAt
    if (row === undefined || column === undefined) return { says, parameter, value: neededUm }
    const inTable: CellRemedy = { says, cell: { parameter, row, column, value: neededUm } }
    return inTable
  }
  const allowed = stepBelow(hoursUntilLeft(coat, aimUm, growth) / HOURS_PER_MONTH, 0.5)
  return {
    says: `${subject}: store at most ${formatQuantity(allowed, 'months')} at this temperature, or cooler; no coating inside the window would last.`,
    parameter: monthsAt,
    value: allowed,
  }
}
