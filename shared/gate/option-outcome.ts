import type { Finding } from '@/shared/rules/finding'
import type { StatedLimit } from '@/shared/plan/requirement'
import { readableOf, type AnyRule } from '@/shared/rules/rule'
import { sameFinding } from './finding-data'
import { judgedWith, previewBetween, type ChangePreview } from './change-preview'
import type { Judgement } from './judgement'
import type { OptionAlternative } from './option-alternative'
import { changesOf, limitsToState } from './option-study'
import type { ProgrammeState } from './programme-state'

/** What one alternative would give if it were adopted today. */
export interface OptionOutcome {
  readonly alternative: OptionAlternative
  /** Values other than today's, by parameter; none when it is what stands. */
  readonly changes: ReadonlyMap<string, unknown>
  /** Limits it would state that do not stand already. */
  readonly limits: readonly StatedLimit[]
  /** The specification with them. */
  readonly values: ReadonlyMap<string, unknown>
  /** By rule, of the rules that the comparison shows. */
  readonly findings: ReadonlyMap<string, Finding>
  readonly preview: ChangePreview
}

/** One rule that reads what the study compares, over all alternatives. */
export interface ComparedRule {
  readonly rule: AnyRule
  readonly itemKey: string
  readonly today: Finding | undefined
  /** `turns`: another verdict than today's with some alternative; `moves`: the same, by another number. */
  readonly effect: 'turns' | 'moves' | 'same'
}

export interface OptionComparison {
  /** The parameters that any alternative names. */
  readonly parameters: readonly string[]
  /** The limits that any alternative states. */
  readonly limits: readonly string[]
  readonly rules: readonly ComparedRule[]
  readonly outcomes: readonly OptionOutcome[]
}

/**
 * Judges each alternative by the programme's own rules on today's records.
 * Shown are the rules that read a compared parameter, of items that are not set
 * aside: those that turn first, then those that move, each in the plan's order.
 */
export function compareOptions(
  state: ProgrammeState,
  judgement: Judgement,
  alternatives: readonly OptionAlternative[],
): OptionComparison {
  const parameters = [...new Set(alternatives.flatMap(({ values }) => Object.keys(values)))]
  const limits = [...new Set(alternatives.flatMap((one) => one.limits.map(({ limit }) => limit)))]
  const readers = rulesReadingAny(state, { parameter: new Set(parameters), limit: new Set(limits) })
  const outcomes = alternatives.map((alternative) => outcomeOf(state, judgement, alternative, readers))
  const rules = readers.map(({ rule, itemKey }): ComparedRule => {
    const today = judgement.findings.get(rule.id)
    const found = outcomes.flatMap(({ findings }) => findings.get(rule.id) ?? [])
    return { rule, itemKey, today, effect: effectOf(today, found) }
  })
  return {
    parameters,
    limits,
    rules: EFFECTS.flatMap((effect) => rules.filter((row) => row.effect === effect)),
    outcomes,
  }
}

const EFFECTS = ['turns', 'moves', 'same'] as const

function outcomeOf(
  state: ProgrammeState,
  before: Judgement,
  alternative: OptionAlternative,
  readers: readonly { readonly rule: AnyRule }[],
): OptionOutcome {
  const changes = changesOf(alternative, state.facts.values)
  const limits = limitsToState(alternative, state.facts.requirements)
  const stated = limits.map((limit) => ({ ...limit, id: `option ${limit.limit}`, reason: '', lesson: null }))
  const after = changes.size + limits.length === 0 ? before : judgedWith(state, before, changes, stated)
  return {
    alternative,
    changes,
    limits,
    values: new Map([...state.facts.values, ...changes]),
    findings: new Map(
      readers.flatMap(({ rule: { id } }) => {
        const finding = after.findings.get(id)
        return finding ? [[id, finding] as const] : []
      }),
    ),
    preview: previewBetween(state, before, after),
  }
}

/** What a comparison is about: keys of parameters and of limits. */
interface Compared {
  readonly parameter: ReadonlySet<string>
  readonly limit: ReadonlySet<string>
}

const rulesReadingAny = (state: ProgrammeState, compared: Compared) =>
  state.items
    .filter(({ tailoredOut }) => !tailoredOut?.agreed)
    .flatMap(({ definition: { key, rules } }) => rules.map((rule) => ({ rule, itemKey: key })))
    .filter(({ rule }) =>
      Object.values(rule.reads)
        .map(readableOf)
        .some(
          ({ source, key }) => (source === 'parameter' || source === 'limit') && compared[source].has(key),
        ),
    )

function effectOf(today: Finding | undefined, found: readonly Finding[]): ComparedRule['effect'] {
  if (found.some(({ verdict }) => verdict !== today?.verdict)) return 'turns'
  return found.some((finding) => !today || !sameFinding(finding, today)) ? 'moves' : 'same'
}
