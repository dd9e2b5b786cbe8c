'use server'
import { rowFromForm } from '@/app/forms/column-value'
import { formAction } from '@/app/forms/form-action'
import { text } from '@/app/forms/typed-text'
import { placeAddress } from '@/app/place-address'
import { signalsAnswered } from '@/app/signals/ticked-signals'
import type { DefectChartKey } from '@/shared/plan/parameters/defect-charts'
import { ANSWER_COLUMNS } from '@/shared/records/kinds/answer-columns'

/** One answer to every ticked signal of a machine’s log: the cause, and what was done. */
export const answerSignals = formAction('add-record', {
  own: {
    kind: () => 'signal-answer',
    rows: (form) =>
      signalsAnswered(form).map(([chartRule = '', readingAt = '']) => ({
        log: text(form, 'log'),
        chartRule,
        readingAt,
        ...rowFromForm(form, 'rows.0', ANSWER_COLUMNS),
      })),
  },
  then: (_done, form) =>
    placeAddress('', {
      kind: 'machine',
      machine: text(form, 'works.code'),
      log: text(form, 'log'),
      part: 'signals',
    }),
})

/** The same, for the signals of a chart of defects. */
export const answerDefectSignals = formAction('add-record', {
  own: {
    kind: () => 'defect-signal-answer',
    rows: (form) =>
      signalsAnswered(form).map(([chartRule = '', sample = '', inspectedOn = '']) => ({
        chart: text(form, 'chart'),
        chartRule,
        sample,
        inspectedOn,
        ...rowFromForm(form, 'rows.0', ANSWER_COLUMNS),
      })),
  },
  then: (_done, form) =>
    placeAddress(text(form, 'programme'), {
      kind: 'defect chart',
      chart: text(form, 'chart') as DefectChartKey,
    }),
})
