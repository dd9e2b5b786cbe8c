import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { PreviewedSubmit } from '@/app/forms/previewed-submit'
import { Disclosure } from '@/app/ui/disclosure'
import { refusal } from '@/shared/policy'
import type { LotTest } from '@/shared/records/lot'
import { withdrawLotTest } from '@/app/forms/command-actions'
import type { LotAt } from './lot-at'

/** Takes a test back, with the reason; the trail keeps it. */
export function WithdrawTest({ at, test }: { at: LotAt; test: LotTest }) {
  if (refusal('withdraw-lot-test', at.actor)) return null
  return (
    <Disclosure summary="Withdraw this test" printed={false}>
      <CommandForm
        action={withdrawLotTest}
        formKey={randomUUID()}
        hidden={{ ...at.names, test: test.id }}
        label="Withdraw this test"
        className="form-narrow"
      >
        <TextBox name="reason" label="Why" hint="The readings stay in the trail." required />
        <PreviewedSubmit kind="danger">Withdraw the test</PreviewedSubmit>
      </CommandForm>
    </Disclosure>
  )
}
