import { text } from '@/app/forms/typed-text'
import { mayAtTheWorks, type Rights } from '@/app/guard/rights'
import type { ImportPlace } from '@/app/imports/importer'
import { readMachineLog, type MachineLogView } from '@/lib/queries/works/machine-log'

interface LogAddress {
  readonly machine: string
  readonly log: string
}

/** A log of a machine, for everybody but an administrator. */
export const readsMachineLog: Rights<LogAddress, MachineLogView> = async (person, { machine, log }) => {
  if (person.administrator)
    return { status: 403, message: 'An administrator reads nothing of what the lines do.' }
  const view = await readMachineLog(machine, log)
  return view ? { right: view } : { status: 404, message: 'There is no such log of this machine.' }
}

/** The same, for whoever may add readings to it. */
export const mayAddReadings = mayAtTheWorks('add-readings', readsMachineLog)

/** Readings from a file, imported into a log of a machine. */
export const LOG_IMPORT: ImportPlace<LogAddress, MachineLogView> = {
  command: 'add-readings',
  rights: mayAddReadings,
  paramsIn: (form) => ({ machine: text(form, 'machine'), log: text(form, 'log') }),
  trailIdOf: ({ machine }) => machine.id,
}
