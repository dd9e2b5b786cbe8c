import { z } from 'zod'
import type { DepartureBounds } from '@/shared/gate/deviation-permit'
import { boundInWords, limitName } from '@/shared/commands/named'

/** How far a finding may depart, as an entry recorded it. */
export const recordedDeparture = z.union([
  z.object({ kind: z.literal('limit'), limit: z.string(), value: z.number() }),
  z.object({ kind: z.literal('parts'), way: z.enum(['fails', 'undetermined']), parts: z.array(z.string()) }),
])

export type RecordedDeparture = z.infer<typeof recordedDeparture>

const WAYS = { fails: 'may fail', undetermined: 'may stay undetermined' } as const

/** "Wetting time: at most 3 s.", "L-7 and L-8 may fail." */
export function departureInWords(permit: DepartureBounds | RecordedDeparture): string {
  if (permit.kind === 'limit')
    return `${limitName(permit.limit)}: ${boundInWords(permit.limit, permit.value)} permitted.`
  const { parts, way } = permit
  const named = parts.length === 0 ? 'Whatever is looked at' : listed(parts)
  return `${named} ${WAYS[way]}.`
}

const listed = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`

/** "concession 4", "deviation permit 3" */
export const concessionInWords = (number: number, permit: unknown): string =>
  `${permit ? 'deviation permit' : 'concession'} ${number}`
