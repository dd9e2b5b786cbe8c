import { z } from 'zod'
import { line, optionalLine } from '@/lib/commands/inputs'
import { findLimit } from '@/shared/catalogue/standard-plan'
import { numberWanted } from '@/shared/columns/number-wanted'
import { impossibleLimit } from '@/shared/plan/limit-range'
import { AUTHORITIES, type Authority, type Limit } from '@/shared/plan/requirement'
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

interface Demand {
  readonly limit: string
  readonly authority: Authority
  readonly value: number
  readonly relaxes: boolean
}

/** The limit that a demand is on; refused where it cannot be one, at boxes under `within`. */
export function limitOfDemand({ limit: key, authority, value, relaxes }: Demand, within = ''): Limit {
  const limit = findLimit(key)
  if (!limit) throw new Refused('There is no such limit.')
  const impossible = impossibleLimit(limit, value)
  if (impossible) throw new Refused(impossible, { [`${within}value`]: impossible })
  if (authority === 'common practice' && relaxes) {
    throw new Refused('Common practice cannot permit what a higher authority forbids.', {
      [`${within}relaxes`]: 'Only a company rule, a standard or the customer can relax a limit.',
    })
  }
  return limit
}
