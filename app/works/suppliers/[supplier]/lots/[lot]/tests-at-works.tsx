import { lotAddress } from '@/app/addresses'
import { CorrectTest } from '@/app/lots/correct-test'
import type { LotAt } from '@/app/lots/lot-at'
import { WithdrawTest } from '@/app/lots/withdraw-test'
import { Disclosure } from '@/app/ui/disclosure'
import { Facts } from '@/app/ui/facts'
import { CellValue, ValueTable } from '@/app/ui/parameter-value'
import { Section } from '@/app/ui/section'
import type { JudgedProgramme } from '@/lib/programme/judged'
import type { WorksLotRead } from '@/lib/queries/works/works-lot'
import { whyNotCounted } from '@/shared/lot-tests/counted-tests'
import type { TestMethod } from '@/shared/methods/test-method'
import { TEST_METHODS } from '@/shared/methods/test-methods'
import { ownMember } from '@/shared/own-member'
import type { LotTest } from '@/shared/records/lot'
import { samplingSpecified } from '@/shared/sampling/sampling-of-lot'

const SHOWN = 200

/** Every test of the lot, made once; for which programmes it counts, and why not for the others. */
export function TestsAtWorks({ read, at }: { read: WorksLotRead; at: LotAt }) {
  if (read.lot.tests.length === 0) return null
  return (
    <Section heading="Tests">
      {read.lot.tests.map((test) => (
        <Test key={test.id} read={read} at={at} test={test} />
      ))}
    </Section>
  )
}

function Test({ read, at, test }: { read: WorksLotRead; at: LotAt; test: LotTest }) {
  const method: TestMethod | undefined = ownMember(TEST_METHODS, test.method)
  if (!method) return null
  const { count, columns } = test.readings
  const shown = Math.min(SHOWN, count)
  const rows = Array.from({ length: shown }, (_, index) =>
    Object.fromEntries(
      Object.keys(method.columns).map((name) => [name, columns[name]?.[index] ?? undefined]),
    ),
  )
  const instrument = read.instruments.find(({ id }) => id === test.instrumentId)
  return (
    <article className="finding" aria-label={`${method.label} on ${test.testedOn}`}>
      <h3>
        {method.label}, {test.testedOn}, {test.testedBy}
      </h3>
      <Facts
        facts={[
          { label: 'Instrument', value: instrument?.tag ?? 'none named' },
          ...Object.entries(method.conditions).map(([name, condition]) => ({
            label: condition.label,
            value: <CellValue column={condition} value={test.conditions[name]} />,
          })),
        ]}
      />
      {read.judged.length > 0 && (
        <ul className="what-rests" aria-label="For which programmes it counts">
          {read.judged.map((one) => (
            <CountsFor key={one.state.programme.code} lotId={read.lot.id} test={test} judged={one} />
          ))}
        </ul>
      )}
      <Disclosure
        summary={shown < count ? `The first ${shown} of ${count} readings` : `${count} readings`}
        printed={false}
      >
        <ValueTable caption={`Readings of ${method.label}`} columns={method.columns} rows={rows} />
      </Disclosure>
      <CorrectTest at={at} test={test} method={method} corrections={read.corrections.get(test.id) ?? []} />
      <WithdrawTest at={at} test={test} />
    </article>
  )
}

/** Whether the test was made as a programme specifies it; its page of the lot says what it finds. */
function CountsFor({ lotId, test, judged }: { lotId: string; test: LotTest; judged: JudgedProgramme }) {
  const { programme, facts } = judged.state
  const lot = facts.records.lots.find(({ id }) => id === lotId)
  if (!lot) return null
  const inputs = samplingSpecified(facts)
  const because = inputs && whyNotCounted(lot, test, inputs)
  return (
    <li>
      <a href={lotAddress(programme.code, lot.code)}>{programme.code}</a>:{' '}
      {!inputs
        ? 'its sampling is not specified yet'
        : because
          ? `does not count, ${because.message}`
          : 'counts'}
    </li>
  )
}
