import type { ProducibilityLevel } from '@/shared/materials/hole-allowances'
import type { LandEditionKey } from '@/shared/materials/land-allowances'
import { ringExternalMin, ringInternalMin, ringUnsupportedMin } from '@/shared/plan/limits/lead-holes'
import { ringGuard } from '@/shared/plan/limits/specification-guards'
import { landEdition, producibilityLevel } from '@/shared/plan/parameters/lead-holes'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { optional } from '@/shared/rules/rule'

/** What a ring of copper is judged by, whether the hole is a row of the table or one of the board's files. */
export const ringReads = {
  level: producibilityLevel,
  edition: optional(landEdition),
  supported: ringExternalMin,
  unsupported: ringUnsupportedMin,
  internal: ringInternalMin,
  guard: ringGuard,
}

/** What the specification says of making holes and lands. */
export interface RingTerms {
  readonly barrelUm: number
  readonly level: ProducibilityLevel
  readonly editions: readonly LandEditionKey[]
  readonly supported: GoverningRequirement
  readonly unsupported: GoverningRequirement
  readonly internal: GoverningRequirement
  readonly guard: GoverningRequirement
}
