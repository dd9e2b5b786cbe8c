import { randomUUID } from 'node:crypto'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { costChangeNotice } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox } from '@/app/forms/fields'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { ChangeNotice } from '@/shared/gate/change-notice'
import { refusal } from '@/shared/policy'
import { CostBoxes } from '../cost-boxes'

/** Other costs for an open notice, once more is known of them. */
export function AmendCost({ view, notice }: { view: ProgrammeView; notice: ChangeNotice }) {
  if (refusal('cost-change-notice', view.actor)) return null
  return (
    <CommandForm
      action={costChangeNotice}
      formKey={randomUUID()}
      hidden={{ programme: view.code, notice: notice.number }}
      label="Change what the notice costs"
      className="form-narrow"
    >
      <AnsweredDisclosure summary="Change what it costs">
        <p className="field-hint">
          Departments that have answered answer again: theirs was to the costs of then.
        </p>
        <CostBoxes costPerBoard={notice.costPerBoard} costOnce={notice.costOnce} />
        <LinesBox name="reason" label="Why they change" rows={2} required />
        <SubmitButton kind="quiet">Change the costs</SubmitButton>
      </AnsweredDisclosure>
    </CommandForm>
  )
}
