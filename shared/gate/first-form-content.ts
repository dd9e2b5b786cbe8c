import { governingRequirement, type Limit, type Requirement } from '@/shared/plan/requirement'
import type { Finding } from '@/shared/rules/finding'
import { canonicalJson, type JsonValue } from '@/shared/trail/canonical-json'
import { coveredSubstance, limitsBehind } from './signed-content'
import { FIRST_DEFAULT_SOURCES, FIRST_QUESTIONS } from './first-form-words'
import type { PlannedItem, ProgrammeState } from './programme-state'

/*
 * The first form of what an approval covers. It holds words: what the item asks
 * and the source of a limit's default. Approvals given in it go on holding while
 * what stands today, in the words of then, is the text they covered.
 */

/** Whether a stored cover, of an item or a gate, has the first form, which had no number. One that cannot be read has none. */
export function hasFirstForm(signedContent: string): boolean {
  try {
    return !('form' in (JSON.parse(signedContent) as object))
  } catch (error) {
    if (error instanceof SyntaxError) return false
    throw error
  }
}

/** What an approval of the item would cover in the first form; undefined when what it asks has changed since. */
export function firstSignedContentOf(
  item: PlannedItem,
  state: ProgrammeState,
  findings: ReadonlyMap<string, Finding>,
): string | undefined {
  const asks = firstQuestion(item)
  if (asks === undefined) return undefined
  const limits = limitsBehind(item).map((limit) => [
    limit.key,
    firstRequirement(limit, state.facts.requirements),
  ])
  const substance = coveredSubstance(item, state, findings)
  return canonicalJson({
    ...substance,
    // What a programme does not raise met, before it had a verdict of its own.
    findings: substance.findings.map((finding) => ({
      ...finding,
      verdict: finding.verdict === 'not applicable' ? 'meets' : finding.verdict,
    })),
    asks,
    limits: Object.fromEntries(limits) as JsonValue,
  })
}

/** A standard item in the words of then, an added one in those of whoever added it. */
function firstQuestion({ definition, added }: PlannedItem): string | undefined {
  if (added) return definition.asks
  return definition.version === 1 ? FIRST_QUESTIONS[definition.key] : undefined
}

function firstRequirement(limit: Limit, requirements: readonly Requirement[]) {
  const { value, authority, document, kind } = governingRequirement(limit, requirements)
  const named = kind === 'default' ? (FIRST_DEFAULT_SOURCES[limit.key] ?? document) : document
  return { value, authority, document: named }
}
