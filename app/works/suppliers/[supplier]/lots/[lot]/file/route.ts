import { worksLotAddress } from '@/app/addresses'
import { guarded } from '@/app/guard/guarded'
import { receiveCsv } from '@/app/imports/receive-csv'
import { mayTestLot } from '../lot-import'

/** Takes a CSV file of a test's readings, to be looked at before the test is recorded. */
export const POST = guarded(mayTestLot, (call) => {
  const { request, right } = call
  const address = worksLotAddress(right.supplier, right.lot)
  const method = new URL(request.url).searchParams.get('method') ?? ''
  return receiveCsv(
    call,
    right.supplierId,
    `${address}?${new URLSearchParams({ method })}`,
    (file) => `${address}/import?${new URLSearchParams({ file, method })}`,
  )
})
