import { guarded } from '@/app/guard/guarded'
import { readsProgramme } from '@/app/guard/rights'
import { eventStream } from '@/lib/live/event-stream'
import { hearTrailNews } from '@/lib/live/trail-news'
import { trailsOfProgramme } from '@/lib/live/trails-of-programme'
import { judgedProgramme } from '@/lib/programme/judged'

/** Tells an open page of the programme that what it shows has changed. It says nothing of what. */
export const GET = guarded(readsProgramme, async ({ request, right: { code, state } }) => {
  const trails = await trailsOfProgramme(state.programme.id)
  const drawnAsOf = new URL(request.url).searchParams.get('as-of')
  return eventStream(request.signal, (send) => {
    const { stop, heard } = hearTrailNews((trailId) => {
      if (trailId === undefined || trails.has(trailId)) send()
    })
    const missed = async () => {
      await heard
      if ((await judgedProgramme(code))?.asOf !== drawnAsOf) send()
    }
    void missed().catch(() => send())
    return stop
  })
})
