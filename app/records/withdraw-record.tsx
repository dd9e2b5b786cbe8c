import { randomUUID } from 'node:crypto'
import { withdrawRecord } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { PreviewedSubmit } from '@/app/forms/previewed-submit'
import { Disclosure } from '@/app/ui/disclosure'
import { SubmitButton } from '@/app/ui/submit-button'

interface WithdrawRecordProps {
  /** Names the programme, or what of the works, that keeps it. */
  of: Readonly<Record<string, string>>
  record: string
  /** It may ask first what would turn in the programmes of the works. */
  previewed?: boolean
}

/** Takes a record back, with the reason; the trail keeps it. */
export const WithdrawRecord = ({ of, record, previewed }: WithdrawRecordProps) => (
  <Disclosure summary="Withdraw" printed={false}>
    <CommandForm
      action={withdrawRecord}
      formKey={randomUUID()}
      hidden={{ ...of, record }}
      label="Withdraw this record"
      className="form-narrow"
    >
      <TextBox name="reason" label="Why it should not count" required />
      {previewed ? (
        <PreviewedSubmit kind="danger">Withdraw</PreviewedSubmit>
      ) : (
        <SubmitButton kind="danger">Withdraw</SubmitButton>
      )}
    </CommandForm>
  </Disclosure>
)
