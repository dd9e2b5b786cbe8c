import { guarded } from '@/app/guard/guarded'
import type { Rights } from '@/app/guard/rights'
import { works } from '@/lib/settings/works'
import { tableRows } from '@/lib/spreadsheets/table-rows'
import { Refused } from '@/shared/refused'

const LARGEST_BYTES = 5 * 1024 * 1024
/** Around the file, what a form adds. */
const AROUND_IT_BYTES = 10_000

/** Whoever is signed in may have a table of their own read: nothing of it is kept, and nothing else is told. */
const signedIn: Rights<unknown, undefined> = async () => ({ right: undefined })

/** The rows of a table that was pasted or chosen, for the form it is filled into. */
export const POST = guarded(signedIn, async ({ request }) => {
  if (!(Number(request.headers.get('content-length')) <= LARGEST_BYTES + AROUND_IT_BYTES))
    return refused('The table takes more than 5 MiB. Take it in several goes.', 413)
  const form = await request.formData().catch(() => undefined)
  const table = form?.get('table')
  if (!table) return refused('Paste the rows, or choose a file.')
  const given = typeof table === 'string' ? Buffer.from(table) : Buffer.from(await table.arrayBuffer())
  if (given.length === 0) return refused('Paste the rows, or choose a file that is not empty.')
  if (given.length > LARGEST_BYTES)
    return refused('The table takes more than 5 MiB. Take it in several goes.', 413)
  try {
    return Response.json(await tableRows(given, works()), { headers: { 'cache-control': 'no-store' } })
  } catch (error) {
    if (error instanceof Refused) return refused(error.message)
    throw error
  }
})

const refused = (message: string, status = 400): Response => Response.json({ message }, { status })
