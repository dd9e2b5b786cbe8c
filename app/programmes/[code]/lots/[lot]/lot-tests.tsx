import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { ReadingsAgainstLimit } from '@/app/drawing/readings-against-limit'
import { Disclosure } from '@/app/ui/disclosure'
import { Empty } from '@/app/ui/empty'
import { Facts } from '@/app/ui/facts'
import { CellValue, ValueTable } from '@/app/ui/parameter-value'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import type { Lot, LotTest } from '@/shared/records/lot'
import { numbersOf } from '@/shared/records/readings'
import type { TestMethod } from '@/shared/records/test-method'
import { TEST_METHODS, type TestMethodKey } from '@/shared/records/test-methods'
import { withdrawLotTest } from '../actions'

/** Every test of the lot, with its conditions, its readings drawn and as a table. */
export function LotTests({ view, lot }: { view: ProgrammeView; lot: Lot }) {
  return (
    <Section heading="Tests">
      {lot.tests.length === 0 && <Empty title="Not tested yet" />}
      {lot.tests.map((test) => (
        <Test key={test.id} view={view} lot={lot} test={test} />
      ))}
    </Section>
  )
}

const SHOWN = 200

function Test({ view, lot, test }: { view: ProgrammeView; lot: Lot; test: LotTest }) {
  const method: TestMethod | undefined = TEST_METHODS[test.method as TestMethodKey]
  if (!method) return null
  const instrument = view.state.facts.records.instruments.find(({ id }) => id === test.instrumentId)
  const outOfDate = instrument && (instrument.dueOn < test.testedOn || instrument.outOfUse)
  const column = method.columns[method.charted]
  const numbers = numbersOf(test.readings, method.charted)
  const rows = Array.from({ length: Math.min(SHOWN, test.readings.count) }, (_, index) =>
    Object.fromEntries(
      Object.keys(method.columns).map((name) => [name, test.readings.columns[name]?.[index] ?? undefined]),
    ),
  )
  return (
    <article className="finding" aria-label={`${method.label} on ${test.testedOn}`}>
      <h3>
        {method.label}, {test.testedOn}, {test.testedBy}
      </h3>
      <Facts
        facts={[
          {
            label: 'Instrument',
            value: instrument
              ? `${instrument.tag}${outOfDate ? ': out of calibration on that day' : ''}`
              : 'none named',
          },
          ...Object.entries(method.conditions).map(([name, condition]) => ({
            label: condition.label,
            value: <CellValue column={condition} value={test.conditions[name]} />,
          })),
        ]}
      />
      {column?.kind === 'number' && numbers.length > 1 && (
        <ReadingsAgainstLimit
          title={`${method.label} of lot ${lot.code}`}
          characteristic={column.label}
          unit={column.unit}
          readings={numbers}
          limits={{}}
        />
      )}
      <Disclosure summary={`${test.readings.count} readings`} printed={false}>
        <ValueTable caption={`Readings of ${method.label}`} columns={method.columns} rows={rows} />
      </Disclosure>
      {!refusal('withdraw-lot-test', view.actor) && (
        <Disclosure summary="Withdraw this test" printed={false}>
          <CommandForm
            action={withdrawLotTest}
            formKey={randomUUID()}
            hidden={{ programme: view.code, lot: lot.code, test: test.id }}
            label="Withdraw this test"
            className="form-narrow"
          >
            <TextBox name="reason" label="Why it should not count" required />
            <SubmitButton kind="danger">Withdraw the test</SubmitButton>
          </CommandForm>
        </Disclosure>
      )}
    </article>
  )
}
