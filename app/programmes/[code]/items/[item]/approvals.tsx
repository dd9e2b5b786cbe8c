import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { SignatureBox, TextBox } from '@/app/forms/fields'
import { Disclosure } from '@/app/ui/disclosure'
import { Section } from '@/app/ui/section'
import { Stamp, StampPlace } from '@/app/ui/stamp'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { coverDifference } from '@/shared/gate/cover-difference'
import { approvalRefusal } from '@/shared/gate/separation'
import type { ApprovalState, ItemState } from '@/shared/gate/standing'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import { approveItem } from './actions'
import { Cover } from './cover'

interface ApprovalsProps {
  view: ProgrammeView
  state: ItemState
  hasPassword: boolean
}

/** Who has agreed to the item as it stands, who has not, and whose agreement lapsed through which change. */
export function Approvals({ view, state, hasPassword }: ApprovalsProps) {
  return (
    <Section
      id="approvals"
      heading="Approvals"
      lead="An approval covers the item as it stands and lapses by itself when anything it covers changes."
    >
      <div className="stamp-row">
        {state.approvals.map((approval) => (
          <ApprovalStamp key={approval.department} approval={approval} cover={state.cover} />
        ))}
      </div>
      <Disclosure summary="What an approval covers today">
        <Cover cover={state.cover} digest={state.digest} />
      </Disclosure>
      {view.actor.departments.map((department) => (
        <ApproveForm
          key={department}
          view={view}
          state={state}
          department={department}
          hasPassword={hasPassword}
        />
      ))}
    </Section>
  )
}

function ApprovalStamp({
  approval: { department, approval, holds },
  cover,
}: {
  approval: ApprovalState
  cover: string
}) {
  if (!approval) return <StampPlace department={department} wanted="not approved yet" />
  const changed = holds ? [] : coverDifference(approval.cover, cover)
  return (
    <Stamp
      department={department}
      meaning="Approved"
      name={approval.personName}
      at={approval.at}
      digest={approval.digest}
      state={holds ? 'stands' : 'lapsed'}
      because={changed.length > 0 ? `Changed since: ${changed.join('; ')}.` : undefined}
    />
  )
}

function ApproveForm({ view, state, department, hasPassword }: ApprovalsProps & { department: Department }) {
  if (!state.item.definition.approvers.includes(department)) return null
  const refused = approvalRefusal(state, view.state, view.actor.personId, department)
  if (refused) return <p className="field-hint">{refused}</p>
  return (
    <CommandForm
      action={approveItem}
      formKey={randomUUID()}
      hidden={{ programme: view.code, item: state.item.definition.key, department, digest: state.digest }}
      label={`Approve for ${DEPARTMENT_NAMES[department]}`}
      className="form-narrow"
    >
      <TextBox name="comment" label="Comment" optional />
      <SignatureBox
        meaning={`You approve the item for ${DEPARTMENT_NAMES[department]} as it stands, digest ${state.digest.slice(0, 12)}.`}
        hasPassword={hasPassword}
      />
      <SubmitButton>Approve for {DEPARTMENT_NAMES[department]}</SubmitButton>
    </CommandForm>
  )
}
