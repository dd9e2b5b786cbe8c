import type { Facts } from '@/shared/rules/facts'
import { readableOf, take, type Inputs } from '@/shared/rules/rule'
import { platingReads } from './plating-reads'
import { standingReads } from '@/shared/sampling/sampling-reads'

const reads = { ...standingReads, ...platingReads } as const

/** What the rules on plating read, for screens; undefined while something of it is not specified. */
export function platingInputsOf(facts: Facts): Inputs<typeof reads> | undefined {
  const inputs: Record<string, unknown> = {}
  for (const [name, read] of Object.entries(reads)) {
    const value = take(readableOf(read), facts)
    if (value === undefined && read.source !== 'optional') return undefined
    inputs[name] = value
  }
  return inputs as unknown as Inputs<typeof reads>
}
