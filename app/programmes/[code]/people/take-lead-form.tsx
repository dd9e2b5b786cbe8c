import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox } from '@/app/forms/fields'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import { canSignIn } from '@/lib/queries/people'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import { takeLead } from '@/app/forms/command-actions'

/** For quality, once the lead was disabled and nobody is left to hand the lead over. */
export async function TakeLeadForm({ view: { code, state, actor } }: { view: ProgrammeView }) {
  if (refusal('take-lead', actor) || (await canSignIn(state.programme.leadId))) return null
  return (
    <Section
      heading="Take the lead"
      lead="The programme’s lead can no longer sign in, so nobody can invite people or hand the lead over."
    >
      <CommandForm
        action={takeLead}
        formKey={randomUUID()}
        hidden={{ programme: code }}
        label="Take the lead"
        className="form-narrow"
      >
        <LinesBox name="reason" label="Reason" rows={2} maxLength={1000} required />
        <SubmitButton>Take the lead</SubmitButton>
      </CommandForm>
    </Section>
  )
}
