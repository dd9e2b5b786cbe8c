import { lotAddress } from '@/app/addresses'
import { guarded } from '@/app/guard/guarded'
import { mayInProgramme, type Rights } from '@/app/guard/rights'
import { receiveCsv } from '@/app/imports/receive-csv'
import type { ProgrammeView } from '@/lib/queries/programme-reader'

const mayTest: Rights<{ code: string; lot: string }, ProgrammeView> = async (person, params) => {
  const may = await mayInProgramme('test-lot')(person, params)
  return 'right' in may && !may.right.state.facts.records.lots.some(({ code }) => code === params.lot)
    ? { status: 404, message: 'There is no such lot in this programme.' }
    : may
}

/** Takes a CSV file of a test's readings, to be looked at before the test is recorded. */
export const POST = guarded(mayTest, (call) => {
  const { request, params, right } = call
  const address = lotAddress(right.code, params.lot)
  const method = new URL(request.url).searchParams.get('method') ?? ''
  return receiveCsv(
    call,
    right.state.programme.id,
    `${address}?${new URLSearchParams({ method })}`,
    (file) => `${address}/import?${new URLSearchParams({ file, method })}`,
  )
})
