import { findParameter } from '@/shared/catalogue/standard-plan'
import { liveFindings, turnsOf, type LiveTurns, type SpecificationFacts } from '@/shared/gate/live-turns'
import type { Margin, Verdict } from '@/shared/rules/finding'

/** What another value would do: to the findings in words, and to the margins by the rule’s id. */
export type MarginsAnswer =
  | { readonly message: string }
  | {
      readonly turns: LiveTurns
      readonly moved: ReadonlyMap<string, { readonly verdict: Verdict; readonly margin: Margin | undefined }>
    }

/** Judges in the browser, by the rules that judge on the server; loaded only once a value is tried. */
export function judgeMargins(key: string, value: number, facts: SpecificationFacts): MarginsAnswer {
  const parameter = findParameter(key)
  if (!parameter) return { message: 'The specification has no such parameter.' }
  const parsed = parameter.schema.safeParse(value)
  if (!parsed.success) return { message: parsed.error.issues[0]?.message ?? 'The value cannot be read.' }
  const findings = liveFindings(parameter, parsed.data, facts)
  return {
    turns: turnsOf(parameter, findings),
    moved: new Map(findings.map(({ is: { rule, verdict, margin } }) => [rule, { verdict, margin }] as const)),
  }
}
