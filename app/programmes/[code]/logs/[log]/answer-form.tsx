import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, LinesBox, TextBox } from '@/app/forms/fields'
import { Disclosure } from '@/app/ui/disclosure'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { RECORD_KINDS } from '@/shared/records/record-kinds'
import { OUTSIDE_WINDOW } from '@/shared/records/signal-answers'
import { answerSignal } from '../actions'

interface AnswerFormProps {
  view: ProgrammeView
  log: string
  summary: string
  chartRule?: string
  /** Asked for in the form when it is not given. */
  readingAt?: string
  /** The answer is about readings outside the window, whose first one is named in the form. */
  outside?: boolean
}

/** What caused a signal, and what was done about it. */
export function AnswerForm({ view, log, summary, chartRule, readingAt, outside }: AnswerFormProps) {
  const { answer } = RECORD_KINDS['signal-answer'].columns
  return (
    <Disclosure summary={summary} printed={false}>
      <CommandForm
        action={answerSignal}
        formKey={randomUUID()}
        hidden={{
          programme: view.code,
          log,
          'rows.0.log': log,
          'rows.0.chartRule': chartRule ?? OUTSIDE_WINDOW,
          ...(readingAt !== undefined && { 'rows.0.readingAt': readingAt }),
          'rows.0.by': view.actor.name,
          'rows.0.on': view.state.facts.today,
        }}
        label={outside ? summary : `Answer to ${chartRule} at ${readingAt}`}
        className="form-narrow"
      >
        {outside && (
          <TextBox
            name="rows.0.readingAt"
            label="First reading outside, UTC"
            hint="As the finding names it, such as 2026-03-31T07:40:00Z."
            required
          />
        )}
        <ChoiceBox
          name="rows.0.answer"
          label={answer.label}
          choices={answer.options.map(({ value, label }) => ({ value, text: label }))}
        />
        <LinesBox name="rows.0.cause" label="Cause" rows={2} maxLength={400} required />
        <LinesBox
          name="rows.0.action"
          label="What was done, also about the boards soldered meanwhile"
          rows={2}
          maxLength={400}
          required
        />
        <SubmitButton>Record the answer</SubmitButton>
      </CommandForm>
    </Disclosure>
  )
}
