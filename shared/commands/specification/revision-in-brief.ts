import { fromTo, valueInBrief } from '@/shared/commands/named'
import { findParameter } from '@/shared/catalogue/standard-plan'
import { valueDifference } from '@/shared/plan/value-difference'

const MAX_DIFFERENCES = 3

/** What a revision set: "0.2 mm → 0.25 mm"; of a table the cells that differ, or how many rows where they are many. */
export function revisionInBrief(key: string, before: unknown, value: unknown): string {
  if (before === null) return valueInBrief(key, value)
  const parameter = findParameter(key)
  const differences =
    parameter?.shape.kind === 'table' && Array.isArray(before) && Array.isArray(value)
      ? valueDifference(parameter, before, value)
      : []
  return differences.length > 0 && differences.length <= MAX_DIFFERENCES
    ? differences.join('; ')
    : fromTo(valueInBrief(key, before), valueInBrief(key, value))
}
