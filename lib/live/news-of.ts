import { AS_OF } from '@/lib/live/as-of'
import { eventStream } from '@/lib/live/event-stream'
import { hearTrailNews } from '@/lib/live/trail-news'

interface NewsOf {
  /** Whether news of a trail concerns the page. */
  readonly concerns: (trailId: string) => boolean
  /** What the page would be drawn as now: what came since the request says it was drawn is told at once. */
  readonly wouldBe: () => Promise<string | undefined>
}

/** An answer that tells an open page that what it shows has changed; it says nothing of what. */
export const newsOf = (
  { url, signal }: Pick<Request, 'url' | 'signal'>,
  { concerns, wouldBe }: NewsOf,
): Response =>
  eventStream(signal, (send) => {
    const { stop, heard } = hearTrailNews((trailId) => {
      if (trailId === undefined || concerns(trailId)) send()
    })
    const missed = async () => {
      await heard
      if ((await wouldBe()) !== new URL(url).searchParams.get(AS_OF)) send()
    }
    void missed().catch(() => send())
    return stop
  })
