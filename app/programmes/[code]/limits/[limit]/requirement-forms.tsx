import { randomUUID } from 'node:crypto'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox } from '@/app/forms/fields'
import { SubmitButton } from '@/app/ui/submit-button'
import type { Limit } from '@/shared/plan/requirement'
import { DemandBoxes } from './demand-boxes'
import { stateRequirement, withdrawRequirement } from '@/app/forms/command-actions'

/** Lays one document's demand on the limit, beside what stands already. */
export function StateForm({ programme, limit }: { programme: string; limit: Limit }) {
  return (
    <CommandForm
      action={stateRequirement}
      formKey={randomUUID()}
      hidden={{ programme, limit: limit.key }}
      label="Add a requirement"
      className="form-narrow"
    >
      <DemandBoxes
        limit={limit}
        hint="Only then is a looser value let in; it is shown as looser wherever it rules."
      />
      <LinesBox name="reason" label="Why" rows={2} required />
      <SubmitButton>State the requirement</SubmitButton>
    </CommandForm>
  )
}

/** Takes a demand away again, with a reason. */
export function WithdrawForm({
  programme,
  requirement,
  document,
}: {
  programme: string
  requirement: string
  document: string
}) {
  return (
    <CommandForm
      action={withdrawRequirement}
      formKey={randomUUID()}
      hidden={{ programme, requirement }}
      label={`Withdraw ${document}`}
    >
      <AnsweredDisclosure summary="Withdraw">
        <div className="form-narrow">
          <LinesBox name="reason" label="Why it does not stand any more" rows={2} required />
          <SubmitButton kind="danger">Withdraw the requirement</SubmitButton>
        </div>
      </AnsweredDisclosure>
    </CommandForm>
  )
}
