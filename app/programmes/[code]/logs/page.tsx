import { defectChartsAddress, logsAddress, storageAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { ButtonLink } from '@/app/ui/button'
import { Empty } from '@/app/ui/empty'
import { machineTokens } from '@/lib/queries/machine-tokens'
import { LogTable } from './log-table'
import { Machines } from './machines'
import { OpenLogForm } from './open-log'
import { everyLog } from '@/shared/records/every-log'

export const generateMetadata = programmeTitle(({ code }) => `Logs, ${code}`)

/** The process characteristics that are logged, by line and machine. */
export default programmePage(async ({ visit, code }) => {
  const logs = everyLog(visit.view.state.facts.records)
  const tokens = await machineTokens(visit.view.state.programme.id)
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
          <p className="form-actions">
            <ButtonLink href={storageAddress(view.code)}>Storage clock of the lots</ButtonLink>
            <ButtonLink href={defectChartsAddress(view.code)}>Defect control charts</ButtonLink>
          </p>
          {logs.length > 0 ? (
            <LogTable view={view} logs={logs} />
          ) : (
            <Empty title="No logs yet">
              Open one for each characteristic and machine; its readings come from a CSV file, from the
              machine itself, or typed in.
            </Empty>
          )}
          <OpenLogForm view={view} />
          <Machines view={view} tokens={tokens} />
        </>
      )}
    </ProgrammeSheet>
  )
})
