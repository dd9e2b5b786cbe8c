import { signListAddress, whyAddress } from '@/app/addresses'
import { StampRow } from '@/app/frame/stamp-row'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { ItemState } from '@/shared/gate/item-status'
import { approvableBy } from '@/shared/gate/sign-list'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import { refusal } from '@/shared/policy'
import { ApproveForm } from './approve-form'

interface SigningProps {
  view: ProgrammeView
  state: ItemState
  hasPassword: boolean
}

/** The signing box in the item's margin: who has agreed to it as it stands, who has not, and the form to sign. */
export function Signing({ view, state, hasPassword }: SigningProps) {
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
    <Section id="approvals" heading="Approvals">
      <StampRow
        meaning="Approved"
        wanted="not approved yet"
        reader={view.actor}
        lapse={{ state: 'lapsed', because: 'What it covered has changed.' }}
        signed={state.approvals.map(({ approval, ...rest }) => ({
          ...rest,
          signature: approval,
          coveredAt: approval ? whyAddress(view.code, { kind: 'approval', key: approval.id }) : undefined,
        }))}
      />
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
          next={nextToSign(view, state, department)}
        />
      ))}
      <p className="margin-links print-hidden">
        <a href="#covered">{maySign.length > 0 ? 'What your signature covers' : 'What an approval covers'}</a>
        {maySign.length > 0 && (
          <a href={signListAddress(view.code, state.item.definition.stage)}>Sign several items at once</a>
        )}
      </p>
    </Section>
  )
}

/** The item that this person can approve next for a department: the one after this, or else the first of all. */
function nextToSign(view: ProgrammeView, { item }: ItemState, department: Department): ItemState | undefined {
  const waiting = new Set(approvableBy(view.actor, department, view.state, view.judgement))
  const { items } = view.judgement
  const here = items.findIndex((entry) => entry.item.definition.key === item.definition.key)
  return [...items.slice(here + 1), ...items.slice(0, here)].find((entry) => waiting.has(entry))
}
