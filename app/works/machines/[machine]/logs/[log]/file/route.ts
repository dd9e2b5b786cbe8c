import { machineLogAddress } from '@/app/addresses'
import { guarded } from '@/app/guard/guarded'
import { receiveCsv } from '@/app/imports/receive-csv'
import { mayAddReadings } from '../log-import'

/** Takes a CSV file of readings for a log, to be looked at before it is imported. */
export const POST = guarded(mayAddReadings, (call) => {
  const { machine, state } = call.right
  const back = machineLogAddress(machine.code, state.name)
  return receiveCsv(call, machine.id, back, (file) => `${back}/import?${new URLSearchParams({ file })}`)
})
