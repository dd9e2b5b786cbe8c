import { AS_OF } from '@/app/addresses'
import { guarded } from '@/app/guard/guarded'
import { readsTrails } from '@/app/guard/rights'
import { newsOf } from '@/lib/live/news-of'
import { trailsOfTheWorks } from '@/lib/live/watched-trails'

/** News for the open pages of the lines. */
export const GET = guarded(readsTrails, async ({ request }) =>
  newsOf(request.signal, {
    concerns: () => true,
    drawnAs: new URL(request.url).searchParams.get(AS_OF),
    wouldBe: async () => (await trailsOfTheWorks()).mark,
  }),
)
