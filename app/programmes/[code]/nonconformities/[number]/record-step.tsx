import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox, PickBox, TextBox } from '@/app/forms/fields'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { STEP_KINDS, STEP_NAMES, type Nonconformity } from '@/shared/nonconformities/nonconformity'
import { correctedById, standingOf } from '@/shared/nonconformities/standing'
import { partRefusal, refusal } from '@/shared/policy'
import { recordStep } from '../actions'

/** The form of the next step; those that this person may not record, or that have nothing to check, are not offered. */
export function RecordStep({
  view,
  nonconformity: { number, owner, steps },
}: {
  view: ProgrammeView
  nonconformity: Nonconformity
}) {
  if (partRefusal('record-step', view.actor)) return null
  const subject = { number, owner, correctedById: correctedById(steps) }
  const standing = standingOf(steps)
  const refusals = STEP_KINDS.map((kind) => ({
    kind,
    refused: refusal('record-step', view.actor, { ...subject, kind }),
  }))
  const offered = refusals.filter(
    ({ kind, refused }) => !refused && (kind !== 'check' || standing === 'corrected'),
  )
  const ownCheck = standing === 'corrected' && refusals.find(({ kind }) => kind === 'check')?.refused
  if (offered.length === 0)
    return <p className="field-hint">{ownCheck || refusals.find(({ refused }) => refused)?.refused}</p>
  const mayCheck = offered.some(({ kind }) => kind === 'check')
  return (
    <Section heading="Record what was done">
      <CommandForm
        action={recordStep}
        formKey={randomUUID()}
        hidden={{ programme: view.code, nonconformity: number }}
        label="Record what was done"
        className="form-narrow print-hidden"
      >
        {ownCheck && <p className="field-hint">{ownCheck}</p>}
        <PickBox
          name="kind"
          label="What is recorded"
          choices={offered.map(({ kind }) => ({ value: kind, text: STEP_NAMES[kind] }))}
        />
        <LinesBox name="text" label="What was done or found" rows={3} required />
        <TextBox name="doneOn" type="date" label="On" defaultValue={view.state.facts.today} required />
        {mayCheck && (
          <PickBox
            name="helped"
            label="Did it help?"
            hint="For a check only."
            optional
            choices={[
              { value: 'yes', text: 'Yes' },
              { value: 'no', text: 'No' },
            ]}
          />
        )}
        <SubmitButton>Record it</SubmitButton>
      </CommandForm>
    </Section>
  )
}
