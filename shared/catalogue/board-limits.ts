import { maskWebMin, reliefCopperMax, reliefShareMax } from '@/shared/plan/limits/board-files'
import { maskWebGuard, reliefGuard } from '@/shared/plan/limits/specification-guards'
import type { Limit } from '@/shared/plan/requirement'

/**
 * Limits that only the files of a board are judged by, each with the item it is told beside. A programme states its own
 * of them as of any; no item rests on them, so that none of its signatures covers them.
 */
export const BOARD_LIMITS: readonly { readonly limit: Limit; readonly near: string }[] = [
  { limit: maskWebMin, near: 'conductors-and-spacings' },
  { limit: maskWebGuard, near: 'conductors-and-spacings' },
  { limit: reliefShareMax, near: 'holes-and-lands' },
  { limit: reliefCopperMax, near: 'holes-and-lands' },
  { limit: reliefGuard, near: 'holes-and-lands' },
]
