import { notFound } from 'next/navigation'
import { logAddress, logsAddress, tableAddress } from '@/app/addresses'
import { NonconformitiesFrom } from '@/app/deliberation/open-nonconformity-from'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { CsvUpload } from '@/app/imports/csv-upload'
import { TakeTable } from '@/app/ui/take-table'
import { ButtonLink } from '@/app/ui/button'
import { Section } from '@/app/ui/section'
import { refusal } from '@/shared/policy'
import { findCharacteristic } from '@/shared/records/characteristics'
import { isLevel } from '@/shared/logs/level-characteristics'
import type { ChartAsked } from './chart-asked'
import { LogFindings } from './log-findings'
import { logOf } from './log-of'
import { LogPicture } from './log-picture'
import { NewestReadings } from './newest-readings'
import { ReadingForm } from './reading-form'
import { Signals } from './signals'

export const generateMetadata = programmeTitle<{ log: string }>(({ log }) => `Log ${log}`)

/** One log: its chart, its signals, what it means for the specification, and the ways to add readings. */
export default programmePage<{ log: string }, ChartAsked & { metal?: string; refused?: string }>(
  async ({ visit, code, params: { log: key }, searchParams: { refused, ...asked } }) => {
    const log = logOf(visit.view, key)
    const characteristic = log && findCharacteristic(log.characteristic)
    if (!characteristic) notFound()
    const instrument = visit.view.state.facts.records.instruments.find(({ id }) => id === log.instrumentId)
    return (
      <ProgrammeSheet
        visit={visit}
        code={code}
        at={logsAddress(code)}
        place={[{ text: 'Logs', href: logsAddress(code) }, { text: log.code }]}
        title={`${log.code}: ${characteristic.label}`}
        supplement={characteristic.help}
        cells={[
          { label: 'Line', value: log.line },
          { label: 'Machine', value: log.machine },
          { label: 'Instrument', value: instrument?.tag ?? 'none named' },
          { label: 'Readings', value: log.readings.count },
        ]}
      >
        {(view) => {
          const may = !refusal('add-readings', view.actor)
          const typed = may && !characteristic.comesWhole
          return (
            <>
              {may && (
                <p>
                  <ButtonLink href={typed ? '#add' : '#import'}>
                    {typed ? 'Add a reading' : 'Import a pass'}
                  </ButtonLink>
                </p>
              )}
              <LogPicture view={view} log={log} characteristic={characteristic} asked={asked} />
              {typed && (
                <Section id="add" heading="Add a reading">
                  <ReadingForm view={view} log={log} characteristic={characteristic} />
                </Section>
              )}
              <LogFindings view={view} log={log} />
              {isLevel(log.characteristic) && <Signals view={view} log={log} />}
              <NewestReadings log={log} characteristic={characteristic} />
              {log.readings.count > 0 && (
                <TakeTable address={tableAddress(view.code, 'log-readings', log.code)} what="All readings" />
              )}
              <NonconformitiesFrom view={view} source={{ kind: 'log', key: log.code }} />
              {may && (
                <Section id="import" heading="Import readings from a file">
                  <CsvUpload action={`${logAddress(view.code, log.code)}/file`} refused={refused} />
                </Section>
              )}
            </>
          )
        }}
      </ProgrammeSheet>
    )
  },
)
