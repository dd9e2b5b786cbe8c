import { AnswerTicked } from '@/app/signals/answer-ticked'
import { SignalAnswer } from '@/app/signals/signal-answer'
import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import { RECORD_KINDS } from '@/shared/records/record-kinds'
import { formatNumber } from '@/shared/quantity/format'
import type { DefectChartKey } from '@/shared/plan/parameters/defect-charts'
import { answerToDefects } from '@/shared/charts/defect-signal-answers'
import type { DefectSignal } from '@/shared/charts/defect-signals'
import { answerDefectSignals } from '@/app/signals/actions'
import { recordsOfKind } from '@/shared/records/records-of-kind'

interface DefectSignalsProps {
  view: ProgrammeView
  chart: DefectChartKey
  signals: readonly DefectSignal[]
  /** Whether the specification wants this chart, drawn so, answered for. */
  specified: boolean
}

/** Every signal of a chart of defects, with its answer or a box to tick and answer. */
export function DefectSignals({ view, chart, signals, specified }: DefectSignalsProps) {
  const answers = recordsOfKind(view.state.facts.records, 'defect-signal-answer')
  const open = specified
    ? signals.filter((signal) => signal.asked && !answerToDefects(answers, signal)).length
    : 0
  const may = !refusal('add-record', view.actor, RECORD_KINDS['defect-signal-answer'])
  const table = signals.length > 0 && (
    <RuledTable
      caption="Signals of the chart"
      rows={signals}
      rowKey={({ chartRule, point }) => `${chartRule} ${point}`}
      columns={[
        { label: 'Sample', names: true, set: 'shrink', cell: ({ sample }) => sample },
        { label: 'Inspected', set: 'shrink', cell: ({ inspectedOn }) => <Day at={inspectedOn} /> },
        { label: 'Signal', cell: ({ message }) => message },
        { label: 'Plotted', set: 'number', cell: ({ value }) => formatNumber(value, 3) },
        { label: 'Defects', set: 'number', cell: ({ of }) => of.defects },
        { label: 'Joints inspected', set: 'number', cell: ({ of }) => of.jointsSeen },
        {
          label: 'Cause and action',
          cell: (signal) => (
            <SignalAnswer
              answer={answerToDefects(answers, signal)}
              asked={specified && signal.asked}
              may={may}
              names={[signal.chartRule, signal.sample, signal.inspectedOn]}
              message={`${signal.message}, ${signal.sample}`}
            />
          ),
        },
      ]}
    />
  )
  return (
    <Section id="signals" heading="Signals" lead={leadFor(signals.length, open, specified)}>
      {may && open > 0 ? (
        <AnswerTicked
          by={view.actor.name}
          on={view.state.facts.today}
          action={answerDefectSignals}
          hidden={{ programme: view.code, chart }}
          label="Answer to signals"
        >
          {table}
        </AnswerTicked>
      ) : (
        table
      )}
      <p className="field-hint">
        A low count is news too: something got better, or somebody looked less well. Whether the rate is low
        enough, the assessment says.
      </p>
    </Section>
  )
}

function leadFor(signals: number, open: number, specified: boolean): string {
  if (signals === 0) return 'The chart shows none.'
  if (!specified)
    return 'None is asked about: the specification wants other charts, or other limits, answered for.'
  return `${open} of ${signals} need an answer: what changed, and what was done, before the gate.`
}
