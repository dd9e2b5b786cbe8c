import { trailsOfTheWorks } from '@/lib/live/watched-trails'
import { readLinesAgainst, withDue, type LineAsRead, type LineState } from '@/lib/queries/works/line-states'
import { readRunningOut, type Ending } from '@/lib/queries/works/running-out'
import { dateAtWorks } from '@/lib/settings/works'

/** What whoever runs the lines opens in the morning. */
export interface WorksHome {
  readonly lines: readonly LineState[]
  readonly endings: readonly Ending[]
  readonly today: string
  /** How far all trails are. */
  readonly mark: string
}

interface Kept {
  readonly key: string
  readonly lines: Promise<LineAsRead[]>
  readonly endings: Promise<Ending[]>
}

/** Nothing changes a fact without an entry in a trail: how far all trails are, and the day, name what is shown exactly. */
let kept: Kept | undefined

/** Every line as it stands, and what runs out: one statement as long as nobody has recorded anything. */
export async function readWorksHome(now = new Date()): Promise<WorksHome> {
  const today = dateAtWorks(now)
  const { mark } = await trailsOfTheWorks()
  const { lines, endings } = keptAt(`${mark} ${today}`, today, now)
  return {
    lines: (await lines).map((line) => withDue(line, now)),
    endings: await endings,
    today,
    mark,
  }
}

function keptAt(key: string, today: string, now: Date): Kept {
  if (kept?.key === key) return kept
  const read = { key, lines: readLinesAgainst(undefined, now), endings: readRunningOut(today) }
  kept = read
  for (const part of [read.lines, read.endings])
    part.catch(() => {
      if (kept === read) kept = undefined
    })
  return read
}
