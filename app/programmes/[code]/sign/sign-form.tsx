import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { SignatureBox, TextBox } from '@/app/forms/fields'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { SignList, ToSign } from '@/shared/gate/sign-list'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import { approveItems } from './actions'
import { ItemToSign } from './item-to-sign'
import { TickConfirmed } from './tick-confirmed'

interface SignFormProps {
  view: ProgrammeView
  list: SignList
  department: Department
  hasPassword: boolean
}

/** The items that can be signed, each with a tick, and one signature over those ticked. */
export function SignForm({ view, list: { stage, toSign }, department, hasPassword }: SignFormProps) {
  const name = DEPARTMENT_NAMES[department]
  const confirmed = toSign.filter(({ confirms }) => confirms)
  return (
    <CommandForm
      action={approveItems}
      formKey={randomUUID()}
      hidden={{ programme: view.code, department, stage, seen: view.head.seq }}
      label={`Approve for ${name}`}
    >
      {confirmed.length > 0 && (
        <>
          <h3>To be confirmed: in substance as you approved them</h3>
          {confirmed.length > 1 && <TickConfirmed count={confirmed.length} />}
          <Items view={view} entries={confirmed} />
        </>
      )}
      {toSign.length > confirmed.length && (
        <>
          {confirmed.length > 0 && <h3>To be approved</h3>}
          <Items view={view} entries={toSign.filter(({ confirms }) => !confirms)} />
        </>
      )}
      <div className="form-narrow form-stack">
        <TextBox name="comment" label="Comment" optional />
        <SignatureBox
          meaning={`You approve each ticked item for ${name} as it stands above, by its digest. Each is recorded by itself.`}
          hasPassword={hasPassword}
        />
        <SubmitButton>Sign the ticked items for {name}</SubmitButton>
      </div>
    </CommandForm>
  )
}

const Items = ({ view, entries }: { view: ProgrammeView; entries: readonly ToSign[] }) => (
  <ul className="sign-items">
    {entries.map((entry) => (
      <ItemToSign key={entry.item.item.definition.key} view={view} entry={entry} />
    ))}
  </ul>
)
