import { rulingUnder } from '@/shared/plan/edition-ruling'
import { TIP_ACCURACY_BY_EDITION } from '@/shared/plan/limits/control-hand'
import type { Ruling } from '@/shared/plan/requirement'

/** The accuracy asked for: the programme's layers over the edition chosen, else over the strictest. */
export const accuracyRuling = (
  strictest: Ruling,
  edition: keyof typeof TIP_ACCURACY_BY_EDITION | 'strictest' | undefined,
): Ruling =>
  edition === undefined || edition === 'strictest'
    ? strictest
    : rulingUnder(strictest, { ...TIP_ACCURACY_BY_EDITION[edition], authority: 'standard' })
