import { holeOf } from '@/shared/holes/joint-row'
import type { RingTerms } from '@/shared/holes/ring-terms'
import { LAND_EDITIONS } from '@/shared/materials/land-allowances'
import { minLandMm, remainingRingMm } from '@/shared/physics/land'
import type { LeadHole } from '@/shared/plan/parameters/lead-holes'

/** What is left of a ring once the hole is as large, and the making as far off, as is allowed; mm. */
export interface RingLeft {
  readonly leftMm: number
  readonly limitMm: number
  /** The least diameter of a centred land that would meet, guard band included. */
  readonly landMm: number
}

/** The land that would have this ring all round the hole of the files. */
const landRound = (row: LeadHole, ringMm: number): number => row.holeMm + 2 * ringMm

/** On an outer layer, by the edition that leaves least. */
export function outerRingLeft(row: LeadHole, ringMm: number, terms: RingTerms): RingLeft {
  const hole = holeOf(row, terms.barrelUm)
  const limitMm = (row.plated ? terms.supported : terms.unsupported).value
  return terms.editions
    .map((key) => {
      const question = { hole, level: terms.level, edition: LAND_EDITIONS[key] }
      return {
        leftMm: remainingRingMm(landRound(row, ringMm), question),
        limitMm,
        landMm: minLandMm({ ...question, ringMm: limitMm + terms.guard.value }),
      }
    })
    .reduce((least, other) => (other.leftMm < least.leftMm ? other : least))
}

/** On an inner layer, from the drilled hole and with the allowance of the document whose ring it is. */
export function innerRingLeft(row: LeadHole, ringMm: number, terms: RingTerms): RingLeft {
  const { drillMm } = holeOf(row, terms.barrelUm)
  const allowanceMm = LAND_EDITIONS['ipc-2221'].allowanceMm[terms.level]
  const limitMm = terms.internal.value
  return {
    leftMm: (landRound(row, ringMm) - drillMm - allowanceMm) / 2,
    limitMm,
    landMm: drillMm + allowanceMm + 2 * (limitMm + terms.guard.value),
  }
}
