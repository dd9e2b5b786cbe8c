import { randomUUID } from 'node:crypto'
import { closeSupplier } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox } from '@/app/forms/fields'
import { Disclosure } from '@/app/ui/disclosure'
import { SubmitButton } from '@/app/ui/submit-button'

/** Ends that lots are received from a supplier. */
export const CloseSupplier = ({ supplier }: { supplier: string }) => (
  <Disclosure summary="Close this supplier" printed={false}>
    <CommandForm
      action={closeSupplier}
      formKey={randomUUID()}
      hidden={{ supplier }}
      label="Close this supplier"
      className="form-narrow"
    >
      <LinesBox
        name="reason"
        label="Why"
        hint="Its lots in the store stay to be used; nothing more is received."
        rows={2}
        required
      />
      <SubmitButton kind="danger">Close the supplier</SubmitButton>
    </CommandForm>
  </Disclosure>
)
