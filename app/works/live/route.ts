import { guarded } from '@/app/guard/guarded'
import { readsTrails } from '@/app/guard/rights'
import { newsOf } from '@/lib/live/news-of'
import { trailsOfTheWorks } from '@/lib/live/watched-trails'

/** News for the open pages of the lines. */
export const GET = guarded(readsTrails, async ({ request }) =>
  newsOf(request, {
    concerns: () => true,
    wouldBe: async () => (await trailsOfTheWorks()).mark,
  }),
)
