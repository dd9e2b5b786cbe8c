import { randomUUID } from 'node:crypto'
import { lotAddress } from '@/app/addresses'
import { CommandForm } from '@/app/forms/command-form'
import { TableEditor } from '@/app/forms/table-editor'
import { CsvUpload } from '@/app/imports/csv-upload'
import { Button } from '@/app/ui/button'
import { Caution } from '@/app/ui/caution'
import { Disclosure } from '@/app/ui/disclosure'
import { ChoiceField } from '@/app/ui/field'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import type { Lot } from '@/shared/records/lot'
import type { TestMethod } from '@/shared/records/test-method'
import { TEST_METHODS, type TestMethodKey } from '@/shared/records/test-methods'
import { testLot } from '../actions'
import { TestFacts } from './test-facts'

interface NewTestProps {
  view: ProgrammeView
  lot: Lot
  given: Readonly<Record<string, string | undefined>>
}

/** Enough to type a usual sample without scripts. */
const BLANK_ROWS = Array.from({ length: 11 }, () => ({}))

/** Recording a test: first how, then its readings from a file or typed in. */
export function NewTest({ view, lot, given }: NewTestProps) {
  const { method: chosen, refused } = given
  if (refusal('test-lot', view.actor)) return null
  const methods: TestMethod[] = Object.values(TEST_METHODS).filter((method: TestMethod) =>
    method.lotKinds.includes(lot.kind),
  )
  const method: TestMethod | undefined = methods.find(({ key }) => key === chosen)
  return (
    <Section id="test" heading="Record a test">
      <form
        method="get"
        action={`${lotAddress(view.code, lot.code)}#test`}
        className="form-row"
        aria-label="How it was tested"
      >
        <ChoiceField
          name="method"
          label="How it was tested"
          defaultValue={chosen ?? ''}
          choices={[
            { value: '', text: 'Choose …' },
            ...methods.map(({ key, label }) => ({ value: key, text: label })),
          ]}
        />
        <Button type="submit">Go on</Button>
      </form>
      {method && (
        <>
          <p>{method.help}</p>
          {method.cautions.length > 0 && (
            <Caution hazard="this test can hurt">
              {method.cautions.map((caution) => (
                <p key={caution}>{caution}</p>
              ))}
            </Caution>
          )}
          <CsvUpload
            action={`${lotAddress(view.code, lot.code)}/file`}
            hidden={{ method: method.key }}
            refused={refused}
          />
          <Disclosure summary="Type the readings in instead" printed={false}>
            <CommandForm
              action={testLot}
              formKey={randomUUID()}
              hidden={{ programme: view.code, lot: lot.code, method: method.key as TestMethodKey }}
              label="Record the test"
              className="form-stack"
            >
              <TestFacts view={view} method={method} />
              <TableEditor
                name="readings"
                caption={`Readings of ${method.label}`}
                columns={method.columns}
                rows={BLANK_ROWS}
                maxRows={500}
              />
              <SubmitButton>Record the test</SubmitButton>
            </CommandForm>
          </Disclosure>
        </>
      )}
    </Section>
  )
}
