'use server'
import { defectChartsAddress } from '@/app/addresses'
import { rowFromForm } from '@/app/forms/column-value'
import type { FormState } from '@/app/forms/form-state'
import { submit, text } from '@/app/forms/submit'
import { signalsAnswered } from '@/app/signals/ticked-signals'
import { ANSWER_COLUMNS } from '@/shared/records/kinds/answer-columns'

/** One answer to every ticked signal of a chart of defects: the cause, and what was done. */
export async function answerDefectSignals(_state: FormState, form: FormData): Promise<FormState> {
  const [programme, chart] = [text(form, 'programme'), text(form, 'chart')]
  const toInput = () => {
    const answer = rowFromForm(form, 'rows.0', ANSWER_COLUMNS)
    const rows = signalsAnswered(form).map(([chartRule = '', sample = '', inspectedOn = '']) => ({
      chart,
      chartRule,
      sample,
      inspectedOn,
      ...answer,
    }))
    return { programme, kind: 'defect-signal-answer', rows }
  }
  return submit(
    'add-record',
    form,
    toInput,
    () => `${defectChartsAddress(programme)}?chart=${encodeURIComponent(chart)}#signals`,
  )
}
