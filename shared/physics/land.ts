import type { LandEdition } from '@/shared/materials/land-allowances'
import type { ProducibilityLevel } from '@/shared/materials/hole-allowances'

interface LandQuestion {
  readonly hole: { readonly minMm: number; readonly maxMm: number }
  readonly level: ProducibilityLevel
  readonly edition: LandEdition
  /** The ring that must remain. */
  readonly ringMm: number
}

const base = ({ hole, level, edition }: Omit<LandQuestion, 'ringMm'>): number =>
  (edition.over === 'largest hole' ? hole.maxMm : hole.minMm) + edition.allowanceMm[level]

/**
 * The smallest land for a hole: hole + 2 · ring + fabrication allowance.
 * Units: mm, diameters. Source: IPC-2221B, section 9.1.1, or the edition named.
 */
export const minLandMm = (question: LandQuestion): number => base(question) + 2 * question.ringMm

/** The ring left by a land when the whole fabrication allowance is used up; negative when it breaks out. */
export const remainingRingMm = (landMm: number, question: Omit<LandQuestion, 'ringMm'>): number =>
  (landMm - base(question)) / 2
