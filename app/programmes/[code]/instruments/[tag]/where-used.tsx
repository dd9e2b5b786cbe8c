import { dispositionInWords } from '@/shared/records/lot-identity'
import { logAddress, lotAddress, lotsAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { Sign } from '@/app/ui/sign'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { InstrumentUses, TestUse } from '@/shared/instruments/instrument-uses'
import { methodName } from '@/shared/methods/test-methods'

/** The tests and logs of the programme that are worth what this instrument is. */
export function WhereUsed({ view, uses }: { view: ProgrammeView; uses: InstrumentUses | undefined }) {
  const { tests = [], logs = [] } = uses ?? {}
  return (
    <Section heading="Where it was used">
      {tests.length + logs.length === 0 && (
        <Empty title="No test or log of this programme names it">
          <p>
            Whoever records a test names its instrument: on the page of{' '}
            <a href={lotsAddress(view.code)}>a lot</a>, or at the opening of a log.
          </p>
        </Empty>
      )}
      {tests.length > 0 && (
        <RuledTable
          caption="Tests made with it"
          rows={tests}
          rowKey={({ test }) => test.id}
          columns={[
            {
              label: 'Lot',
              names: true,
              cell: ({ lot }) => <a href={lotAddress(view.code, lot.code)}>{lot.code}</a>,
            },
            { label: 'Test', cell: ({ test }) => methodName(test.method) },
            { label: 'Made on', set: 'shrink', cell: ({ test }) => <Day at={test.testedOn} /> },
            { label: 'That day', cell: ({ status }) => <ThatDay status={status} /> },
            { label: 'Lot was', set: 'shrink', cell: ({ lot }) => dispositionInWords(lot) },
          ]}
        />
      )}
      {logs.length > 0 && (
        <p>
          Logs read with it:{' '}
          {logs.map(({ code }, at) => (
            <span key={code}>
              {at > 0 && ', '}
              <a href={logAddress(view.code, code)}>{code}</a>
            </span>
          ))}
        </p>
      )}
    </Section>
  )
}

function ThatDay({ status }: Pick<TestUse, 'status'>) {
  if (status.stands) return <>in calibration</>
  return (
    <span className="mark">
      <Sign kind="refusal" size={16} />
      <strong>{status.message}</strong>
    </span>
  )
}
