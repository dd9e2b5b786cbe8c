import { capitalised } from '@/shared/quantity/capitalised'
import { findingAddress, logAddress, tableAddress } from '@/app/addresses'
import { Moment } from '@/app/ui/date'
import { CellValue } from '@/app/ui/parameter-value'
import { RuledTable, type RowGroup } from '@/app/ui/ruled-table'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { findCharacteristic } from '@/shared/records/characteristics'
import type { Log } from '@/shared/records/log'
import { findingsReading, openSignals, signalStates, verdictOf } from '@/app/signals/log-state'

/** The logs by characteristic: where they are kept, the newest reading, and what it means. */
export function LogTable({ view, logs }: { view: ProgrammeView; logs: readonly Log[] }) {
  return (
    <RuledTable
      caption="Logs by characteristic"
      take={tableAddress(view.code, 'logs')}
      captionHidden
      groups={byCharacteristic(logs)}
      rowKey={({ id }) => id}
      columns={[
        {
          label: 'Log',
          names: true,
          cell: ({ code }) => <a href={logAddress(view.code, code)}>{code}</a>,
        },
        { label: 'Line', cell: ({ line, machine }) => `${line}, ${machine}` },
        { label: 'Readings', set: 'number', cell: ({ readings }) => readings.count },
        { label: 'Newest', cell: (log) => <Newest log={log} /> },
        { label: 'Against the specification', cell: (log) => <Verdicts view={view} log={log} /> },
        { label: 'Signals', cell: (log) => <Signals view={view} log={log} /> },
      ]}
    />
  )
}

function byCharacteristic(logs: readonly Log[]): RowGroup<Log>[] {
  return [...new Set(logs.map(({ characteristic }) => characteristic))].map((key) => ({
    key,
    heading: capitalised(findCharacteristic(key)?.label ?? key),
    rows: logs
      .filter(({ characteristic }) => characteristic === key)
      .sort((one, other) => one.line.localeCompare(other.line) || one.code.localeCompare(other.code)),
  }))
}

/** The newest reading of the charted column, and when it was. */
function Newest({ log: { readings, characteristic: key } }: { log: Log }) {
  const characteristic = findCharacteristic(key)
  const column = characteristic?.columns[characteristic.charted]
  const at = readings.columns['at']?.at(-1)
  if (!characteristic || !column || typeof at !== 'number') return <>none yet</>
  return (
    <>
      <CellValue column={column} value={readings.columns[characteristic.charted]?.at(-1)} />,{' '}
      <Moment at={new Date(at)} />
    </>
  )
}

function Verdicts({ view, log }: { view: ProgrammeView; log: Log }) {
  const rules = view.state.items.flatMap(({ definition }) => definition.rules)
  const read = findingsReading(log, rules, view.judgement.findings)
  if (read.length === 0) return <>no rule reads it</>
  return (
    <span className="mark-row">
      {read.map((one) => (
        <a key={one.rule.id} href={findingAddress(view.code, one.rule.id)} title={one.rule.title}>
          <VerdictMark verdict={verdictOf(one)} />
          <span className="sr-only">: {one.rule.title}</span>
        </a>
      ))}
    </span>
  )
}

function Signals({ view, log }: { view: ProgrammeView; log: Log }) {
  const states = signalStates(log, view.state.facts)
  const open = openSignals(states)
  if (open === 0) return <>{states.length === 0 ? 'none' : 'none open'}</>
  return <a href={`${logAddress(view.code, log.code)}#signals`}>{open} to answer</a>
}
