import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, LinesBox } from '@/app/forms/fields'
import { Moment } from '@/app/ui/date'
import { Disclosure } from '@/app/ui/disclosure'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import type { Characteristic } from '@/shared/records/characteristic'
import type { Log } from '@/shared/records/log'
import { RECORD_KINDS, type RecordOf } from '@/shared/records/record-kinds'
import { chartLog } from '@/shared/rules/control/log-signals'
import { answerSignal } from '../actions'

const SHOWN = 40

/** Every signal of the chart, with the cause and action recorded for it, or the form to record them. */
export function Signals({
  view,
  log,
  characteristic,
}: {
  view: ProgrammeView
  log: Log
  characteristic: Characteristic
}) {
  const { chart, readings } = chartLog(log, characteristic)
  const answers = (view.state.facts.records.byKind.get('signal-answer') ??
    []) as readonly RecordOf<'signal-answer'>[]
  const rows = (chart?.signals ?? []).flatMap((signal) => {
    const reading = readings[signal.soundedAt]
    if (!reading) return []
    const readingAt = new Date(reading.at).toISOString().replace('.000Z', 'Z')
    const answer = answers.find(
      (entry) =>
        entry.log === log.code &&
        entry.chartRule === signal.ruleId &&
        Date.parse(entry.readingAt) === reading.at,
    )
    return [{ signal, reading, readingAt, answer }]
  })
  if (rows.length === 0) return null
  const may =
    !refusal('add-record', view.actor) && view.actor.departments.some((department) => department !== 'design')
  return (
    <Section
      id="signals"
      heading="Signals"
      lead="A signal needs its cause and what was done before the gate."
    >
      <RuledTable
        caption="Signals of the chart"
        captionHidden
        rows={rows.slice(-SHOWN).reverse()}
        rowKey={({ signal, readingAt }) => `${signal.ruleId} ${readingAt}`}
        columns={[
          { label: 'Reading', names: true, cell: ({ readingAt }) => <Moment at={readingAt} /> },
          { label: 'Rule', cell: ({ signal }) => signal.ruleId },
          { label: 'Value', set: 'number', cell: ({ reading }) => reading.value },
          {
            label: 'Cause and action',
            cell: ({ signal, readingAt, answer }) =>
              answer ? (
                `${answer.cause} – ${answer.action} (${answer.by}, ${answer.on})`
              ) : may ? (
                <AnswerForm view={view} log={log} chartRule={signal.ruleId} readingAt={readingAt} />
              ) : (
                'not answered'
              ),
          },
        ]}
      />
    </Section>
  )
}

function AnswerForm({
  view,
  log,
  chartRule,
  readingAt,
}: {
  view: ProgrammeView
  log: Log
  chartRule: string
  readingAt: string
}) {
  const { answer } = RECORD_KINDS['signal-answer'].columns
  return (
    <Disclosure summary="Answer it" printed={false}>
      <CommandForm
        action={answerSignal}
        formKey={randomUUID()}
        hidden={{
          programme: view.code,
          log: log.code,
          chartRule,
          readingAt,
          by: view.actor.name,
          on: view.state.facts.today,
        }}
        label={`Answer to ${chartRule} at ${readingAt}`}
      >
        <ChoiceBox
          name="answer"
          label={answer.label}
          choices={answer.options.map(({ value, label }) => ({ value, text: label }))}
        />
        <LinesBox name="cause" label="Cause" rows={2} required />
        <LinesBox name="action" label="What was done" rows={2} required />
        <SubmitButton>Record the answer</SubmitButton>
      </CommandForm>
    </Disclosure>
  )
}
