import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox } from '@/app/forms/fields'
import type { FormAction } from '@/app/forms/form-state'
import { Disclosure } from '@/app/ui/disclosure'
import { SubmitButton } from '@/app/ui/submit-button'

interface CloseFormProps {
  /** "line", "machine", "supplier": what is closed, and the field that names it. */
  what: 'line' | 'machine' | 'supplier'
  code: string
  action: FormAction
  hint?: string
}

/** Ends the use of something of the works; what was recorded of it stays. */
export const CloseForm = ({ what, code, action, hint }: CloseFormProps) => (
  <Disclosure summary={`Close this ${what}`} printed={false}>
    <CommandForm
      action={action}
      formKey={randomUUID()}
      hidden={{ [what]: code }}
      label={`Close the ${what}`}
      className="form-narrow"
    >
      <LinesBox name="reason" label="Reason" hint={hint} rows={2} maxLength={1000} required />
      <SubmitButton kind="danger">Close the {what}</SubmitButton>
    </CommandForm>
  </Disclosure>
)
