import { machineAddress, machineLogAddress } from '@/app/addresses'
import { Moment } from '@/app/ui/date'
import { CellValue } from '@/app/ui/parameter-value'
import { RuledTable } from '@/app/ui/ruled-table'
import { Sign } from '@/app/ui/sign'
import { VerdictMark } from '@/app/ui/verdict-mark'
import type { LogState } from '@/lib/queries/works/line-states'
import { sharedWindow } from '@/shared/logs/narrowest-window'
import { formatQuantity } from '@/shared/quantity/format'
import { findCharacteristic } from '@/shared/records/characteristics'

/** The logs of a line or of a machine: the newest reading of each against the windows of today's programmes. */
export function WorksLogTable({ logs, caption }: { logs: readonly LogState[]; caption: string }) {
  return (
    <RuledTable
      caption={caption}
      captionHidden
      rows={logs}
      rowKey={({ id }) => id}
      columns={[
        {
          label: 'Log',
          names: true,
          cell: ({ machine, name, characteristic }) => (
            <>
              <a href={machineLogAddress(machine, name)}>{name}</a>,{' '}
              {findCharacteristic(characteristic)?.label ?? characteristic}
            </>
          ),
        },
        {
          label: 'Machine',
          cell: ({ machine }) => <a href={machineAddress(machine)}>{machine}</a>,
        },
        { label: 'Newest', cell: (log) => <Newest log={log} /> },
        { label: 'Narrowest window', cell: (log) => <Narrowest log={log} /> },
        { label: 'By programme', cell: (log) => <ByProgramme log={log} /> },
        { label: 'Due', cell: (log) => <Due log={log} /> },
        {
          label: 'Signals',
          cell: ({ machine, name, openSignals }) =>
            openSignals === 0 ? (
              'none open'
            ) : (
              <a href={`${machineLogAddress(machine, name)}#signals`}>{openSignals} to answer</a>
            ),
        },
      ]}
    />
  )
}

/** What was read last, as it was read, and when. */
export function Newest({ log: { latest, newest } }: { log: Pick<LogState, 'latest' | 'newest'> }) {
  const characteristic = findCharacteristic(latest.characteristic)
  const column = characteristic?.columns[characteristic.charted]
  if (!newest || !characteristic || !column) return <>none yet</>
  return (
    <>
      <CellValue column={column} value={latest.readings.columns[characteristic.charted]?.at(-1)} />,{' '}
      <Moment at={newest.at} />
    </>
  )
}

/** The window common to all programmes of the line. */
export function Narrowest({ log: { against } }: { log: Pick<LogState, 'against'> }) {
  const { narrowest } = sharedWindow(against)
  if (!narrowest) return <>none specified</>
  const { min, max, unit } = narrowest
  if (min && max && min.value > max.value) return <>none in common</>
  return (
    <>
      {min && max
        ? `${formatQuantity(min.value, unit)} to ${formatQuantity(max.value, unit)}`
        : min
          ? `at least ${formatQuantity(min.value, unit)}`
          : max && `at most ${formatQuantity(max.value, unit)}`}
    </>
  )
}

/** Inside one programme's window and outside another's: each says so by its own mark. */
export function ByProgramme({ log: { against } }: { log: Pick<LogState, 'against'> }) {
  if (against.length === 0) return <>no programme specifies it</>
  return (
    <span className="mark-row">
      {against.map(({ programme, verdict, value, unit }) => (
        <span key={programme}>
          <VerdictMark verdict={verdict} /> {programme}
          <span className="sr-only">, {formatQuantity(value, unit)}</span>
        </span>
      ))}
    </span>
  )
}

export function Due({ log: { due } }: { log: Pick<LogState, 'due'> }) {
  if (!due) return <>no interval named</>
  return (
    <span className="mark-row">
      {due.isOverdue && <Sign kind="warning" size={14} />}
      {due.at === undefined ? (
        'never read'
      ) : (
        <>
          {due.isOverdue ? 'overdue since ' : ''}
          <Moment at={new Date(due.at)} />
        </>
      )}
    </span>
  )
}
