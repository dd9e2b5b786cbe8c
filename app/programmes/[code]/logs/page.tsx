import { randomUUID } from 'node:crypto'
import { logAddress, logsAddress } from '@/app/addresses'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, TextBox } from '@/app/forms/fields'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { Moment } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import { CHARACTERISTICS, type CharacteristicKey } from '@/shared/records/characteristics'
import { openLog } from './actions'

interface LogsPageProps {
  params: Promise<{ code: string }>
}

/** The process characteristics that are logged, by line and machine. */
export default async function LogsPage({ params }: LogsPageProps) {
  const { code: asked } = await params
  const visit = await visitProgramme(asked)
  const code = visit.view?.code ?? asked
  const logs = [...(visit.view?.state.facts.records.logs.values() ?? [])].flat()
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={logsAddress(code)}
      place={[{ text: 'Logs' }]}
      title="Logs"
      supplement="What the wave, irons, flux and bath are doing, against the specification"
      cells={[{ label: 'Logs', value: logs.length }]}
    >
      {(view) => (
        <>
          {logs.length > 0 ? (
            <RuledTable
              caption="Logs"
              captionHidden
              rows={logs}
              rowKey={({ id }) => id}
              columns={[
                {
                  label: 'Log',
                  names: true,
                  cell: ({ code: log, characteristic }) => (
                    <a
                      href={logAddress(view.code, log)}
                    >{`${log}: ${CHARACTERISTICS[characteristic as CharacteristicKey]?.label ?? characteristic}`}</a>
                  ),
                },
                { label: 'Line', cell: ({ line, machine }) => `${line}, ${machine}` },
                { label: 'Readings', set: 'number', cell: ({ readings }) => readings.count },
                {
                  label: 'Newest',
                  cell: ({ readings }) => {
                    const newest = readings.columns['at']?.at(-1)
                    return typeof newest === 'number' ? <Moment at={new Date(newest)} /> : 'none yet'
                  },
                },
              ]}
            />
          ) : (
            <Empty title="No logs yet">
              Open one for each characteristic and machine; its readings come from a CSV file, from the
              machine itself, or typed in.
            </Empty>
          )}
          <OpenLogForm view={view} />
        </>
      )}
    </ProgrammeSheet>
  )
}

function OpenLogForm({ view }: { view: ProgrammeView }) {
  if (refusal('open-log', view.actor)) return null
  const { instruments } = view.state.facts.records
  return (
    <Section heading="Open a log">
      <CommandForm
        action={openLog}
        formKey={randomUUID()}
        hidden={{ programme: view.code }}
        label="Open a log"
        className="form-narrow"
      >
        <TextBox name="code" label="Code" hint="Such as FLUX-1." required />
        <ChoiceBox
          name="characteristic"
          label="What is logged"
          choices={[
            { value: '', text: 'Choose …' },
            ...Object.entries(CHARACTERISTICS).map(([value, { label }]) => ({ value, text: label })),
          ]}
        />
        <TextBox name="line" label="Line" required />
        <TextBox name="machine" label="Machine" required />
        <ChoiceBox
          name="instrument"
          label="Instrument"
          optional
          choices={[
            { value: '', text: 'none named' },
            ...instruments.map(({ id, tag, measures }) => ({ value: id, text: `${tag}: ${measures}` })),
          ]}
        />
        <SubmitButton>Open the log</SubmitButton>
      </CommandForm>
    </Section>
  )
}
