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
  /** Which signal is answered; asked for in the form when it is not given. */
  chartRule?: string
  readingAt?: string
  /** The kinds of signal that this log's chart gives, to choose from when it is not given. */
  kinds?: readonly { readonly value: string; readonly text: string }[]
}

/** What caused a signal, and what was done about it. */
export function AnswerForm({ view, log, summary, chartRule, readingAt, kinds = [] }: AnswerFormProps) {
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
          ...(chartRule !== undefined && { 'rows.0.chartRule': chartRule }),
          ...(readingAt !== undefined && { 'rows.0.readingAt': readingAt }),
          'rows.0.by': view.actor.name,
          'rows.0.on': view.state.facts.today,
        }}
        label={readingAt === undefined ? summary : `Answer to ${chartRule} at ${readingAt}`}
        className="form-narrow"
      >
        {readingAt === undefined && (
          <>
            <ChoiceBox name="rows.0.chartRule" label="What it was" choices={[OUTSIDE, ...kinds]} />
            <TextBox
              name="rows.0.readingAt"
              label="Reading, UTC"
              hint="The one that completed the pattern, or the first outside the window, as the finding names it: 2026-03-31T07:40:00Z."
              required
            />
          </>
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

const OUTSIDE = { value: OUTSIDE_WINDOW, text: 'Readings outside the specified window' }
