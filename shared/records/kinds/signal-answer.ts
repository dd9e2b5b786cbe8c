import { choiceColumn, dateColumn, textColumn } from '@/shared/plan/column'
import { recordKind } from '@/shared/records/record-kind'

/** What was found and done after a control chart signalled. */
export const signalAnswer = recordKind({
  key: 'signal-answer',
  label: 'answer to a chart signal',
  plural: 'Answers to chart signals',
  help: 'One row a signal answered: the log, the rule and the reading that completed the pattern, the cause found and what was done.',
  stage: 'control',
  departments: ['production', 'quality'],
  columns: {
    log: textColumn({ label: 'Log', maxLength: 40, help: 'The code of the log.' }),
    chartRule: textColumn({
      label: 'Chart rule',
      maxLength: 40,
      help: 'As the chart names it, such as nelson-1.',
    }),
    readingAt: textColumn({
      label: 'Reading',
      maxLength: 30,
      help: 'The instant of the reading that completed the pattern, such as 2026-03-31T07:40:00Z.',
    }),
    answer: choiceColumn({
      label: 'Kind of answer',
      options: [
        { value: 'cause-removed', label: 'Cause found and removed' },
        { value: 'cause-accepted', label: 'Cause found, a lasting change: the limits are to be set anew' },
        { value: 'no-cause-found', label: 'Looked for, no cause found' },
      ],
    }),
    cause: textColumn({ label: 'Cause', maxLength: 400 }),
    action: textColumn({ label: 'What was done', maxLength: 400 }),
    by: textColumn({ label: 'By', maxLength: 80 }),
    on: dateColumn({ label: 'On' }),
  },
  cautions: [],
})
