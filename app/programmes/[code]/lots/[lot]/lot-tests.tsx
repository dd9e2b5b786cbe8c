import { tableAddress } from '@/app/addresses'
import { Disclosure } from '@/app/ui/disclosure'
import { Facts } from '@/app/ui/facts'
import { Notice } from '@/app/ui/notice'
import { CellValue, ValueTable } from '@/app/ui/parameter-value'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { CorrectionsShown } from '@/app/corrections/corrections-shown'
import { testFieldsCorrected, type Correction } from '@/shared/records/correction'
import type { Lot, LotTest } from '@/shared/records/lot'
import type { TestMethod } from '@/shared/methods/test-method'
import { TEST_METHODS, type TestMethodKey } from '@/shared/methods/test-methods'
import { samplingSpecified } from '@/shared/sampling/sampling-of-lot'
import { whyNotCounted } from '@/shared/lot-tests/counted-tests'
import { CorrectTest } from '@/app/lots/correct-test'
import type { LotAt } from '@/app/lots/lot-at'
import { WithdrawTest } from '@/app/lots/withdraw-test'
import { InstrumentThen } from './instrument-then'
import { TestPictures } from './test-pictures'
import { ownMember } from '@/shared/own-member'

const SHOWN = 200

interface LotTestsProps {
  view: ProgrammeView
  lot: Lot
  /** Where its tests are recorded, if that is in the programme. */
  at: LotAt | undefined
  /** By the test's id. */
  corrections: ReadonlyMap<string, readonly Correction[]>
}

/** Every test of the lot, with its conditions, its readings drawn and as a table. */
export function LotTests({ view, lot, at, corrections }: LotTestsProps) {
  if (lot.tests.length === 0) return null
  return (
    <Section heading="Tests">
      {lot.tests.map((test) => (
        <Test
          key={test.id}
          view={view}
          lot={lot}
          at={at}
          test={test}
          corrections={corrections.get(test.id) ?? []}
        />
      ))}
    </Section>
  )
}

interface TestProps {
  view: ProgrammeView
  lot: Lot
  at: LotAt | undefined
  test: LotTest
  corrections: readonly Correction[]
}

function Test({ view, lot, at, test, corrections }: TestProps) {
  const method: (TestMethod & { key: TestMethodKey }) | undefined = ownMember(TEST_METHODS, test.method)
  if (!method) return null
  const { count, columns } = test.readings
  const shown = Math.min(SHOWN, count)
  const rows = Array.from({ length: shown }, (_, index) =>
    Object.fromEntries(
      Object.keys(method.columns).map((name) => [name, columns[name]?.[index] ?? undefined]),
    ),
  )
  return (
    <article className="finding" aria-label={`${method.label} on ${test.testedOn}`}>
      <h3>
        {method.label}, {test.testedOn}, {test.testedBy}
      </h3>
      <NotCounted view={view} lot={lot} test={test} />
      <Facts
        facts={[
          { label: 'Instrument', value: <InstrumentThen view={view} test={test} /> },
          ...Object.entries(method.conditions).map(([name, condition]) => ({
            label: condition.label,
            value: <CellValue column={condition} value={test.conditions[name]} />,
          })),
        ]}
      />
      <TestPictures view={view} lot={lot} test={test} method={method} />
      <Disclosure
        summary={shown < count ? `The first ${shown} of ${count} readings` : `${count} readings`}
        printed={false}
      >
        <ValueTable
          caption={`Readings of ${method.label}`}
          columns={method.columns}
          rows={rows}
          take={tableAddress(view.code, 'test-readings', test.id)}
        />
      </Disclosure>
      {at ? (
        <>
          <CorrectTest at={at} test={test} method={method} corrections={corrections} />
          <WithdrawTest at={at} test={test} />
        </>
      ) : (
        <CorrectionsShown
          of={`the test of ${test.testedOn}`}
          corrections={corrections}
          fieldsOf={(before, after) => testFieldsCorrected(method, before, after)}
        />
      )}
    </article>
  )
}

/** Why the test's result does not count, when it does not. */
function NotCounted({ view, lot, test }: Omit<TestProps, 'at' | 'corrections'>) {
  const inputs = samplingSpecified(view.state.facts)
  const because = inputs && whyNotCounted(lot, test, inputs)
  return because ? (
    <Notice kind="warning" title="This test does not count">
      {{ conditions: 'Its ', test: 'It ', instrument: '' }[because.of]}
      {because.message}.
    </Notice>
  ) : null
}
