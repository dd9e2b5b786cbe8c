import { randomUUID } from 'node:crypto'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox, PickBox } from '@/app/forms/fields'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { dateAtWorks } from '@/lib/settings/works'
import type { ItemState } from '@/shared/gate/item-status'
import { refusal } from '@/shared/policy'
import { decideSetAside, proposeSetAside, restoreItem } from '@/app/forms/command-actions'

/** Leaving the item out of this programme: proposed with a reason, agreed by quality. */
export function TailoredOut({ view, state }: { view: ProgrammeView; state: ItemState }) {
  const { tailoredOut, definition } = state.item
  const hidden = { programme: view.code, item: definition.key }
  if (!tailoredOut) {
    if (refusal('propose-set-aside', view.actor)) return null
    return (
      <CommandForm
        action={proposeSetAside}
        formKey={randomUUID()}
        hidden={hidden}
        label="Propose as not applicable"
      >
        <AnsweredDisclosure summary="This item does not apply here">
          <div className="form-narrow">
            <LinesBox
              name="reason"
              label="Why it need not be settled"
              hint="Quality has to agree."
              rows={2}
              required
            />
            <SubmitButton kind="quiet">Propose as not applicable</SubmitButton>
          </div>
        </AnsweredDisclosure>
      </CommandForm>
    )
  }
  const mayDecide = !tailoredOut.agreed && !refusal('decide-set-aside', view.actor, tailoredOut)
  return (
    <Section id="set-aside" heading={tailoredOut.agreed ? 'Not applicable' : 'Proposed as not applicable'}>
      <p>
        {tailoredOut.proposedByName}: {tailoredOut.reason}
        {tailoredOut.agreed &&
          ` Agreed by ${tailoredOut.agreed.byName} on ${dateAtWorks(new Date(tailoredOut.agreed.at))}.`}
      </p>
      {mayDecide && (
        <CommandForm
          action={decideSetAside}
          formKey={randomUUID()}
          hidden={hidden}
          label="Decide"
          className="form-narrow"
        >
          <PickBox
            name="agree"
            label="Decision"
            choices={[
              { value: 'yes', text: 'Agree: it need not be settled' },
              { value: 'no', text: 'Refuse: it stays' },
            ]}
            required
          />
          <LinesBox name="comment" label="Comment" hint="Needed when you refuse." rows={2} />
          <SubmitButton>Decide</SubmitButton>
        </CommandForm>
      )}
      {!refusal('restore-item', view.actor) && (
        <CommandForm
          action={restoreItem}
          formKey={randomUUID()}
          hidden={hidden}
          label="Bring the item back"
          className="form-narrow"
        >
          <LinesBox name="reason" label="Why it has to be settled after all" rows={2} required />
          <SubmitButton kind="quiet">Bring the item back</SubmitButton>
        </CommandForm>
      )}
    </Section>
  )
}
