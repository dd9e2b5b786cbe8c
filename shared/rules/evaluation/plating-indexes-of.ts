import type { Facts } from '@/shared/rules/facts'
import { readableOf, take, type Inputs } from '@/shared/rules/rule'
import { platingIndexes, type PlatingIndex } from './plating-index'
import { platingReads } from './plating-reads'
import { standingReads } from './sampling-reads'

const reads = { ...standingReads, ...platingReads } as const

/** The plating indexes of a programme for its screens; none while something they read is not specified. */
export function platingIndexesOf(facts: Facts, confidence: number): PlatingIndex[] {
  const inputs: Record<string, unknown> = {}
  for (const [name, read] of Object.entries(reads)) {
    const value = take(readableOf(read), facts)
    if (value === undefined && read.source !== 'optional') return []
    inputs[name] = value
  }
  return platingIndexes(inputs as unknown as Inputs<typeof reads>, confidence)
}
