import { dispositionInWords } from '@/shared/records/lot-identity'
import type { ReactNode } from 'react'
import { inspectionAddress, logAddress, lotAddress, partAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Inspection } from '@/shared/records/inspection'
import type { Log } from '@/shared/records/log'
import type { Lot } from '@/shared/records/lot'
import { methodName } from '@/shared/methods/test-methods'
import type { RecordPart } from '@/shared/rules/record-source'
import { everyLog } from '@/shared/records/every-log'

const IN_SIGHT = 8

/** The records a rule reads, newest named, each leading to its own page. */
export function RecordsRead({ view, part }: { view: ProgrammeView; part: RecordPart }) {
  const { code } = view
  const { records } = view.state.facts
  switch (part.is) {
    case 'lots':
      return (
        <Newest of={records.lots} noun="lot">
          {(lot) => <LotRead code={code} lot={lot} />}
        </Newest>
      )
    case 'deliveries':
      return <>{counted(records.deliveries.length, 'lot')}</>
    case 'logs':
      return <LogsRead code={code} logs={records.logs.get(part.of) ?? []} />
    case 'all logs':
      return <LogsRead code={code} logs={everyLog(records)} />
    case 'inspections':
      return (
        <Newest of={records.inspections} noun="inspection">
          {(inspection) => <InspectionRead code={code} inspection={inspection} />}
        </Newest>
      )
    case 'instruments':
      return (
        <Newest of={records.instruments} noun="instrument">
          {({ tag, measures, dueOn }) => (
            <>
              {tag}, {measures}, next due <Day at={dueOn} />
            </>
          )}
        </Newest>
      )
    case 'parts':
      return (
        <Newest of={records.parts.map((part) => ({ ...part, id: part.code }))} noun="part">
          {({ code: part, revision, values }) => (
            <>
              <a href={partAddress(part)}>{part}</a>, {values.description}, revision {revision}
            </>
          )}
        </Newest>
      )
    case 'records':
      return <>{counted(records.byKind.get(part.of)?.length ?? 0, 'record')}</>
  }
}

const LogsRead = ({ code, logs }: { code: string; logs: readonly Log[] }) => (
  <Newest of={logs} noun="log">
    {(log) => <LogRead code={code} log={log} />}
  </Newest>
)

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
      {lot.disposition && `; ${dispositionInWords(lot)} by ${lot.disposition.by}`}
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
