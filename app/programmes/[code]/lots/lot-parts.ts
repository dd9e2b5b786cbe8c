import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Lot } from '@/shared/records/lot'
import { worstVerdict, type Part, type Verdict } from '@/shared/rules/finding'

/** What one rule found on one lot. */
export interface LotPart {
  readonly rule: string
  readonly title: string
  readonly part: Part
}

/** What the rules found on this very lot, rule by rule. */
export const partsOfLot = (view: ProgrammeView, lot: Lot): LotPart[] =>
  view.state.items.flatMap(({ definition }) =>
    definition.rules.flatMap(({ id, title }) =>
      (view.judgement.findings.get(id)?.parts ?? [])
        .filter(({ subject }) => names(subject, lot.code))
        .map((part) => ({ rule: id, title, part })),
    ),
  )

/** The worst of them; undefined when no rule says anything of the lot. */
export const verdictOfLot = (parts: readonly LotPart[]): Verdict | undefined =>
  parts.length > 0 ? worstVerdict(parts.map(({ part }) => part.verdict)) : undefined

/** A subject such as "lot B-26 (bare board)" names B-26, and not B-2609. */
function names(subject: string, code: string): boolean {
  const at = subject.toLowerCase().indexOf(`lot ${code.toLowerCase()}`)
  return at >= 0 && !/[\p{L}\p{N}-]/u.test(subject[at + 4 + code.length] ?? '')
}

/** What the finding's subject says beyond the lot itself: the place, the test. */
export function detailOf(subject: string): string {
  const [, detail = ''] = /^lot [^,(]+(?:\([^)]*\))?,? ?(.*)$/i.exec(subject) ?? []
  return detail ? `, ${detail}` : ''
}
