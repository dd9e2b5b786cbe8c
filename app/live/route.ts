import { guarded } from '@/app/guard/guarded'
import { nothingMore } from '@/app/guard/rights'
import { newsOf } from '@/lib/live/news-of'
import { trailsOfDesk } from '@/lib/live/watched-trails'

/** News for somebody's open desk. */
export const GET = guarded(nothingMore, async ({ request, person: { personId } }) => {
  const trails = await trailsOfDesk(personId)
  return newsOf(request, {
    concerns: trails.has,
    wouldBe: async () => (await trailsOfDesk(personId)).mark,
  })
})
