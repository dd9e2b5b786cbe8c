import type { Finding } from '@/shared/rules/finding'
import { readableOf, type AnyRule } from '@/shared/rules/rule'
import { sameFinding } from './finding-data'
import { judgedWith, previewBetween, type ChangePreview } from './change-preview'
import type { Judgement } from './judgement'
import { changesOf, type OptionAlternative } from './option-study'
import type { ProgrammeState } from './programme-state'

/** What one alternative would give if it were adopted today. */
export interface OptionOutcome {
  readonly alternative: OptionAlternative
  /** Values other than today's, by parameter; none when it is what stands. */
  readonly changes: ReadonlyMap<string, unknown>
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
  const readers = rulesReadingAny(state, new Set(parameters))
  const outcomes = alternatives.map((alternative) => outcomeOf(state, judgement, alternative, readers))
  const rules = readers.map(({ rule, itemKey }): ComparedRule => {
    const today = judgement.findings.get(rule.id)
    const found = outcomes.flatMap(({ findings }) => findings.get(rule.id) ?? [])
    return { rule, itemKey, today, effect: effectOf(today, found) }
  })
  return {
    parameters,
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
  const after = changes.size === 0 ? before : judgedWith(state, before, changes)
  return {
    alternative,
    changes,
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

const rulesReadingAny = (state: ProgrammeState, parameters: ReadonlySet<string>) =>
  state.items
    .filter(({ tailoredOut }) => !tailoredOut?.agreed)
    .flatMap(({ definition: { key, rules } }) => rules.map((rule) => ({ rule, itemKey: key })))
    .filter(({ rule }) => Object.values(rule.reads).some((read) => parameters.has(readableOf(read).key)))

function effectOf(today: Finding | undefined, found: readonly Finding[]): ComparedRule['effect'] {
  if (found.some(({ verdict }) => verdict !== today?.verdict)) return 'turns'
  return found.some((finding) => !today || !sameFinding(finding, today)) ? 'moves' : 'same'
}
