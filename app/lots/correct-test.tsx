import { correctLotTest } from '@/app/corrections/actions'
import { CorrectionForm } from '@/app/corrections/correction-form'
import { CorrectionsShown } from '@/app/corrections/corrections-shown'
import { ColumnField } from '@/app/forms/column-field'
import type { TestMethod } from '@/shared/methods/test-method'
import { refusal } from '@/shared/policy'
import { LOT_TEST_COLUMNS } from '@/shared/records/correctable-columns'
import { testFieldsCorrected, type Correction } from '@/shared/records/correction'
import type { LotTest } from '@/shared/records/lot'
import { InstrumentBox } from './test-facts'
import type { LotAt } from './lot-at'

interface CorrectTestProps {
  at: LotAt
  test: LotTest
  method: TestMethod
  corrections: readonly Correction[]
}

/** What was corrected of a test, and the form to do so. Its readings stay: with wrong ones it is withdrawn. */
export function CorrectTest({ at, test, method, corrections }: CorrectTestProps) {
  const stands: Readonly<Record<string, unknown>> = { ...test }
  return (
    <>
      <CorrectionsShown
        of={`the test of ${test.testedOn}`}
        corrections={corrections}
        fieldsOf={(before, after) => testFieldsCorrected(method, before, after)}
      />
      {!refusal('correct-lot-test', at.actor) && (
        <CorrectionForm
          action={correctLotTest}
          label="Correct this test"
          previewed
          seen={corrections.length}
          hidden={{ ...at.names, test: test.id, method: method.key }}
        >
          <div className="form-row">
            {Object.entries(LOT_TEST_COLUMNS).map(([name, column]) => (
              <ColumnField key={name} name={`values.${name}`} column={column} value={stands[name]} />
            ))}
            <InstrumentBox at={at} chosen={test.instrumentId ?? ''} />
            {Object.entries(method.conditions).map(([name, column]) => (
              <ColumnField
                key={name}
                name={`conditions.${name}`}
                column={column}
                value={test.conditions[name]}
              />
            ))}
          </div>
          <p className="field-hint">
            Readings are not corrected one by one: withdraw the test and record it again with the right ones.
          </p>
        </CorrectionForm>
      )}
    </>
  )
}
