import { machineLogAddress } from '@/app/addresses'
import { SignalAnswer } from '@/app/signals/signal-answer'
import { Moment } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { formatQuantity } from '@/shared/quantity/format'
import type { Unit } from '@/shared/quantity/unit'
import type { Log } from '@/shared/records/log'
import { logChart } from '@/shared/charts/log-chart'
import { openExcursions } from '@/app/signals/excursions'
import { openSignals, signalStates, type SignalState } from '@/app/signals/log-state'
import { ExcursionTable } from './excursion-table'

const SHOWN = 50

/** Every signal of the chart, with the cause and action recorded for it at the machine. */
export function Signals({ view, log }: { view: ProgrammeView; log: Log }) {
  if (log.readings.count === 0) return null
  const { facts } = view.state
  const states = signalStates(log, facts)
  const excursions = openExcursions(log, facts)
  const open = openSignals(states)
  return (
    <Section
      id="signals"
      heading="Signals"
      lead={
        states.length === 0
          ? 'The chart shows none.'
          : `${open} of ${states.length} need an answer: what changed, and what was done, before the gate. About 3 readings in 1000 lie beyond the limits while nothing has changed.`
      }
    >
      {log.atWorks && open + excursions.length > 0 && (
        <p>
          <a href={`${machineLogAddress(log.atWorks.machine, log.atWorks.log)}#signals`}>
            Answer them at the machine
          </a>
          , once for every programme.
        </p>
      )}
      <SignalTable states={states} unit={logChart(log, facts).unit} />
      <ExcursionTable open={excursions} />
    </Section>
  )
}

function SignalTable({ states, unit }: { states: readonly SignalState[]; unit: Unit }) {
  if (states.length === 0) return null
  const shown = mostUrgentFirst(states).slice(0, SHOWN)
  return (
    <RuledTable
      caption={
        shown.length < states.length
          ? `${shown.length} of ${states.length} signals, those without an answer first`
          : 'Signals of the chart'
      }
      rows={shown}
      rowKey={({ signal }) => `${signal.chartRule} ${signal.readingAt}`}
      columns={[
        { label: 'Reading', names: true, cell: ({ signal }) => <Moment at={signal.readingAt} /> },
        { label: 'Signal', cell: ({ signal }) => signal.message },
        { label: 'Value', set: 'number', cell: ({ signal }) => formatQuantity(signal.value, unit) },
        {
          label: 'Cause and action',
          cell: ({ signal: { chartRule, readingAt, message }, answer, asked }) => (
            <SignalAnswer
              answer={answer}
              asked={asked}
              may={false}
              names={[chartRule, readingAt]}
              message={`${message}, ${readingAt}`}
            />
          ),
        },
      ]}
    />
  )
}

/** Asked and unanswered, then the others; the newest first in each. */
const mostUrgentFirst = (states: readonly SignalState[]): SignalState[] => {
  const urgency = ({ asked, answer }: SignalState) => (answer ? 0 : asked ? 2 : 1)
  return [...states].sort(
    (one, other) => urgency(other) - urgency(one) || other.signal.instant - one.signal.instant,
  )
}
