import type { Facts } from '@/shared/rules/facts'
import { platingIndexes, type PlatingIndex } from './plating-index'
import { platingInputsOf } from './plating-inputs-of'

/** The plating indexes of a programme for its screens; none while something they read is not specified. */
export function platingIndexesOf(facts: Facts, confidence: number): PlatingIndex[] {
  const inputs = platingInputsOf(facts)
  return inputs ? platingIndexes(inputs, confidence) : []
}
