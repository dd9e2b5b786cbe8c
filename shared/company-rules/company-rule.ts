import type { Requirement } from '@/shared/plan/requirement'
import type { JsonValue } from '@/shared/trail/canonical-json'

/** Somebody's name, and the instant, RFC 3339. */
interface By {
  readonly by: string
  readonly at: string
}

/** A limit that the company asks of every programme. */
export interface CompanyRule {
  readonly id: string
  readonly limit: string
  readonly value: number
  readonly relaxes: boolean
  readonly document: string
  readonly edition: string
  readonly clause: string
  readonly reason: string
  /** The rule whose place it took. */
  readonly replaces: string | null
  readonly stated: By & { readonly byId: string }
  readonly withdrawn: (By & { readonly why: string }) | null
}

/** A value that programmes start with, unless they are given another. */
export interface CompanyPreference {
  readonly id: string
  readonly parameter: string
  readonly value: JsonValue
  readonly reason: string
  readonly stated: By
  readonly withdrawn: (By & { readonly why: string }) | null
}

type Named = Pick<CompanyRule, 'document' | 'edition' | 'clause'>

/** The document with its edition, as a requirement names it: "Soldering handbook, edition 4". */
export const documentOf = ({ document, edition }: Pick<Named, 'document' | 'edition'>): string =>
  edition ? `${document}, ${edition}` : document

/** "Soldering handbook, edition 4, clause 3.2" */
export const companyRuleName = (rule: Named): string =>
  rule.clause ? `${documentOf(rule)}, ${rule.clause}` : documentOf(rule)

/** A company rule as a programme lays it on the limit, without the requirement's own id. */
export const requirementOfRule = (
  rule: Pick<CompanyRule, 'limit' | 'value' | 'relaxes' | 'reason'> & Named,
): Omit<Requirement, 'id' | 'lesson'> => ({
  limit: rule.limit,
  authority: 'company',
  document: documentOf(rule),
  clause: rule.clause,
  value: rule.value,
  relaxes: rule.relaxes,
  reason: rule.reason,
})
