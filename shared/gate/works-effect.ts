import { previewBetween, type ChangePreview } from './change-preview'
import type { FactsChange } from './changed-facts'
import { judgeProgramme, type Judgement } from './judgement'
import type { ProgrammeState } from './programme-state'

/** What a change at the works would do in one programme. */
export interface EffectInProgramme {
  readonly programme: { readonly code: string; readonly title: string }
  readonly preview: ChangePreview
}

/** What a change at the works would do, before it is saved. */
export interface WorksEffect {
  /** How many programmes were looked at, and how many rest on it that were not. */
  readonly looked: number
  readonly more: number
  /** Those in which a finding turns or moves, or a signature lapses or holds again. */
  readonly programmes: readonly EffectInProgramme[]
  /** Nothing turns by itself: each programme would have to take it over first. */
  readonly onceTaken: boolean
}

/**
 * Judges each programme over its facts with the change in place of what is stored, and compares. Only rules that
 * read what changed are judged again; a programme that the change says nothing about is not judged at all.
 */
export const effectInEach = (
  programmes: readonly { readonly state: ProgrammeState; readonly judgement: Judgement }[],
  change: FactsChange,
): EffectInProgramme[] =>
  programmes.flatMap(({ state, judgement }) => {
    const facts = change(state.facts)
    if (facts === state.facts) return []
    const preview = previewBetween(state, judgement, judgeProgramme({ ...state, facts }, judgement))
    const { code, title } = state.programme
    return saysNothing(preview) ? [] : [{ programme: { code, title }, preview }]
  })

const saysNothing = (preview: ChangePreview): boolean =>
  Object.values<readonly unknown[]>({ ...preview }).every((entries) => entries.length === 0)
