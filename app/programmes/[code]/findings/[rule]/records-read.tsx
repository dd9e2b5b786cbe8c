import type { ReactNode } from 'react'
import { inspectionAddress, logAddress, lotAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Inspection } from '@/shared/records/inspection'
import type { Log } from '@/shared/records/log'
import type { Lot } from '@/shared/records/lot'
import { methodName } from '@/shared/methods/test-methods'

const IN_SIGHT = 8

/** The records a rule reads, newest named, each leading to its own page. */
export function RecordsRead({ view: { code, state }, source }: { view: ProgrammeView; source: string }) {
  const { records } = state.facts
  const [kind, of = ''] = source.split(':')
  if (kind === 'lots')
    return (
      <Newest of={records.lots} noun="lot">
        {(lot) => <LotRead code={code} lot={lot} />}
      </Newest>
    )
  if (kind === 'logs')
    return (
      <Newest of={records.logs.get(of) ?? []} noun="log">
        {(log) => <LogRead code={code} log={log} />}
      </Newest>
    )
  if (kind === 'inspections')
    return (
      <Newest of={records.inspections} noun="inspection">
        {(inspection) => <InspectionRead code={code} inspection={inspection} />}
      </Newest>
    )
  if (kind === 'instruments')
    return (
      <Newest of={records.instruments} noun="instrument">
        {({ tag, measures, dueOn }) => (
          <>
            {tag}, {measures}, next due <Day at={dueOn} />
          </>
        )}
      </Newest>
    )
  return <>{counted(records.byKind.get(of)?.length ?? 0, 'record')}</>
}

function Newest<T extends { readonly id: string }>({
  of: entries,
  noun,
  children,
}: {
  of: readonly T[]
  noun: string
  children: (entry: T) => ReactNode
}) {
  const shown = entries.slice(-IN_SIGHT).toReversed()
  return (
    <>
      {counted(entries.length, noun)}
      {entries.length > shown.length && `, the newest ${shown.length} of them:`}
      {shown.map((entry) => (
        <span key={entry.id} className="block">
          {children(entry)}
        </span>
      ))}
    </>
  )
}

function LotRead({ code, lot }: { code: string; lot: Lot }) {
  return (
    <>
      <a href={lotAddress(code, lot.code)}>{lot.code}</a>, {lot.part}, received <Day at={lot.receivedOn} />
      {lot.tests.map((test) => (
        <span key={test.id}>
          {'; '}
          {methodName(test.method)} by {test.testedBy}, <Day at={test.testedOn} />
        </span>
      ))}
      {lot.disposition && `; ${lot.disposition.verdict} by ${lot.disposition.by}`}
    </>
  )
}

const LogRead = ({ code, log }: { code: string; log: Log }) => (
  <>
    <a href={logAddress(code, log.code)}>{log.code}</a>, {log.line}, {log.machine}:{' '}
    {counted(log.readings.count, 'reading')}
  </>
)

const InspectionRead = ({ code, inspection }: { code: string; inspection: Inspection }) => (
  <>
    <a href={inspectionAddress(code, inspection.id)}>{inspection.assembly}</a>, {inspection.inspector},{' '}
    <Day at={inspection.inspectedOn} />
  </>
)

const counted = (count: number, noun: string): string =>
  count === 0 ? `no ${noun} yet` : `${count} ${noun}${count === 1 ? '' : 's'}`
