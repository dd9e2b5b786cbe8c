import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { PreviewedSubmit } from '@/app/forms/previewed-submit'
import { TableEditor } from '@/app/forms/table-editor'
import type { Lot } from '@/shared/records/lot'
import type { TestMethod } from '@/shared/methods/test-method'
import { TestFacts } from './test-facts'
import type { LotAt } from './lot-at'

/** Enough to type a usual sample without scripts. */
const BLANK_ROWS = Array.from({ length: 11 }, () => ({}))
const MAX_TYPED = 500

interface TypedTestProps {
  at: LotAt
  lot: Lot
  method: TestMethod
  /** What the address asks for. */
  given: Readonly<Record<string, string | undefined>>
}

/** A test whose readings are typed in, or pasted from a spreadsheet. */
export function TypedTest({ at, lot, method, given }: TypedTestProps) {
  return (
    <CommandForm
      action={at.testLot}
      formKey={randomUUID()}
      hidden={{ ...at.names, lot: lot.code, method: method.key }}
      label="Record the test"
      className="form-stack"
    >
      <TestFacts at={at} lot={lot} method={method} given={given} />
      <TableEditor
        name="readings"
        caption={`Readings of ${method.label}`}
        columns={method.columns}
        rows={BLANK_ROWS}
        maxRows={MAX_TYPED}
      />
      <PreviewedSubmit>Record the test</PreviewedSubmit>
    </CommandForm>
  )
}
