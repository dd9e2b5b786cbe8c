import { signListAddress, whyAddress } from '@/app/addresses'
import { StampRow } from '@/app/frame/stamp-row'
import { Disclosure } from '@/app/ui/disclosure'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { ItemState } from '@/shared/gate/item-status'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { refusal } from '@/shared/policy'
import { ApproveForm } from './approve-form'
import { ChangedSince } from './changed-since'
import { SignedContent } from './signed-content'

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
      aside={
        maySign.length > 0 && (
          <a href={signListAddress(view.code, state.item.definition.stage)}>Sign several items at once</a>
        )
      }
      lead="An approval covers the item as it stands and lapses by itself when anything it covers changes."
    >
      <StampRow
        meaning="Approved"
        wanted="not approved yet"
        reader={view.actor}
        lapse={{ state: 'lapsed', because: 'What it covered has changed, see below.' }}
        signed={state.approvals.map(({ approval, ...rest }) => ({
          ...rest,
          signature: approval,
          coveredAt: approval ? whyAddress(view.code, { kind: 'approval', key: approval.id }) : undefined,
        }))}
      />
      <ChangedSince code={view.code} state={state} />
      <Disclosure
        summary={maySign.length > 0 ? 'What your signature covers' : 'What an approval covers today'}
        open={maySign.length > 0}
        printed={false}
      >
        <SignedContent view={view} signedContent={state.signedContent} digest={state.digest} />
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
