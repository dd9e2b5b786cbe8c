import { defectChartsAddress, logsAddress, storageAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { refusal } from '@/shared/policy'
import { ButtonLink } from '@/app/ui/button'
import { Empty } from '@/app/ui/empty'
import { FirstStep } from '@/app/ui/first-step'
import { readProgrammeLines } from '@/lib/queries/works/programme-lines'
import { LogTable } from './log-table'
import { ProgrammeLines } from './programme-lines'
import { everyLog } from '@/shared/records/every-log'

export const generateMetadata = programmeTitle(({ code }) => `Logs, ${code}`)

/** The lines the boards are made on, and what is logged there as this programme reads it. */
export default programmePage(async ({ visit, code }) => {
  const logs = everyLog(visit.view.state.facts.records)
  const lines = await readProgrammeLines(visit.view.state.programme.id)
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
              <FirstStep
                first="What the machines of a stated line log counts here, for the days of this programme’s soldering runs there. First state the line."
                refused={refusal('state-line', view.actor)}
                href="#lines"
                does="State the line"
              />
            </Empty>
          )}
          <ProgrammeLines view={view} lines={lines} />
        </>
      )}
    </ProgrammeSheet>
  )
})
