import { z } from 'zod'
import { line, optionalLine } from '@/lib/commands/inputs'
import { findLimit } from '@/shared/catalogue/standard-plan'
import { numberWanted } from '@/shared/columns/number-wanted'
import { impossibleLimit } from '@/shared/plan/limit-range'
import { AUTHORITIES, type Limit, type StatedLimit } from '@/shared/plan/requirement'
import { Refused } from '@/shared/refused'

/** One document's demand on a limit, as it is typed. */
export const demandBoxes = {
  limit: line('The limit'),
  authority: z.enum(AUTHORITIES, { error: 'Choose where the demand comes from.' }),
  document: line('The document', 160),
  clause: optionalLine('The clause', 80),
  value: z.number({ error: numberWanted('The limit') }),
  relaxes: z.boolean().default(false),
} as const

type Demand = Pick<StatedLimit, 'limit' | 'authority' | 'value' | 'relaxes'>

/** Why a limit cannot be demanded so, and at which box; undefined when it can. */
export function faultOfDemand({
  limit: key,
  authority,
  value,
  relaxes,
}: Demand): { readonly box: 'limit' | 'value' | 'relaxes'; readonly message: string } | undefined {
  const limit = findLimit(key)
  if (!limit) return { box: 'limit', message: 'There is no such limit.' }
  const impossible = impossibleLimit(limit, value)
  if (impossible) return { box: 'value', message: impossible }
  return authority === 'common practice' && relaxes
    ? { box: 'relaxes', message: 'Common practice cannot permit what a higher authority forbids.' }
    : undefined
}

/** The limit that a demand is on; refused where it cannot be one, at boxes under `within`. */
export function limitOfDemand(demand: Demand, within = ''): Limit {
  const limit = findLimit(demand.limit)
  const fault = faultOfDemand(demand)
  if (!fault && limit) return limit
  const { box, message } = fault ?? { box: 'limit', message: 'There is no such limit.' }
  // Without its limit a form has no box to point at.
  const fields = box === 'limit' ? {} : { [`${within}${box}`]: AT_BOX[box] ?? message }
  throw new Refused(message, fields)
}

/** What a box says, where that is something else than the sentence of the refusal. */
const AT_BOX: Partial<Record<string, string>> = {
  relaxes: 'Only a company rule, a standard or the customer can relax a limit.',
}
