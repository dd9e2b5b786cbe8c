import { guarded } from '@/app/guard/guarded'
import { readsProgramme } from '@/app/guard/rights'
import { newsOf } from '@/lib/live/news-of'
import { trailsOfProgramme } from '@/lib/live/trails-of-programme'
import { judgedProgramme } from '@/lib/programme/judged'

/** News for the open pages of a programme. */
export const GET = guarded(readsProgramme, async ({ request, right: { code, state } }) => {
  const trails = await trailsOfProgramme(state.programme.id)
  return newsOf(request, {
    concerns: (trailId) => trails.has(trailId),
    wouldBe: async () => (await judgedProgramme(code))?.asOf,
  })
})
