import { randomUUID } from 'node:crypto'
import type { ReactNode } from 'react'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, LinesBox } from '@/app/forms/fields'
import type { FormAction } from '@/app/forms/form-state'
import { SubmitButton } from '@/app/ui/submit-button'
import { ANSWER_COLUMNS } from '@/shared/records/kinds/answer-columns'

interface AnswerTickedProps {
  /** Who answers, and the date of the works. */
  by: string
  on: string
  action: FormAction
  hidden: Readonly<Record<string, string>>
  label: string
  /** The signals, those to be answered with a box to tick. */
  children: ReactNode
}

/** Signals to tick, and one answer to all that are ticked: what caused them, and what was done. */
export function AnswerTicked({ by, on, action, hidden, label, children }: AnswerTickedProps) {
  const { answer } = ANSWER_COLUMNS
  return (
    <CommandForm
      action={action}
      formKey={randomUUID()}
      hidden={{
        ...hidden,
        'rows.0.by': by,
        'rows.0.on': on,
      }}
      label={label}
      className="form-stack form-printed"
    >
      {children}
      <div className="form-narrow print-hidden">
        <h3>Answer those ticked</h3>
        <ChoiceBox
          name="rows.0.answer"
          label={answer.label}
          choices={answer.options.map(({ value, label: text }) => ({ value, text }))}
        />
        <LinesBox name="rows.0.cause" label="Cause" rows={2} maxLength={400} required />
        <LinesBox
          name="rows.0.action"
          label="What was done, also about what was made meanwhile"
          rows={2}
          maxLength={400}
          required
        />
        <SubmitButton>Record the answer</SubmitButton>
      </div>
    </CommandForm>
  )
}
