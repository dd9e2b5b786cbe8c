import { trendTowards, type LogTrend } from '@/shared/logs/log-trend'
import { guardBandOf } from '@/shared/logs/logged-window'
import type { BathQuestion } from './bath-questions'

/** One-sided: of a further analysis staying below the bound. */
export const TREND_CONFIDENCE = 0.95

/** One metal (or the sum) of one bath with its trend since the last exchange. */
export interface TrendedMetal {
  readonly question: BathQuestion
  readonly limit: number
  readonly trend: LogTrend
}

/** The trend of one constituent since the last exchange: none with too few analyses, one otherwise. */
export function trendOf(question: BathQuestion): TrendedMetal[] {
  const limit = question.window.most?.value
  if (limit === undefined) return []
  const trend = trendTowards(question.series, limit, {
    resetFall: guardBandOf(question.window),
    confidence: TREND_CONFIDENCE,
  })
  return trend ? [{ question, limit, trend }] : []
}
