import { Client } from 'pg'
import { urlInUse } from '@/lib/db/url-in-use'
import { log } from '@/lib/log/log'

/** Told of a trail that has a new entry; without its id after a time in which nothing could be heard. */
type Hear = (trailId: string | undefined) => void

interface Hearing {
  readonly stop: () => void
  /** Settles once every later entry is heard of. */
  readonly heard: Promise<void>
}

interface Line {
  readonly hearers: Set<Hear>
  /** The connection, once it listens. */
  client: Promise<Client> | undefined
  unused: NodeJS.Timeout | undefined
}

const TRY_AGAIN_MS = 5_000
/** Pages ask again every minute, so that nobody listens for a moment. */
const LET_GO_AFTER_MS = 30_000

/** Kept on the global object: a development server loads this module anew at every change. */
const kept = globalThis as { liquidusTrailNews?: Line }

/**
 * Hears of every entry of every trail, whichever instance appended it, by one connection of its own for all who
 * listen. A lost connection is made again, and everybody told that they may have missed some.
 */
export function hearTrailNews(hear: Hear): Hearing {
  const line = (kept.liquidusTrailNews ??= { hearers: new Set(), client: undefined, unused: undefined })
  clearTimeout(line.unused)
  line.hearers.add(hear)
  line.client ??= connected(line)
  return {
    heard: line.client.then(() => undefined),
    stop: () => {
      line.hearers.delete(hear)
      if (line.hearers.size > 0) return
      line.unused = setTimeout(() => letGo(line), LET_GO_AFTER_MS)
      line.unused.unref()
    },
  }
}

function connected(line: Line): Promise<Client> {
  const client = new Client({ connectionString: urlInUse(), connectionTimeoutMillis: 10_000 })
  const listens = client
    .connect()
    .then(() => client.query('LISTEN trail_news'))
    .then(() => client)
  const lost = (error?: unknown) => {
    if (line.client !== listens) return
    line.client = undefined
    void client.end().catch(() => undefined)
    log.warn('News of the trails cannot be heard; trying again.', { error })
    setTimeout(() => void connectAgain(line), TRY_AGAIN_MS).unref()
  }
  client.on('notification', ({ payload }) => tell(line, payload?.split(' ')[0]))
  client.on('error', lost)
  client.on('end', () => lost())
  listens.catch(lost)
  return listens
}

async function connectAgain(line: Line): Promise<void> {
  if (line.client || line.hearers.size === 0) return
  line.client = connected(line)
  await line.client.then(() => tell(line, undefined)).catch(() => undefined)
}

const tell = ({ hearers }: Line, trailId: string | undefined): void => {
  for (const hear of hearers) hear(trailId)
}

function letGo(line: Line): void {
  const { client } = line
  line.client = undefined
  void client?.then((open) => open.end()).catch(() => undefined)
}
