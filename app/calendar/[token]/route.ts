import { guardedByAddress } from '@/app/guard/guarded-by-address'
import { placeAddress } from '@/app/place-address'
import { deskCalendar } from '@/lib/exports/desk-calendar'
import { deskOf } from '@/lib/queries/desk'
import { settings } from '@/lib/settings/settings'

/** The due days of a person's desk, for their calendar program. */
export const GET = guardedByAddress(async (_request, owner) => {
  const now = new Date()
  const { lines } = await deskOf(owner, now)
  const text = deskCalendar(lines, ({ code, place }) => `${settings().url}${placeAddress(code, place)}`, now)
  return new Response(text, {
    headers: {
      'content-type': 'text/calendar; charset=utf-8',
      'cache-control': 'private, no-store',
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
    },
  })
})
