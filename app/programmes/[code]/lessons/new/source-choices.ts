import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { findRule } from '@/shared/catalogue/standard-plan'
import { recordInWords } from '@/shared/records/record-in-words'
import type { RecordKindKey } from '@/shared/records/record-kinds'

/** Kinds of record that tell of something that went wrong, or was put right. */
export const TELLING: readonly RecordKindKey[] = [
  'field-return',
  'rework',
  'signal-answer',
  'defect-signal-answer',
  'supplier-action',
  'microsection',
]

/** Everything in a programme that a lesson can be learnt from: telling records first, then findings, then items. */
export function sourceChoices({ state, judgement }: ProgrammeView): { value: string; text: string }[] {
  return [
    ...TELLING.flatMap((kind) =>
      (state.facts.records.byKind.get(kind) ?? []).map((row) => ({
        value: `record:${row.id}`,
        text: cut(recordInWords(kind, row)),
      })),
    ),
    ...[...judgement.findings].map(([rule, { verdict }]) => ({
      value: `finding:${rule}`,
      text: cut(`Finding: ${findRule(rule)?.title ?? rule} (${verdict})`),
    })),
    ...state.items.map(({ definition }) => ({
      value: `item:${definition.key}`,
      text: cut(`Item: ${definition.title}`),
    })),
  ]
}

const cut = (text: string): string => (text.length > 110 ? `${text.slice(0, 108)}…` : text)
