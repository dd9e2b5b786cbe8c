import { trendTowards, type LogTrend } from '@/shared/logs/log-trend'
import { guardBandOf } from '@/shared/logs/logged-window'
import type { BathQuestion } from './bath-questions'

/** One metal (or the sum) of one bath with its trend since the last exchange. */
export interface TrendedMetal {
  readonly question: BathQuestion
  readonly limit: number
  readonly trend: LogTrend
}

/**
 * The trend of one constituent since the last exchange: none with too few analyses, one otherwise.
 * `confidence`: one-sided, of a further analysis staying below the bound, between 0 and 1.
 */
export function trendOf(question: BathQuestion, confidence: number): TrendedMetal[] {
  const limit = question.window.max?.value
  if (limit === undefined) return []
  const trend = trendTowards(question.series, limit, {
    resetFall: guardBandOf(question.window),
    confidence,
  })
  return trend ? [{ question, limit, trend }] : []
}
