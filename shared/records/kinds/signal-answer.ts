import { textColumn } from '@/shared/columns/column'
import { recordKind } from '@/shared/records/record-kind'
import { ANSWER_COLUMNS } from './answer-columns'

/** What was found and done after a control chart signalled. */
export const signalAnswer = recordKind({
  key: 'signal-answer',
  label: 'answer to a chart signal',
  plural: 'Answers to chart signals',
  help: 'One row per signal answered: the log, the rule and the reading that completed the pattern, the cause found and what was done.',
  stage: 'control',
  departments: ['production', 'quality'],
  assemblies: null,
  teaches: true,
  columns: {
    log: textColumn({ label: 'Log', maxLength: 40, help: 'The code of the log.' }),
    chartRule: textColumn({
      label: 'Chart rule',
      maxLength: 40,
      help: 'As a file names it, such as nelson-1.',
      told: 'signal',
    }),
    readingAt: textColumn({
      label: 'Reading',
      maxLength: 30,
      help: 'The instant of the reading that completed the pattern, such as 2026-03-31T07:40:00Z.',
      told: 'instant',
    }),
    ...ANSWER_COLUMNS,
  },
  cautions: [],
  keptAt: 'machine',
})
