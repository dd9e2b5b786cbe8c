import { machineRecordAddress } from '@/app/addresses'
import { answerSignals } from '@/app/signals/actions'
import { AnswerTicked } from '@/app/signals/answer-ticked'
import { SignalAnswer } from '@/app/signals/signal-answer'
import { Empty } from '@/app/ui/empty'
import { Moment } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { dateAtWorks } from '@/lib/settings/works'
import type { MachineLogView } from '@/lib/queries/works/machine-log'
import type { Actor } from '@/shared/actor'
import { refusal } from '@/shared/policy'
import { RECORD_KINDS } from '@/shared/records/record-kinds'
import { signalsOfAll, type SharedSignal } from './shared-signals'

const SHOWN = 50

interface MachineSignalsProps {
  view: MachineLogView
  actor: Actor
  /** The ids of what was recorded at the machine. */
  recordedHere: ReadonlySet<string>
}

/** The signals of every programme that reads the log, each once, with its cause or a box to tick and answer. */
export function MachineSignals({ view, actor, recordedHere }: MachineSignalsProps) {
  const signals = signalsOfAll(view.readBy)
  const open = signals.filter(({ asked, answer }) => asked && !answer)
  const may = !refusal('add-record', actor, RECORD_KINDS['signal-answer'])
  const table =
    signals.length > 0 ? (
      <SignalTable
        signals={signals}
        may={may}
        addressOf={(id) => (recordedHere.has(id) ? machineRecordAddress(view.machine.code, id) : undefined)}
      />
    ) : (
      <Empty title="No signal">No chart of a programme shows one.</Empty>
    )
  return (
    <Section
      id="signals"
      heading="Signals"
      lead="What a programme’s chart or window signals is answered here once, and read by every programme: what changed, and what was done."
    >
      {may && open.length > 0 ? (
        <AnswerTicked
          by={actor.name}
          on={dateAtWorks(new Date())}
          action={answerSignals}
          hidden={{ 'works.kind': 'machine', 'works.code': view.machine.code, log: view.state.name }}
          label="Answer to signals"
        >
          {table}
        </AnswerTicked>
      ) : (
        table
      )}
    </Section>
  )
}

interface SignalTableProps {
  signals: readonly SharedSignal[]
  may: boolean
  /** The page of an answer that was recorded at the machine. */
  addressOf: (answer: string) => string | undefined
}

function SignalTable({ signals, may, addressOf }: SignalTableProps) {
  const shown = signals.slice(0, SHOWN)
  return (
    <RuledTable
      caption={
        shown.length < signals.length
          ? `${shown.length} of ${signals.length} signals, those without an answer first`
          : 'Signals'
      }
      captionHidden={shown.length === signals.length}
      rows={shown}
      rowKey={({ chartRule, readingAt }) => `${chartRule} ${readingAt}`}
      columns={[
        { label: 'Reading', names: true, cell: ({ readingAt }) => <Moment at={readingAt} /> },
        { label: 'Signal', cell: ({ message }) => message },
        { label: 'Of', cell: ({ programmes }) => programmes.join(', ') },
        {
          label: 'Cause and action',
          cell: ({ answer, asked, chartRule, readingAt, message }) => (
            <SignalAnswer
              answer={answer}
              address={answer && addressOf(answer.id)}
              asked={asked}
              may={may}
              names={[chartRule, readingAt]}
              message={`${message}, ${readingAt}`}
            />
          ),
        },
      ]}
    />
  )
}
