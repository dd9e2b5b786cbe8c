'use client'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox } from '@/app/forms/fields'
import { AlternativeFields } from '@/app/programmes/[code]/options/new/alternative-fields'
import type { AnswerToCite } from '@/app/programmes/[code]/options/new/answers-for'
import type { AskedOfItems } from '@/app/programmes/[code]/options/new/asked-of-items'
import { SubmitButton } from '@/app/ui/submit-button'
import type { AlternativeContent } from '@/shared/gate/option-alternative'
import { addAlternative, changeAlternative } from './actions'

interface AlternativeFormProps {
  formKey: string
  programme: string
  study: number
  revision: number
  letter: string
  items: readonly string[]
  asked: AskedOfItems
  answers: readonly AnswerToCite[]
  /** The alternative that is changed; a new one where there is none. */
  begin: AlternativeContent | undefined
}

/** One alternative of an open study: a new one, or one that is said anew. */
export function AlternativeForm({
  formKey,
  items,
  asked,
  answers,
  letter,
  begin,
  ...rest
}: AlternativeFormProps) {
  return (
    <CommandForm
      action={begin ? changeAlternative : addAlternative}
      formKey={formKey}
      hidden={{ ...rest, items: items.join(' '), ...(begin && { name: begin.name }) }}
      label={begin ? 'Change the alternative' : 'Add an alternative'}
      className="form-stack"
    >
      <AlternativeFields
        at="alternative"
        letter={letter}
        first
        asked={asked}
        begin={begin}
        answers={answers}
        {...(begin && { fixedName: begin.name })}
      />
      <div className="form-narrow">
        <LinesBox name="reason" label="Why" hint="It stands beside the alternative." rows={2} required />
      </div>
      <div className="form-actions">
        <SubmitButton>{begin ? 'Change it' : 'Add it to the study'}</SubmitButton>
      </div>
    </CommandForm>
  )
}
