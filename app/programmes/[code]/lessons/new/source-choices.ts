import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { findRule } from '@/shared/catalogue/standard-plan'
import { recordInWords } from '@/shared/records/record-in-words'
import { RECORD_KINDS, type RecordKindKey } from '@/shared/records/record-kinds'

const TEACHING = (Object.keys(RECORD_KINDS) as RecordKindKey[]).filter((key) => RECORD_KINDS[key].teaches)

/** Everything in a programme that a lesson can be learnt from: telling records first, then findings, then items. */
export function sourceChoices({ state, judgement }: ProgrammeView): { value: string; text: string }[] {
  return [
    ...TEACHING.flatMap((kind) =>
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
