import type { RecordOf } from '@/shared/records/record-kinds'

export type DefectSignalAnswer = RecordOf<'defect-signal-answer'>

/** What an answer names a signal by: the chart, its rule, and the sample that completed the pattern. */
export type DefectSignalName = Pick<DefectSignalAnswer, 'chart' | 'chartRule' | 'sample' | 'inspectedOn'>

/** The answer to a signal of a chart of defects, if one was recorded. */
export const answerToDefects = (
  answers: readonly DefectSignalAnswer[],
  { chart, chartRule, sample, inspectedOn }: DefectSignalName,
): DefectSignalAnswer | undefined =>
  answers.findLast(
    (answer) =>
      answer.chart === chart &&
      answer.chartRule === chartRule &&
      answer.sample === sample &&
      answer.inspectedOn === inspectedOn,
  )
