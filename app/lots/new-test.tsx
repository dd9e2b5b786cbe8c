import { CsvUpload } from '@/app/imports/csv-upload'
import { Button } from '@/app/ui/button'
import { Cautions } from '@/app/ui/cautions'
import { ChoiceField } from '@/app/ui/field'
import { Section } from '@/app/ui/section'
import { refusal } from '@/shared/policy'
import type { Lot } from '@/shared/records/lot'
import type { TestMethod } from '@/shared/methods/test-method'
import { TEST_METHODS } from '@/shared/methods/test-methods'
import { TypedTest } from './typed-test'
import type { LotAt } from './lot-at'

interface NewTestProps {
  at: LotAt
  lot: Lot
  given: Readonly<Record<string, string | undefined>>
}

/** Recording a test: first how, then its readings from a file or typed in. */
export function NewTest({ at, lot, given }: NewTestProps) {
  const { method: chosen, by = 'file', refused } = given
  if (refusal('test-lot', at.actor)) return null
  const { address } = at
  const methods: TestMethod[] = Object.values(TEST_METHODS).filter((method: TestMethod) =>
    method.lotKinds.includes(lot.kind),
  )
  const method: TestMethod | undefined = methods.find(({ key }) => key === chosen)
  return (
    <Section id="test" heading="Record a test">
      <form method="get" action={`${address}#test`} className="form-row" aria-label="How it was tested">
        <ChoiceField
          name="method"
          label="How it was tested"
          defaultValue={chosen ?? ''}
          choices={[
            { value: '', text: 'Choose …' },
            ...methods.map(({ key, label }) => ({ value: key, text: label })),
          ]}
        />
        <ChoiceField
          name="by"
          label="Its readings"
          defaultValue={by}
          choices={[
            { value: 'file', text: 'From a CSV or XLSX file' },
            { value: 'hand', text: 'Typed in' },
          ]}
        />
        <Button type="submit">Go on</Button>
      </form>
      {method && (
        <>
          <p>{method.help}</p>
          <Cautions of={method.cautions} />
          {by === 'hand' ? (
            <TypedTest at={at} lot={lot} method={method} given={given} />
          ) : (
            <CsvUpload
              action={`${address}/file?${new URLSearchParams({ method: method.key })}`}
              hint="The first line holds the headings. You see a preview, and are asked for date, tester and conditions, before anything is stored."
              refused={refused}
            />
          )}
        </>
      )}
    </Section>
  )
}
