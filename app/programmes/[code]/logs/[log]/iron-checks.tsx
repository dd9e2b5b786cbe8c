import { LogOverTime } from '@/app/drawing/log-over-time'
import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { Sign } from '@/app/ui/sign'
import { VerdictMark } from '@/app/ui/verdict-mark'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import type { Log } from '@/shared/records/log'
import { ironSchedule, type IronDue } from '@/shared/irons/iron-schedule'
import { marginIn, windowInWords } from '@/shared/logs/logged-window'
import type { Facts } from '@/shared/rules/facts'
import { governingName } from '@/shared/rules/governing-source'
import { NothingRead } from './nothing-read'

const MAX_DRAWN = 6

/** Irons by when their next check falls due, with what the checks found over time. */
export function IronChecks({ log, facts }: { log: Log; facts: Facts }) {
  const { window, everyDays, irons } = ironSchedule(log, facts)
  if (irons.length === 0) return <NothingRead log={log} title="No checks yet" />
  const what = window.unit === 'K' ? 'off its setting' : 'tip to ground'
  const drawn = irons.slice(0, MAX_DRAWN)
  return (
    <Section
      id="chart"
      heading="Checks of irons"
      lead={`Checked every ${formatQuantity(everyDays.value, 'days')} (${governingName(everyDays)}). ${window.unit === 'K' ? 'Off its setting: ' : 'Tip to ground: '}${windowInWords(window)}`}
    >
      <RuledTable
        caption="Irons, the next due first"
        rows={irons}
        rowKey={({ iron }) => iron}
        columns={[
          { label: 'Iron', names: true, cell: ({ iron }) => iron },
          { label: 'Checks', set: 'number', cell: ({ checks }) => checks.length },
          { label: 'Newest', cell: ({ checkedOn }) => <Day at={checkedOn} /> },
          {
            label: `Found, ${what}`,
            set: 'number',
            cell: ({ checks }) => signed(checks[checks.length - 1]!.found, window.unit === 'K', window.unit),
          },
          {
            label: 'Verdict',
            cell: ({ checks }) => (
              <VerdictMark verdict={marginIn(window, checks[checks.length - 1]!.found).verdict} />
            ),
          },
          { label: 'Due', cell: (iron) => <Due iron={iron} /> },
        ]}
      />
      {drawn.map(({ iron, checks }) => (
        <LogOverTime
          key={iron}
          title={`${iron}: ${what}`}
          characteristic={window.unit === 'K' ? 'Off its setting' : 'Tip to ground'}
          unit={window.unit}
          readings={checks.map(({ at, found }) => ({ at, value: found }))}
          specification={{ atLeast: window.min?.value, atMost: window.max?.value }}
        />
      ))}
      {drawn.length < irons.length && (
        <p className="field-hint">
          The {drawn.length} irons that are due first are drawn, of {irons.length}.
        </p>
      )}
    </Section>
  )
}

const signed = (value: number, withSign: boolean, unit: 'K' | 'Ω' | string): string =>
  `${withSign && value > 0 ? '+' : ''}${formatNumber(value)} ${unit}`

function Due({ iron: { withdrawn, dueOn, daysLeft } }: { iron: IronDue }) {
  if (withdrawn) return <>out of use</>
  if (daysLeft >= 0)
    return (
      <>
        <Day at={dueOn} />, in {daysLeft} days
      </>
    )
  return (
    <span className="mark">
      <Sign kind="warning" size={16} />
      <strong>
        <Day at={dueOn} />, {-daysLeft} days ago: check before use
      </strong>
    </span>
  )
}
