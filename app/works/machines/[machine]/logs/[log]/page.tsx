import { notFound } from 'next/navigation'
import { logAddress, machineAddress, machineLogAddress, worksAddress } from '@/app/addresses'
import { addressPart } from '@/app/address-part'
import { CsvUpload } from '@/app/imports/csv-upload'
import { NewestReadings } from '@/app/signals/newest-readings'
import { ButtonLink } from '@/app/ui/button'
import { Empty } from '@/app/ui/empty'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { VerdictMark } from '@/app/ui/verdict-mark'
import { trailsOfTheWorks } from '@/lib/live/watched-trails'
import { readInstruments } from '@/lib/queries/instruments'
import type { Recorded } from '@/lib/queries/recorded'
import { readMachineRecords } from '@/lib/queries/works/machine-records'
import { readMachineLog, type MachineLogView } from '@/lib/queries/works/machine-log'
import { windowInWords } from '@/shared/logs/logged-window'
import { refusal } from '@/shared/policy'
import { formatQuantity } from '@/shared/quantity/format'
import { LEVEL_CHARACTERISTICS } from '@/shared/logs/level-characteristics'
import { chartReset } from '@/shared/records/kinds/chart-reset'
import type { RecordOf } from '@/shared/records/record-kinds'
import { findCharacteristic } from '@/shared/records/characteristics'
import { Due } from '../../../../log-table'
import { visitWorks } from '../../../../visit-works'
import { WorksSheet } from '../../../../works-sheet'
import { MachineChart } from './machine-chart'
import { MachineSignals } from './machine-signals'
import { ReadingForm } from './reading-form'
import { Resets } from './resets'

interface MachineLogPageProps {
  readonly params: Promise<{ machine: string; log: string }>
  readonly searchParams: Promise<{ refused?: string; as?: string }>
}

export const generateMetadata = async ({ params }: MachineLogPageProps) => ({
  title: `Log ${addressPart((await params).log)} – Liquidus`,
})

/** A log of a machine: all its readings, what each programme asks of them, signals answered once, and the ways to add more. */
export default async function MachineLogPage({ params, searchParams }: MachineLogPageProps) {
  const { machine: code, log: name } = await params
  const [machine, logName] = [addressPart(code), addressPart(name)]
  const address = machineLogAddress(machine, logName)
  const { person, actor } = await visitWorks(address)
  const { mark } = await trailsOfTheWorks()
  const [view, instruments] = await Promise.all([readMachineLog(machine, logName), readInstruments()])
  const { refused, as } = await searchParams
  const characteristic = view && findCharacteristic(view.log.characteristic)
  if (!view || !characteristic) notFound()
  const may = !refusal('add-readings', actor) && view.machine.closedAt === null
  const charted = LEVEL_CHARACTERISTICS.some((key) => key === characteristic.key)
  const records = await readMachineRecords(view.machine.id, logName)
  const resets = records.filter(({ kind }) => kind === chartReset.key)
  const typed = may && !characteristic.comesWhole
  const instrument = instruments.find(({ id }) => id === view.log.instrumentId)
  return (
    <WorksSheet
      person={person}
      at={worksAddress()}
      title={`${logName}: ${characteristic.label}`}
      supplement={characteristic.help}
      newsSince={mark}
      place={[{ text: machine, href: machineAddress(machine) }, { text: logName }]}
      cells={[
        { label: 'Line', value: view.line.code },
        { label: 'Machine', value: machine },
        { label: 'Instrument', value: instrument?.tag ?? 'none named' },
        { label: 'Readings', value: view.log.readings.count },
        { label: 'Due', value: <Due log={view.state} /> },
      ]}
    >
      {may && (
        <p>
          <ButtonLink href={typed ? '#add' : '#import'}>
            {typed ? 'Add a reading' : 'Import a pass'}
          </ButtonLink>
        </p>
      )}
      <MachineChart view={view} characteristic={characteristic} resets={valuesOf(resets)} as={as} />
      <ByProgramme view={view} />
      {typed && (
        <Section
          id="add"
          heading="Add a reading"
          lead="While it is typed, what it would turn in the programmes that ran on its day is said beside it."
        >
          <ReadingForm machine={machine} log={logName} characteristic={characteristic} />
        </Section>
      )}
      <MachineSignals
        view={view}
        actor={actor}
        recordedHere={new Set(records.map(({ history }) => history.id))}
      />
      {charted && (
        <Resets
          machine={machine}
          log={logName}
          resets={resets}
          actor={actor}
          open={view.machine.closedAt === null}
        />
      )}
      <NewestReadings log={view.log} characteristic={characteristic} />
      {may && (
        <Section id="import" heading="Import readings from a file">
          <CsvUpload action={`${address}/file`} refused={refused} />
        </Section>
      )}
    </WorksSheet>
  )
}

/** What each programme of the line asks, what of the log counts for it, and how the newest reading lies. */
function ByProgramme({ view: { readBy, state } }: { view: MachineLogView }) {
  if (readBy.length === 0)
    return (
      <Section heading="By programme">
        <Empty title="No programme reads this log">
          A programme reads it once it states the line, for the days of its soldering runs there.
        </Empty>
      </Section>
    )
  return (
    <Section heading="By programme" lead="The newest reading, held against what each programme specifies.">
      <RuledTable
        caption="Programmes that read this log"
        captionHidden
        rows={readBy}
        rowKey={({ judged }) => judged.state.programme.id}
        columns={[
          {
            label: 'Programme',
            names: true,
            cell: ({
              judged: {
                state: { programme },
              },
              log,
            }) => <a href={logAddress(programme.code, log.code)}>{programme.code}</a>,
          },
          {
            label: 'Window',
            cell: ({ judged }) => {
              const own = against(state, judged.state.programme.code)
              return own ? windowInWords(own.window) : 'none specified'
            },
          },
          {
            label: 'Newest reading',
            cell: ({ judged }) => {
              const own = against(state, judged.state.programme.code)
              return own ? (
                <span className="mark-row">
                  <VerdictMark verdict={own.verdict} /> {formatQuantity(own.value, own.unit)}
                </span>
              ) : (
                'not judged'
              )
            },
          },
          { label: 'Readings that count', set: 'number', cell: ({ log }) => log.readings.count },
        ]}
      />
    </Section>
  )
}

/** The resets as charts read them. */
const valuesOf = (resets: readonly Recorded[]): RecordOf<'chart-reset'>[] =>
  resets.map(({ values, history: { id } }) => ({ ...(values as Omit<RecordOf<'chart-reset'>, 'id'>), id }))

const against = (state: MachineLogView['state'], code: string) =>
  state.against.find(({ programme }) => programme === code)
