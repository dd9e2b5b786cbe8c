import { notFound } from 'next/navigation'
import { logsAddress, tableAddress } from '@/app/addresses'
import { NonconformitiesFrom } from '@/app/deliberation/open-nonconformity-from'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { TakeTable } from '@/app/ui/take-table'
import { findCharacteristic } from '@/shared/records/characteristics'
import { isLevel } from '@/shared/logs/level-characteristics'
import { AtTheMachine } from './at-the-machine'
import type { ChartAsked } from './chart-asked'
import { LogFindings } from './log-findings'
import { logOf } from './log-of'
import { LogPicture } from './log-picture'
import { NewestReadings } from '@/app/signals/newest-readings'
import { Signals } from './signals'

export const generateMetadata = programmeTitle<{ log: string }>(({ log }) => `Log ${log}`)

/** One log as this programme reads it: its chart, its signals, and what it means for the specification. */
export default programmePage<{ log: string }, ChartAsked & { metal?: string }>(
  async ({ visit, code, params: { log: key }, searchParams: asked }) => {
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
          { label: 'Readings that count here', value: log.readings.count },
        ]}
      >
        {(view) => (
          <>
            <AtTheMachine log={log} />
            <LogPicture view={view} log={log} characteristic={characteristic} asked={asked} />
            <LogFindings view={view} log={log} />
            {isLevel(log.characteristic) && <Signals view={view} log={log} />}
            <NewestReadings log={log} characteristic={characteristic} />
            {log.readings.count > 0 && (
              <TakeTable address={tableAddress(view.code, 'log-readings', log.code)} what="All readings" />
            )}
            <NonconformitiesFrom view={view} source={{ kind: 'log', key: log.code }} />
          </>
        )}
      </ProgrammeSheet>
    )
  },
)
