'use client'
import { CommandForm, useFormState } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { SubmitButton } from '@/app/ui/submit-button'
import type { OptionAlternative } from '@/shared/gate/option-study'
import { AlternativeFields, type AskedParameter } from './alternative-fields'
import type { AnswerToCite } from './answers-for'
import { openStudy } from './actions'
import { countAsked, FEWEST, MAX } from './count-asked'

interface StudyFormProps {
  formKey: string
  programme: string
  item: string
  parameters: readonly AskedParameter[]
  /** Values as they stand, by parameter. */
  today: Readonly<Record<string, unknown>>
  /** Alternatives of an earlier study to begin with. */
  begin: readonly OptionAlternative[]
  title: string
  count: number
  answers: readonly AnswerToCite[]
}

/** The question, and a set of boxes for each alternative. */
export function StudyForm({ formKey, programme, item, ...rest }: StudyFormProps) {
  return (
    <CommandForm
      action={openStudy}
      formKey={formKey}
      hidden={{ programme, item }}
      label="The alternatives"
      className="form-stack"
    >
      <Fields {...rest} />
    </CommandForm>
  )
}

type FieldsProps = Omit<StudyFormProps, 'formKey' | 'programme' | 'item'>

function Fields({ parameters, today, begin, title, count, answers }: FieldsProps) {
  const { typed } = useFormState()
  const shown = countAsked(typed['count'], count)
  return (
    <>
      <input type="hidden" name="count" value={shown} />
      <div className="form-narrow">
        <TextBox
          name="title"
          label="The question"
          hint="Such as “Which finish for the brass pins of J1?”"
          maxLength={120}
          defaultValue={title}
          required
        />
      </div>
      <p className="field-hint">
        Every box starts with today’s value; only what you change counts, and a box left empty stays as today.
        An alternative in which nothing is changed stands for “as today”.
      </p>
      {Array.from({ length: shown }, (_, position) => (
        <AlternativeFields
          key={position}
          position={position}
          parameters={parameters}
          today={today}
          begin={begin[position]}
          answers={answers}
        />
      ))}
      <div className="form-actions">
        <SubmitButton name="intent" value="open">
          Lay them side by side
        </SubmitButton>
        {shown < MAX && (
          <SubmitButton name="intent" value="more" kind="quiet">
            One more alternative
          </SubmitButton>
        )}
        {shown > FEWEST && (
          <SubmitButton name="intent" value="fewer" kind="quiet">
            Without the last
          </SubmitButton>
        )}
      </div>
    </>
  )
}
