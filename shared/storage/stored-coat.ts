import {
  coatingLeftUm,
  coatingNeededUm,
  compoundUm,
  growthBand,
  hoursUntilLeft,
  type Coat,
} from '@/shared/physics/intermetallic'
import type { UnderTin } from '@/shared/materials/lead-finishes'
import { HOURS_PER_MONTH } from '@/shared/quantity/calendar'
import { formatQuantity } from '@/shared/quantity/format'
import type { About, Part, Remedy } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'
import { partOn } from '@/shared/rules/parts'
import { bisect, stepAbove, stepBelow } from '@/shared/rules/remedy'

const COATING_STEP_UM = 0.5

/** A tin coating in store, and where its thickness and its time are specified. */
export interface Stored {
  readonly subject: string
  readonly about?: About
  readonly coat: Coat
  readonly months: number
  /** What the tin grows compound with. */
  readonly under: UnderTin
  readonly thicknessAt: { readonly parameter: string; readonly row?: number; readonly column?: string }
  readonly monthsAt: string
}

/** What a stored coating is judged by, µm: what must be left and how much more is only just good, and the thickest to order. */
export interface StoredTerms {
  readonly minUm: number
  readonly guardUm: number
  readonly maxUm: number
}

/** What is left of a stored coating, judged by the fastest growth of the band. */
export function judgeStored(
  stored: Stored,
  temperatureC: number,
  { minUm, guardUm, maxUm }: StoredTerms,
): Part {
  const { subject, about, coat, months } = stored
  const band = growthBand(temperatureC)
  const hours = months * HOURS_PER_MONTH
  const left = (growth: number): number => coatingLeftUm(coat, compoundUm(growth, hours, coat.firstUm))
  const life = (growth: number): number => hoursUntilLeft(coat, minUm, growth) / HOURS_PER_MONTH
  const um = (value: number): string => formatQuantity(value, 'µm', 2)
  const part = partOn({
    subject,
    ...(about && { about }),
    measured: {
      ordered: measure(coat.coatingUm, 'µm'),
      inStore: measure(months, 'months'),
      leftBySlowest: measure(left(band.slowest), 'µm'),
      leftByFit: measure(left(band.fitted), 'µm'),
      lastsByFastest: measure(life(band.fastest), 'months'),
      lastsBySlowest: measure(life(band.slowest), 'months'),
    },
    found: `of ${formatQuantity(coat.coatingUm, 'µm')}, ${um(left(band.fastest))} to ${um(left(band.slowest))} are left after ${formatQuantity(months, 'months')} (by the fit in circulation ${um(left(band.fitted))}); ${um(minUm)} are left after ${lifeInWords(life(band.fastest))} to ${lifeInWords(life(band.slowest))}`,
    margin: {
      found: left(band.fastest),
      limit: minUm,
      unit: 'µm',
      direction: 'at least',
      guardBand: guardUm,
    },
  })
  if (part.verdict === 'meets') return part
  const remedy = remedyFor(stored, temperatureC, minUm + guardUm, maxUm)
  if (part.verdict === 'fails' && stored.under === 'iron-nickel') return boundOnly(part, remedy)
  return { ...part, remedy }
}

/**
 * Copper's law is the fastest that compound grows over iron-nickel: what lasts by it lasts, and what does
 * not is not shown to fail either.
 */
const boundOnly = (part: Part, remedy: Remedy): Part => ({
  ...part,
  verdict: 'undetermined',
  found: `${part.found}; that is copper’s law, and iron-nickel grows compound more slowly by a law whose constants are not published`,
  remedy: { ...remedy, message: `Test the leads after the store, or after ageing; or, ${remedy.message}` },
})

/** The slow end of the band runs to centuries, which no measurement backs. */
const MAX_MONTHS_TOLD = 600
const lifeInWords = (months: number): string =>
  months > MAX_MONTHS_TOLD ? 'more than 50 years' : formatQuantity(months, 'months', 2)

/** A thicker coating while the window allows one, else a shorter storage; the cooler store beside it. */
function remedyFor(stored: Stored, temperatureC: number, aimUm: number, maxUm: number): Remedy {
  const { subject, coat, months, thicknessAt, monthsAt } = stored
  const hours = months * HOURS_PER_MONTH
  const growth = growthBand(temperatureC).fastest
  const neededUm = stepAbove(coatingNeededUm(coat, aimUm, growth, hours), COATING_STEP_UM)
  const cooler = coolerStore(coat, hours, temperatureC, aimUm)
  const orCooler = cooler === undefined ? '' : `, or store at ${formatQuantity(cooler, '°C')} or below`
  if (neededUm <= maxUm) {
    const message = `${subject}: order at least ${formatQuantity(neededUm, 'µm')} of coating${orCooler}.`
    const { parameter, row, column } = thicknessAt
    if (row === undefined || column === undefined) return { message, parameter, value: neededUm }
    return { message, cell: { parameter, row, column, value: neededUm } }
  }
  const monthsOf = (each: Coat): number =>
    stepBelow(hoursUntilLeft(each, aimUm, growth) / HOURS_PER_MONTH, 0.5)
  const allowed = monthsOf(coat)
  if (!(allowed > 0)) {
    const thickest = Math.max(0, monthsOf({ ...coat, coatingUm: maxUm }))
    return {
      message: `${subject}: order ${formatQuantity(maxUm, 'µm')} of coating and store at most ${formatQuantity(thickest, 'months')} at this temperature${orCooler}.`,
    }
  }
  return {
    message: `${subject}: store at most ${formatQuantity(allowed, 'months')} at this temperature${orCooler}; no coating inside the window would last.`,
    parameter: monthsAt,
    value: allowed,
  }
}

/** The warmest store, whole degrees, in which the coating lasts; undefined when none above freezing does. */
function coolerStore(coat: Coat, hours: number, temperatureC: number, aimUm: number): number | undefined {
  const lasts = (degreesC: number): boolean =>
    coatingLeftUm(coat, compoundUm(growthBand(degreesC).fastest, hours, coat.firstUm)) >= aimUm
  const warmest = bisect({ from: temperatureC, to: 0, meets: lasts, tolerance: 0.1 })
  return warmest === undefined ? undefined : stepBelow(warmest, 1)
}
