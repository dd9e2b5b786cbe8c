import { logAddress } from '@/app/addresses'
import { guarded } from '@/app/guard/guarded'
import { mayInProgramme, type Rights } from '@/app/guard/rights'
import { receiveCsv } from '@/app/imports/receive-csv'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { logNamed } from '../log-of'

const mayAdd: Rights<{ code: string; log: string }, ProgrammeView> = async (person, params) => {
  const may = await mayInProgramme('add-readings')(person, params)
  return 'right' in may && !logNamed(may.right, params.log)
    ? { status: 404, message: 'There is no such log in this programme.' }
    : may
}

/** Takes a CSV file of readings for a log, to be looked at before it is imported. */
export const POST = guarded(mayAdd, (call) => {
  const back = logAddress(call.right.code, call.params.log)
  return receiveCsv(
    call,
    call.right.state.programme.id,
    back,
    (file) => `${back}/import?${new URLSearchParams({ file })}`,
  )
})
