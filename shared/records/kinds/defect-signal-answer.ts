import { choiceColumn, dateColumn, textColumn } from '@/shared/columns/column'
import { DEFECT_CHART_OPTIONS } from '@/shared/plan/parameters/defect-charts'
import { recordKind } from '@/shared/records/record-kind'
import { ANSWER_COLUMNS } from './answer-columns'

/** What was found and done after a chart of defects signalled. */
export const defectSignalAnswer = recordKind({
  key: 'defect-signal-answer',
  label: 'answer to a signal of a chart of defects',
  plural: 'Answers to signals of charts of defects',
  help: 'One row per signal answered: the chart, the rule and the sample that completed the pattern, the cause found and what was done.',
  stage: 'assessment',
  departments: ['production', 'quality'],
  assemblies: null,
  teaches: true,
  columns: {
    chart: choiceColumn({ label: 'Chart', options: DEFECT_CHART_OPTIONS }),
    chartRule: textColumn({
      label: 'Chart rule',
      maxLength: 40,
      help: 'As a file names it, such as nelson-1.',
      told: 'signal',
    }),
    sample: textColumn({
      label: 'Sample',
      maxLength: 80,
      help: 'The assembly, or the day where the assemblies of a day are one sample.',
    }),
    inspectedOn: dateColumn({ label: 'Inspected on' }),
    ...ANSWER_COLUMNS,
  },
  cautions: [],
})
