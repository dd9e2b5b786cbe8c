'use client'
import { CommandForm, useFormState } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { SubmitButton } from '@/app/ui/submit-button'
import type { AlternativeContent } from '@/shared/gate/option-alternative'
import { letterOf } from '@/shared/gate/option-letter'
import { AlternativeFields } from './alternative-fields'
import type { AskedOfItems } from './asked-of-items'
import type { AnswerToCite } from './answers-for'
import { openStudy } from './actions'
import { countAsked, FEWEST, MAX } from './count-asked'

interface StudyFormProps {
  formKey: string
  programme: string
  items: readonly string[]
  asked: AskedOfItems
  /** Alternatives of an earlier study to begin with. */
  begin: readonly AlternativeContent[]
  title: string
  count: number
  answers: readonly AnswerToCite[]
}

/** The question, and a set of boxes for each alternative. */
export function StudyForm({ formKey, programme, items, ...rest }: StudyFormProps) {
  return (
    <CommandForm
      action={openStudy}
      formKey={formKey}
      hidden={{ programme, item: items[0] ?? '', items: items.join(' ') }}
      label="The alternatives"
      className="form-stack"
    >
      <Fields {...rest} />
    </CommandForm>
  )
}

type FieldsProps = Omit<StudyFormProps, 'formKey' | 'programme' | 'items'>

function Fields({ asked, begin, title, count, answers }: FieldsProps) {
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
        An alternative in which nothing is changed stands for “as today”. What it costs is not known until a
        figure is given here or an answer names one; open the study first and ask within it.
      </p>
      {Array.from({ length: shown }, (_, position) => (
        <AlternativeFields
          key={position}
          at={`alternatives.${position}`}
          letter={letterOf(position)}
          first={position === 0}
          asked={asked}
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
