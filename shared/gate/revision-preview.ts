import { findParameter } from '@/shared/catalogue/standard-plan'
import { sameValue } from '@/shared/plan/same-value'
import { changePreview, type ChangePreview } from './change-preview'
import type { Judgement } from './judgement'
import type { ProgrammeState } from './programme-state'

/** What saving a value as typed would change, or why it cannot be told: the first sentence, and one a field. */
export type RevisionPreview =
  | { readonly preview: ChangePreview }
  | { readonly message: string; readonly fields: Readonly<Record<string, string>> }

/** Reads a value as the specification would hold it and judges the programme with it; nothing is stored. */
export function revisionPreview(
  state: ProgrammeState,
  judgement: Judgement,
  key: string,
  value: unknown,
): RevisionPreview {
  const parameter = findParameter(key)
  if (!parameter) return { message: 'The specification has no such parameter.', fields: {} }
  const parsed = parameter.schema.safeParse(value)
  if (!parsed.success) {
    const fields = Object.fromEntries(
      parsed.error.issues.map(({ path, message }) => [['value', ...path.map(String)].join('.'), message]),
    )
    return { message: Object.values(fields)[0] ?? 'The value cannot be read.', fields }
  }
  if (sameValue(state.facts.values.get(key), parsed.data))
    return { message: 'This is the value it has already; saving it would change nothing.', fields: {} }
  return { preview: changePreview(state, judgement, key, parsed.data) }
}
