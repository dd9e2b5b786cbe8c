import { randomUUID } from 'node:crypto'
import { machineRecordAddress } from '@/app/addresses'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { ColumnField } from '@/app/forms/column-field'
import { CommandForm } from '@/app/forms/command-form'
import { PreviewedSubmit } from '@/app/forms/previewed-submit'
import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { Recorded } from '@/lib/queries/recorded'
import type { Actor } from '@/shared/actor'
import { refusal } from '@/shared/policy'
import { chartReset } from '@/shared/records/kinds/chart-reset'
import { setLimitsAgain } from './actions'

interface ResetsProps {
  machine: string
  log: string
  resets: readonly Recorded[]
  actor: Actor
  /** Whether the machine still runs. */
  open: boolean
}

/** Where the charts of the log start afresh, for every programme; and the form to say so. */
export function Resets({ machine, log, resets, actor, open }: ResetsProps) {
  const mayAdd = open && !refusal('add-record', actor, chartReset)
  if (resets.length === 0 && !mayAdd) return null
  return (
    <Section
      id="resets"
      heading="Control-limit resets"
      lead="After a known and lasting change of the machine its charts start afresh, in every programme that reads the log. What a programme specifies besides counts for it alone."
    >
      {resets.length > 0 ? (
        <RuledTable
          caption="Control-limit resets"
          captionHidden
          rows={resets}
          rowKey={({ history }) => history.id}
          columns={[
            {
              label: chartReset.columns.startsOn.label,
              set: 'shrink',
              cell: ({ values }) => <Day at={String(values['startsOn'])} />,
            },
            {
              label: chartReset.columns.name.label,
              names: true,
              cell: ({ values }) => String(values['name']),
            },
            {
              label: 'Recorded',
              cell: ({ history: { id, recorded } }) => (
                <>
                  {recorded.by}, <Day at={recorded.at} />:{' '}
                  <a href={machineRecordAddress(machine, id)}>
                    {refusal('correct-record', actor, chartReset) ? 'open' : 'correct or withdraw'}
                  </a>
                </>
              ),
            },
          ]}
        />
      ) : (
        <p>None.</p>
      )}
      {mayAdd && <AddReset machine={machine} log={log} />}
    </Section>
  )
}

const AddReset = ({ machine, log }: { machine: string; log: string }) => (
  <CommandForm
    action={setLimitsAgain}
    formKey={randomUUID()}
    hidden={{ 'works.kind': 'machine', 'works.code': machine, log }}
    label="Set the limits again from a day on"
    className="form-narrow"
  >
    <AnsweredDisclosure summary="Set the limits again from a day on">
      <div className="form-stack">
        <ColumnField name="rows.0.startsOn" column={chartReset.columns.startsOn} />
        <ColumnField name="rows.0.name" column={chartReset.columns.name} />
        <PreviewedSubmit>Set them again</PreviewedSubmit>
      </div>
    </AnsweredDisclosure>
  </CommandForm>
)
