import { notFound } from 'next/navigation'
import { logAddress, logsAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { CsvUpload } from '@/app/imports/csv-upload'
import { Section } from '@/app/ui/section'
import { ValueTable } from '@/app/ui/parameter-value'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import type { Characteristic } from '@/shared/records/characteristic'
import { CHARACTERISTICS, type CharacteristicKey } from '@/shared/records/characteristics'
import type { Log } from '@/shared/records/log'
import { textColumn } from '@/shared/plan/column'
import { LogChart } from './log-chart'
import { LogFindings } from './log-findings'
import { ReadingForm } from './reading-form'
import { Signals } from './signals'

interface LogPageProps {
  params: Promise<{ code: string; log: string }>
  searchParams: Promise<{ refused?: string }>
}

/** One log: its chart, its signals, what it means for the specification, and the ways to add readings. */
export default async function LogPage({ params, searchParams }: LogPageProps) {
  const { code: asked, log: key } = await params
  const { refused } = await searchParams
  const visit = await visitProgramme(asked)
  const code = visit.view?.code ?? asked
  const log = [...(visit.view?.state.facts.records.logs.values() ?? [])]
    .flat()
    .find((entry) => entry.code === decodeURIComponent(key))
  if (visit.view && !log) notFound()
  const characteristic = log && CHARACTERISTICS[log.characteristic as CharacteristicKey]
  const instrument = visit.view?.state.facts.records.instruments.find(({ id }) => id === log?.instrumentId)
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={logsAddress(code)}
      place={[{ text: 'Logs', href: logsAddress(code) }, { text: log?.code ?? key }]}
      title={log && characteristic ? `${log.code}: ${characteristic.label}` : key}
      supplement={characteristic?.help}
      cells={
        log
          ? [
              { label: 'Line', value: log.line },
              { label: 'Machine', value: log.machine },
              { label: 'Instrument', value: instrument?.tag ?? 'none named' },
              { label: 'Readings', value: log.readings.count },
            ]
          : []
      }
    >
      {(view) =>
        log &&
        characteristic && (
          <>
            <LogChart log={log} characteristic={characteristic} />
            <LogFindings view={view} log={log} />
            <Signals view={view} log={log} characteristic={characteristic} />
            {!refusal('add-readings', view.actor) && (
              <Section id="add" heading="Add readings">
                <ReadingForm view={view} log={log} />
                <CsvUpload action={`${logAddress(view.code, log.code)}/file`} refused={refused} />
              </Section>
            )}
            <Newest view={view} log={log} characteristic={characteristic} />
          </>
        )
      }
    </ProgrammeSheet>
  )
}

const SHOWN = 25

function Newest({ log, characteristic }: { view: ProgrammeView; log: Log; characteristic: Characteristic }) {
  const { count, columns } = log.readings
  if (count === 0) return null
  const rows = Array.from({ length: Math.min(SHOWN, count) }, (_, back) => count - 1 - back).map((index) => ({
    at: new Date(Number(columns['at']?.[index])).toISOString().slice(0, 16).replace('T', ' '),
    ...Object.fromEntries(
      Object.keys(characteristic.columns).map((name) => [name, columns[name]?.[index] ?? undefined]),
    ),
  }))
  return (
    <Section heading="Newest readings">
      <ValueTable
        caption="Newest readings"
        columns={{ at: textColumn({ label: 'Time, UTC' }), ...characteristic.columns }}
        rows={rows}
      />
    </Section>
  )
}
