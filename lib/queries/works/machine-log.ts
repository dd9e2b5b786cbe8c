import { database } from '@/lib/db/client'
import { loadReadings } from '@/lib/programme/readings-cache'
import type { JudgedProgramme } from '@/lib/programme/judged'
import { readMachine, type MachineView } from '@/lib/queries/works/machine'
import type { LogState } from '@/lib/queries/works/line-states'
import type { Log } from '@/shared/records/log'

/** A log of a machine whole, and every programme that reads it, with the log as that programme reads it. */
export interface MachineLogView extends MachineView {
  readonly state: LogState
  readonly log: Log
  readonly readBy: readonly { readonly judged: JudgedProgramme; readonly log: Log }[]
}

/** Undefined when the machine has no log that is called so. */
export async function readMachineLog(machine: string, name: string): Promise<MachineLogView | undefined> {
  const view = await readMachine(machine)
  const state = view?.machine.states.find((one) => one.name === name)
  if (!view || !state) return undefined
  const batches = await database().readingBatch.findMany({
    where: { logId: state.id },
    select: { id: true, trailId: true, lotTestId: true, logId: true },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
  })
  const readings = await loadReadings(database(), batches)
  return {
    ...view,
    state,
    log: { ...state.latest, readings: readings.ofLog(state.id) },
    readBy: view.line.stated.flatMap((judged) => {
      const log = [...judged.state.facts.records.logs.values()].flat().find(({ id }) => id === state.id)
      return log ? [{ judged, log }] : []
    }),
  }
}
