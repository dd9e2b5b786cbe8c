'use client'
import { useFormState } from '@/app/forms/command-form'
import { TableEditor } from '@/app/forms/table-editor'
import { answerColumns } from '@/shared/cost/cost-line'

interface AnswerAmountsProps {
  /** Of the study it was asked in; none where it was asked outside any. */
  alternatives: readonly string[]
  wanted: boolean
}

/** Several amounts in one answer: a row each. */
export function AnswerAmounts({ alternatives, wanted }: AnswerAmountsProps) {
  const { fields } = useFormState()
  return (
    <fieldset className="field field-fieldset">
      <legend className="field-label">
        Amounts and lead times{!wanted && <span className="field-optional"> (optional)</span>}
      </legend>
      <p className="field-hint">
        A row for each: a figure such as 0.42, or a range such as 120 to 150, in the firm’s currency without a
        sign; a lead time in days. 0 if it costs nothing; left empty, the amount is not known yet.
      </p>
      {fields['amounts'] && <p className="field-error">{fields['amounts']}</p>}
      <TableEditor
        name="amounts"
        caption="Amounts and lead times"
        columns={answerColumns(alternatives)}
        rows={[]}
        maxRows={40}
      />
    </fieldset>
  )
}
