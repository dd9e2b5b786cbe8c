import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { Moment } from '@/app/ui/date'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { formatQuantity } from '@/shared/quantity/format'
import { refusal } from '@/shared/policy'
import type { Log } from '@/shared/records/log'
import type { SignalAnswer } from '@/shared/records/signal-answers'
import { RECORD_KINDS } from '@/shared/records/record-kinds'
import { logChart } from '@/shared/rules/control/log-chart'
import { openSignals, signalStates, type SignalState } from '../log-state'
import { AnswerForm } from './answer-form'
import { ExcursionTable } from './excursion-table'

const SHOWN = 25

interface SignalsProps {
  view: ProgrammeView
  log: Log
}

/** Every signal of the chart, with the cause and action recorded for it, or the form to record them. */
export function Signals({ view, log }: SignalsProps) {
  const { unit } = logChart(log, view.state.facts)
  const states = signalStates(log, view.state.facts)
  const may = mayAnswer(view)
  if (log.readings.count === 0) return null
  const shown = mostUrgentFirst(states).slice(0, SHOWN)
  return (
    <Section
      id="signals"
      heading="Signals"
      lead={
        states.length === 0
          ? 'The chart shows none.'
          : `${openSignals(states)} of ${states.length} need an answer: what changed, and what was done, before the gate. About 3 readings in 1000 lie beyond the limits while nothing has changed.`
      }
    >
      {states.length > 0 && (
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
            { label: 'Signal', cell: ({ signal }) => signal.says },
            { label: 'Value', set: 'number', cell: ({ signal }) => formatQuantity(signal.value, unit) },
            {
              label: 'Cause and action',
              cell: ({ signal, answer, asked }) =>
                answer ? (
                  <Answered answer={answer} />
                ) : !asked ? (
                  'not asked for'
                ) : may ? (
                  <AnswerForm
                    view={view}
                    log={log.code}
                    chartRule={signal.chartRule}
                    readingAt={signal.readingAt}
                    summary="Answer it"
                  />
                ) : (
                  'not answered'
                ),
            },
          ]}
        />
      )}
      <ExcursionTable view={view} log={log} may={may} />
      {may && (
        <AnswerForm
          view={view}
          log={log.code}
          summary="Answer for another signal or an excursion"
          kinds={kindsOf(states)}
        />
      )}
    </Section>
  )
}

/** Who may record: a department that the kind of record belongs to. */
const mayAnswer = ({ actor }: ProgrammeView): boolean =>
  !refusal('add-record', actor) &&
  (RECORD_KINDS['signal-answer'].departments as readonly string[]).some((department) =>
    (actor.departments as readonly string[]).includes(department),
  )

function Answered({ answer: { answer, cause, action, by, on } }: { answer: SignalAnswer }) {
  const kind = RECORD_KINDS['signal-answer'].columns.answer.options.find(({ value }) => value === answer)
  return (
    <>
      {kind?.label}: {cause} {action} ({by}, {on})
    </>
  )
}

/** Asked and unanswered, then the others; the newest first in each. */
const mostUrgentFirst = (states: readonly SignalState[]): SignalState[] => {
  const urgency = ({ asked, answer }: SignalState) => (answer ? 0 : asked ? 2 : 1)
  return [...states].sort(
    (one, other) => urgency(other) - urgency(one) || other.signal.instant - one.signal.instant,
  )
}

/** The kinds of signal that the chart gives, as an answer names them. */
const kindsOf = (states: readonly SignalState[]): { value: string; text: string }[] => [
  ...new Map(
    states.map(({ signal: { chartRule, says } }) => [chartRule, { value: chartRule, text: says }]),
  ).values(),
]
