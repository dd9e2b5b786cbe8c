import { ResetNote } from '@/app/frame/reset-note'
import { Disclosure } from '@/app/ui/disclosure'
import { Section } from '@/app/ui/section'
import { Stamp, StampPlace } from '@/app/ui/stamp'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { ApprovalState, ItemState } from '@/shared/gate/standing'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { refusal } from '@/shared/policy'
import { ApproveForm } from './approve-form'
import { ChangedSince } from './changed-since'
import { Cover } from './cover'

interface ApprovalsProps {
  view: ProgrammeView
  state: ItemState
  hasPassword: boolean
}

/** Who has agreed to the item as it stands, who has not, and whose agreement lapsed through which change. */
export function Approvals({ view, state, hasPassword }: ApprovalsProps) {
  const asked = view.actor.departments
    .filter((department) =>
      state.approvals.some((approval) => approval.department === department && !approval.holds),
    )
    .map((department) => ({
      department,
      refused: refusal('approve-item', view.actor, { department, item: state, state: view.state }),
    }))
  const maySign = asked.filter(({ refused }) => refused === undefined)
  return (
    <Section
      id="approvals"
      heading="Approvals"
      lead="An approval covers the item as it stands and lapses by itself when anything it covers changes."
    >
      <div className="stamp-row">
        {state.approvals.map((approval) => (
          <ApprovalStamp key={approval.department} approval={approval} />
        ))}
      </div>
      <ChangedSince code={view.code} state={state} />
      <Disclosure
        summary={maySign.length > 0 ? 'What your signature covers' : 'What an approval covers today'}
        open={maySign.length > 0}
      >
        <Cover view={view} cover={state.cover} digest={state.digest} />
      </Disclosure>
      {asked
        .filter(({ refused }) => refused !== undefined)
        .map(({ department, refused }) => (
          <p key={department} className="field-hint">
            For {DEPARTMENT_NAMES[department].toLowerCase()}: {refused}
          </p>
        ))}
      {maySign.map(({ department }) => (
        <ApproveForm
          key={department}
          code={view.code}
          state={state}
          department={department}
          hasPassword={hasPassword}
        />
      ))}
    </Section>
  )
}

function ApprovalStamp({ approval: { department, approval, holds } }: { approval: ApprovalState }) {
  if (!approval) return <StampPlace department={department} wanted="not approved yet" />
  return (
    <Stamp
      department={department}
      meaning="Approved"
      name={approval.personName}
      at={approval.at}
      digest={approval.digest}
      note={<ResetNote personId={approval.personId} at={approval.at} />}
      state={holds ? 'stands' : 'lapsed'}
      because={holds ? undefined : 'What it covered has changed, see below.'}
    />
  )
}
