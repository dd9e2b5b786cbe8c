import { reworkSummary } from '@/shared/inspection/rework-summary'
import { workingHourCost } from '@/shared/plan/parameters/assessment-proof'
import type { Facts } from '@/shared/rules/facts'
import { reworkRecords } from '@/shared/rules/assembly-record-sources'

/** What rework has cost so far. */
export interface ReworkOnRecord {
  readonly joints: number
  /** Assemblies that were inspected, reworked or not. */
  readonly assemblies: number
  readonly cost: number
  readonly costPerAssembly: number
  /** Hours have a price; else the cost is material alone. */
  readonly priced: boolean
}

/** Rework on record over the assemblies inspected; undefined before both are there. */
export function reworkOnRecord({
  records,
  values,
}: Pick<Facts, 'records' | 'values'>): ReworkOnRecord | undefined {
  const rework = reworkRecords.from(records)
  const assemblies = new Set(records.inspections.map(({ assembly }) => assembly.trim().toLowerCase())).size
  if (rework.length === 0 || assemblies === 0) return undefined
  const hourCost = values.get(workingHourCost.key)
  const priced = typeof hourCost === 'number'
  const { joints, cost } = reworkSummary(rework, priced ? hourCost : 0)
  return { joints: joints.length, assemblies, cost, costPerAssembly: cost / assemblies, priced }
}
