import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox, SignatureBox } from '@/app/forms/fields'
import { Disclosure } from '@/app/ui/disclosure'
import { SubmitButton } from '@/app/ui/submit-button'
import { retireLesson } from '@/app/forms/command-actions'

/** Ends an accepted lesson that turned out wrong, or that the standard plan has meanwhile; signed by quality. */
export function RetireForm({
  code,
  lesson,
  hasPassword,
}: {
  code: string
  lesson: number
  hasPassword: boolean
}) {
  return (
    <Disclosure summary="Retire this lesson" printed={false}>
      <CommandForm
        action={retireLesson}
        formKey={randomUUID()}
        hidden={{ programme: code, lesson }}
        label={`Retire lesson ${lesson}`}
        className="form-narrow"
      >
        <p className="field-hint">
          Programmes opened from now on start without it. Those that have it keep it, and may set it aside
          with a reason of their own.
        </p>
        <LinesBox name="reason" label="Reason" maxLength={1000} required />
        <SignatureBox
          meaning="You retire the lesson for quality; it stands in this programme’s trail."
          hasPassword={hasPassword}
        />
        <SubmitButton>Retire it</SubmitButton>
      </CommandForm>
    </Disclosure>
  )
}
