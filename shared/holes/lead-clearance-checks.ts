import { clearanceShares, radialClearance, type RadialClearance } from '@/shared/physics/lead-clearance'
import type { FinishedHole } from '@/shared/physics/finished-hole'
import type { LeadEnvelope } from '@/shared/physics/lead-envelope'
import type { LeadHole } from '@/shared/plan/parameters/lead-holes'
import type { Ruling } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import type { Margin, Measured } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'
import { tightest } from '@/shared/rules/parts'
import { holeOf, leadOf } from './joint-row'

export type Basis = 'worst-case' | 'statistical'

export interface ClearanceTerms {
  readonly wallUm: number
  readonly least: Ruling
  readonly most: Ruling
  readonly flatGap: Ruling
  readonly outside: Ruling
  readonly windowGuard: Ruling
  readonly shareGuard: Ruling
  readonly entryGuard: Ruling
  readonly flatGuard: Ruling
  readonly basis: Basis
  readonly sigmas: number
}

/** One row's clearance, every way it is looked at. */
export interface Clearance {
  readonly hole: FinishedHole
  readonly lead: LeadEnvelope
  readonly radial: RadialClearance
  /** Per million, too tight and too wide. */
  readonly tight: number
  readonly wide: number
}

/** Throws RangeError when the row's numbers contradict each other. */
export function clearanceOf(row: LeadHole, { wallUm, least, most, sigmas }: ClearanceTerms): Clearance {
  const hole = holeOf(row, wallUm)
  const lead = leadOf(row)
  const window = { leastMm: least.value, mostMm: most.value }
  const { below, above } = clearanceShares(hole, lead, window, sigmas)
  return { hole, lead, radial: radialClearance(hole, lead), tight: below * 1e6, wide: above * 1e6 }
}

/** A margin, and what to say when it is the one that decides. */
interface Check {
  readonly margin: Margin
  readonly measured?: Measured
  readonly says: string
}

/** The check with the least room, and the row's clearance in words. */
export function decidingCheck(row: LeadHole, clearance: Clearance, terms: ClearanceTerms): Check {
  const basic = windowCheck(clearance, terms)
  const others = [...entryCheck(row, clearance, terms), ...flatCheck(row, clearance, terms)]
  const margin = tightest(basic.margin, ...others.map((check) => check.margin))
  const deciding = others.find((check) => check.margin === margin) ?? basic
  return {
    margin,
    measured: { ...measuredOf(clearance), ...deciding.measured },
    says: `${inWords(clearance)}${deciding.says}`,
  }
}

function windowCheck({ radial, tight, wide }: Clearance, terms: ClearanceTerms): Check {
  const { least, most, outside, basis } = terms
  if (basis === 'statistical') {
    const guardBand = (terms.shareGuard.value / 100) * outside.value
    return {
      margin: {
        found: tight + wide,
        limit: outside.value,
        unit: 'per million',
        direction: 'at most',
        guardBand,
      },
      says: '',
    }
  }
  const guardBand = (terms.windowGuard.value / 100) * (most.value - least.value)
  const { leastMm, mostMm } = radial.worstCase
  return {
    margin: tightest(
      { found: clean(leastMm), limit: least.value, unit: 'mm', direction: 'at least', guardBand },
      { found: clean(mostMm), limit: most.value, unit: 'mm', direction: 'at most', guardBand },
    ),
    says: '',
  }
}

/** A lead off its place must still enter: what clearance is left beside the offset. */
function entryCheck(row: LeadHole, { radial }: Clearance, { basis, entryGuard }: ClearanceTerms): Check[] {
  if (row.leadPositionMm === undefined) return []
  const { leastMm } = basis === 'worst-case' ? radial.worstCase : radial.rootSumSquare
  const found = clean(leastMm - row.leadPositionMm)
  return [
    {
      margin: { found, limit: 0, unit: 'mm', direction: 'at least', guardBand: entryGuard.value },
      measured: { check: 'entry', offPlace: measure(row.leadPositionMm, 'mm') },
      says: `; a lead ${formatQuantity(row.leadPositionMm, 'mm')} off its place has ${formatQuantity(found, 'mm')} left to enter`,
    },
  ]
}

function flatCheck(row: LeadHole, { hole }: Clearance, { flatGap, flatGuard }: ClearanceTerms): Check[] {
  if (row.leadShape !== 'flat' || row.leadThicknessMm === undefined) return []
  const found = clean(hole.nominalMm - row.leadThicknessMm)
  const guardBand = (flatGuard.value / 100) * flatGap.value
  return [
    {
      margin: { found, limit: flatGap.value, unit: 'mm', direction: 'at most', guardBand },
      measured: { check: 'flat lead' },
      says: `; the hole is ${formatQuantity(found, 'mm')} wider than the flat lead is thick`,
    },
  ]
}

/** Sums of decimals carry binary dust; a tenth of a nanometre decides nothing. */
export const clean = (mm: number): number => Number(mm.toFixed(7))

const measuredOf = ({ radial: { worstCase, rootSumSquare }, tight, wide }: Clearance): Measured => ({
  leastAtWorst: measure(clean(worstCase.leastMm), 'mm'),
  mostAtWorst: measure(clean(worstCase.mostMm), 'mm'),
  leastRootSumSquare: measure(clean(rootSumSquare.leastMm), 'mm'),
  mostRootSumSquare: measure(clean(rootSumSquare.mostMm), 'mm'),
  outside: measure(tight + wide, 'per million'),
})

function inWords({ radial: { worstCase, rootSumSquare }, tight, wide }: Clearance): string {
  const range = (least: number, most: number): string =>
    `${formatQuantity(clean(least), '1')} to ${formatQuantity(clean(most), 'mm')}`
  return `radial clearance ${range(worstCase.leastMm, worstCase.mostMm)} at worst, ${range(rootSumSquare.leastMm, rootSumSquare.mostMm)} root-sum-square, ${shareInWords(tight + wide)} outside the window`
}

/** Per million; tails beyond any real process are told as such, not to the last power of ten. */
export const shareInWords = (perMillion: number): string =>
  perMillion > 0 && perMillion < 0.001
    ? 'under 0.001 per million'
    : formatQuantity(perMillion, 'per million', 3)
