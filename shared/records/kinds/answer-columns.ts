import { choiceColumn, dateColumn, textColumn } from '@/shared/columns/column'

/** What is said in answer to a signal, whichever chart gave it. */
export const ANSWER_COLUMNS = {
  answer: choiceColumn({
    label: 'Kind of answer',
    options: [
      { value: 'cause-removed', label: 'Cause found and removed' },
      { value: 'cause-accepted', label: 'Cause found, a lasting change: the limits are to be set again' },
      { value: 'no-cause-found', label: 'Looked for, no cause found' },
    ],
  }),
  cause: textColumn({ label: 'Cause', maxLength: 400 }),
  action: textColumn({ label: 'What was done', maxLength: 400 }),
  by: textColumn({ label: 'By', maxLength: 80 }),
  on: dateColumn({ label: 'On' }),
}
