import { eventStream } from '@/lib/live/event-stream'
import { hearTrailNews } from '@/lib/live/trail-news'

interface NewsOf {
  /** Whether news of a trail concerns the page. */
  readonly concerns: (trailId: string) => boolean
  /** What the page was drawn as, and what it would be drawn as now: what came in between is told at once. */
  readonly drawnAs: string | null
  readonly wouldBe: () => Promise<string | undefined>
}

/** An answer that tells an open page that what it shows has changed; it says nothing of what. */
export const newsOf = (signal: AbortSignal, { concerns, drawnAs, wouldBe }: NewsOf): Response =>
  eventStream(signal, (send) => {
    const { stop, heard } = hearTrailNews((trailId) => {
      if (trailId === undefined || concerns(trailId)) send()
    })
    const missed = async () => {
      await heard
      if ((await wouldBe()) !== drawnAs) send()
    }
    void missed().catch(() => send())
    return stop
  })
