import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { SignatureBox, TextBox } from '@/app/forms/fields'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ItemState } from '@/shared/gate/item-status'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import { approveItem } from '@/app/forms/command-actions'

interface ApproveFormProps {
  code: string
  state: ItemState
  department: Department
  hasPassword: boolean
  /** What they can approve next. */
  next: ItemState | undefined
}

/** A department's signature on the item as it stands. */
export function ApproveForm({ code, state, department, hasPassword, next }: ApproveFormProps) {
  const name = DEPARTMENT_NAMES[department]
  return (
    <CommandForm
      action={approveItem}
      formKey={randomUUID()}
      hidden={{
        programme: code,
        item: state.item.definition.key,
        department,
        digest: state.digest,
        ...(next && { next: next.item.definition.key }),
      }}
      label={`Approve for ${name}`}
      className="form-narrow"
    >
      <TextBox name="comment" label="Comment" optional />
      <SignatureBox
        meaning={`You approve the item for ${name} as it stands, digest ${state.digest.slice(0, 12)}.`}
        hasPassword={hasPassword}
      />
      <div className="form-actions">
        <SubmitButton>Approve for {name}</SubmitButton>
        {next && (
          <SubmitButton name="intent" value="next" kind="quiet">
            Approve, then {next.item.definition.title}
          </SubmitButton>
        )}
      </div>
    </CommandForm>
  )
}
