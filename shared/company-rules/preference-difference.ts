import { sameValue } from '@/shared/plan/same-value'
import type { CompanyPreference } from './company-rule'

/** How a decision to keep a value of its own against a preferred one is told from one about a company rule. */
export const PREFERRED = 'preferred'

/** A value that a programme has specified, and in which revision. */
export interface ValueHere {
  readonly parameter: string
  readonly number: number
  readonly value: unknown
}

/** A programme's decision to keep its own value. */
export interface ValueKept {
  readonly preference: string
  readonly reason: string
  readonly by: string
  readonly at: string
}

/** A value that a programme specified otherwise than the works prefer it today. */
export interface PreferenceDifference {
  readonly preference: CompanyPreference
  readonly here: ValueHere
  /** The programme keeps its own, and why; null while it has not decided on this preference. */
  readonly kept: ValueKept | null
}

/**
 * The preferred values in force against what a programme specified, in the order in which they were stated. What it
 * has not specified is no difference: nothing of its own stands against the preferred value.
 */
export function preferenceDifferences(
  preferences: readonly CompanyPreference[],
  specified: readonly ValueHere[],
  kept: readonly ValueKept[],
): PreferenceDifference[] {
  const own = new Map(specified.map((value) => [value.parameter, value]))
  return preferences.flatMap((preference) => {
    const here = own.get(preference.parameter)
    if (preference.withdrawn !== null || !here || sameValue(here.value, preference.value)) return []
    return [{ preference, here, kept: kept.findLast((one) => one.preference === preference.id) ?? null }]
  })
}
