import { availableParallelism } from 'node:os'
import PQueue from 'p-queue'
import { Refused } from '@/shared/refused'

/** Who waits for a password to be hashed: people at work come before people at the door. */
export interface Place {
  readonly who: 'signed in' | 'signing in'
  /** Whose share of the line it takes: a person, or the origin of a sign-in. */
  readonly shareOf?: string
}

export interface LineLimits {
  /** How many hashes run side by side. */
  readonly atOnce: number
  /** How many of a kind may wait; a flood of sign-ins takes no place from people at work. */
  readonly maxWaiting: Readonly<Record<Place['who'], number>>
  /** How many places, running or waiting, one person or origin may hold. */
  readonly maxOfOne: number
}

/** Says that its holder's turn has come; only the line gives one, so that no hash runs beside it. */
export interface Turn {
  readonly from: 'the line'
}

/** What somebody for whom there is no place in the line should wait before the next try. */
export const LINE_EASES_AFTER_S = 5

/** No place in the line: nothing was looked up, hashed or counted. */
export class LineIsFull extends Refused {
  constructor() {
    super(
      `More passwords are waiting to be checked than this server can take. Try again in ${LINE_EASES_AFTER_S} seconds.`,
    )
  }
}

const PRIORITY = { 'signed in': 1, 'signing in': 0 } as const

/** Who is in a line: plain data and a queue, for the classes of two bundles of one module are not the same. */
interface Line {
  readonly queue: PQueue
  /** Places held, by whose share they take. */
  readonly held: Map<string, number>
}

const newLine = (atOnce: number): Line => ({ queue: new PQueue({ concurrency: atOnce }), held: new Map() })

/**
 * A bounded line for work that takes 128 MB and a fraction of a second of a core each. What finds no place is
 * refused at once with `LineIsFull`.
 */
export function hashLine(
  { atOnce, maxWaiting, maxOfOne }: LineLimits,
  { queue, held }: Line = newLine(atOnce),
) {
  return async <Result>({ who, shareOf }: Place, work: (turn: Turn) => Promise<Result>): Promise<Result> => {
    const priority = PRIORITY[who]
    const mine = shareOf === undefined ? 0 : (held.get(shareOf) ?? 0)
    if (mine >= maxOfOne || queue.sizeBy({ priority }) >= maxWaiting[who]) throw new LineIsFull()
    if (shareOf !== undefined) held.set(shareOf, mine + 1)
    try {
      return await queue.add(() => work({ from: 'the line' }), { priority })
    } finally {
      if (shareOf !== undefined) giveBack(held, shareOf)
    }
  }
}

function giveBack(held: Map<string, number>, shareOf: string): void {
  const left = (held.get(shareOf) ?? 1) - 1
  if (left > 0) held.set(shareOf, left)
  else held.delete(shareOf)
}

/**
 * Two at most: Node computes them on its four threads for files too, of which two stay free. Twenty sign-ins wait
 * about as long as a person would; an origin may hold half of that, so that the others still come in.
 */
const LIMITS: LineLimits = {
  atOnce: Math.min(2, availableParallelism()),
  maxWaiting: { 'signed in': 40, 'signing in': 20 },
  maxOfOne: 10,
}

/**
 * Kept on the global object: the server's bundles load this module more than once. Only who is in the line is kept
 * there, so that what a bundle throws is of the class that it knows.
 */
const kept = globalThis as { liquidusHashLine?: Line }

/** The one line of this process: memory and cores are this machine's, so every instance has its own. */
export const inHashLine = hashLine(LIMITS, (kept.liquidusHashLine ??= newLine(LIMITS.atOnce)))
