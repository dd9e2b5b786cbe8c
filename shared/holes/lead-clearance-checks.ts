import { clearanceShares, radialClearance, type RadialClearance } from '@/shared/physics/lead-clearance'
import type { FinishedHole } from '@/shared/physics/finished-hole'
import type { LeadEnvelope } from '@/shared/physics/lead-envelope'
import type { LeadHole } from '@/shared/plan/parameters/lead-holes'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import type { Margin, Measured } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'
import { tightest } from '@/shared/rules/parts'
import { holeOf, leadOf } from './joint-row'

export type Basis = 'worst-case' | 'statistical'

export interface ClearanceTerms {
  readonly barrelUm: number
  readonly min: GoverningRequirement
  readonly max: GoverningRequirement
  readonly flatGap: GoverningRequirement
  readonly outside: GoverningRequirement
  readonly windowGuard: GoverningRequirement
  readonly shareGuard: GoverningRequirement
  readonly entryGuard: GoverningRequirement
  readonly flatGuard: GoverningRequirement
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
export function clearanceOf(row: LeadHole, { barrelUm, min, max, sigmas }: ClearanceTerms): Clearance {
  const hole = holeOf(row, barrelUm)
  const lead = leadOf(row)
  const window = { minMm: min.value, maxMm: max.value }
  const { below, above } = clearanceShares(hole, lead, window, sigmas)
  return { hole, lead, radial: radialClearance(hole, lead), tight: below * 1e6, wide: above * 1e6 }
}

/** A margin, and what to say when it is the one that decides. */
interface Check {
  readonly margin: Margin
  readonly measured?: Measured
  readonly message: string
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
    message: `${inWords(clearance)}${deciding.message}`,
  }
}

function windowCheck({ radial, tight, wide }: Clearance, terms: ClearanceTerms): Check {
  const { min, max, outside, basis } = terms
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
      message: '',
    }
  }
  const guardBand = (terms.windowGuard.value / 100) * (max.value - min.value)
  const { minMm, maxMm } = radial.worstCase
  return {
    margin: tightest(
      { found: clean(minMm), limit: min.value, unit: 'mm', direction: 'at least', guardBand },
      { found: clean(maxMm), limit: max.value, unit: 'mm', direction: 'at most', guardBand },
    ),
    message: '',
  }
}

/** A lead off its place must still enter: what clearance is left beside the offset. */
function entryCheck(row: LeadHole, { radial }: Clearance, { basis, entryGuard }: ClearanceTerms): Check[] {
  if (row.leadPositionMm === undefined) return []
  const { minMm } = basis === 'worst-case' ? radial.worstCase : radial.rootSumSquare
  const found = clean(minMm - row.leadPositionMm)
  return [
    {
      margin: { found, limit: 0, unit: 'mm', direction: 'at least', guardBand: entryGuard.value },
      measured: { check: 'entry', offPlace: measure(row.leadPositionMm, 'mm') },
      message: `; a lead ${formatQuantity(row.leadPositionMm, 'mm')} off its place has ${formatQuantity(found, 'mm')} left to enter`,
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
      message: `; the hole is ${formatQuantity(found, 'mm')} wider than the flat lead is thick`,
    },
  ]
}

/** Sums of decimals carry binary rounding error; a tenth of a nanometre decides nothing. */
export const clean = (mm: number): number => Number(mm.toFixed(7))

const measuredOf = ({ radial: { worstCase, rootSumSquare }, tight, wide }: Clearance): Measured => ({
  minAtWorst: measure(clean(worstCase.minMm), 'mm'),
  maxAtWorst: measure(clean(worstCase.maxMm), 'mm'),
  minRootSumSquare: measure(clean(rootSumSquare.minMm), 'mm'),
  maxRootSumSquare: measure(clean(rootSumSquare.maxMm), 'mm'),
  outside: measure(tight + wide, 'per million'),
})

function inWords({ radial: { worstCase, rootSumSquare }, tight, wide }: Clearance): string {
  const range = (min: number, max: number): string =>
    `${formatQuantity(clean(min), '1')} to ${formatQuantity(clean(max), 'mm')}`
  return `radial clearance ${range(worstCase.minMm, worstCase.maxMm)} at worst, ${range(rootSumSquare.minMm, rootSumSquare.maxMm)} root-sum-square, ${shareInWords(tight + wide)} outside the window`
}

export const shareInWords = (perMillion: number): string => formatQuantity(perMillion, 'per million', 3)
