import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox, PickBox, SignatureBox } from '@/app/forms/fields'
import { SubmitButton } from '@/app/ui/submit-button'
import { decideLesson } from '@/app/forms/command-actions'

/** Quality's decision on a lesson, signed. */
export function DecisionForm({
  code,
  lesson,
  hasPassword,
}: {
  code: string
  lesson: number
  hasPassword: boolean
}) {
  return (
    <CommandForm
      action={decideLesson}
      formKey={randomUUID()}
      hidden={{ programme: code, lesson }}
      label={`Decide on lesson ${lesson}`}
      className="form-narrow"
    >
      <PickBox
        name="accept"
        label="Decision of quality"
        choices={[
          { value: 'yes', text: 'Accept: programmes opened from now on start with it' },
          { value: 'no', text: 'Decline: nothing changes' },
        ]}
        required
      />
      <LinesBox name="reason" label="Reason" maxLength={1000} required />
      <SignatureBox
        meaning="You sign the decision for quality; it stands in this programme’s trail."
        hasPassword={hasPassword}
      />
      <SubmitButton kind="primary">Sign the decision</SubmitButton>
    </CommandForm>
  )
}
