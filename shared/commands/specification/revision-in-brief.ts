import { fromTo, valueInBrief } from '@/shared/commands/named'
import { findParameter } from '@/shared/catalogue/standard-plan'
import { valueDifference } from '@/shared/plan/value-difference'

const MAX_DIFFERENCES = 3

/** What a revision set: "0.2 mm → 0.25 mm"; of a table the cells that differ, or where they are many how many and the first. */
export function revisionInBrief(key: string, before: unknown, value: unknown): string {
  if (before === null) return valueInBrief(key, value)
  const differences = tableDifferences(key, before, value)
  const [first] = differences
  if (!first) return fromTo(valueInBrief(key, before), valueInBrief(key, value))
  return differences.length <= MAX_DIFFERENCES
    ? differences.join('; ')
    : `${differences.length} differences, the first: ${first}`
}

/** The cells and rows in which two values of a table differ, a line each; empty for a single value. */
export function tableDifferences(key: string, before: unknown, value: unknown): string[] {
  const parameter = findParameter(key)
  return parameter?.shape.kind === 'table' && Array.isArray(before) && Array.isArray(value)
    ? valueDifference(parameter, before, value)
    : []
}
