import { governingUnder } from '@/shared/plan/edition-requirement'
import { TIP_ACCURACY_BY_EDITION } from '@/shared/plan/limits/control-hand'
import type { GoverningRequirement } from '@/shared/plan/requirement'

/** The accuracy asked for: the programme's layers over the edition chosen, else over the strictest. */
export const accuracyRequirement = (
  strictest: GoverningRequirement,
  edition: keyof typeof TIP_ACCURACY_BY_EDITION | 'strictest' | undefined,
): GoverningRequirement =>
  edition === undefined || edition === 'strictest'
    ? strictest
    : governingUnder(strictest, { ...TIP_ACCURACY_BY_EDITION[edition], authority: 'standard' })
