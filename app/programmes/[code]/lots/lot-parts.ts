import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Lot } from '@/shared/records/lot'
import { PLATING_PLACES, type PlatingPlace } from '@/shared/methods/plating-thickness'
import { methodName } from '@/shared/methods/test-methods'
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
        .filter(({ about }) => about?.['lot'] === lot.code)
        .map((part) => ({ rule: id, title, part })),
    ),
  )

/** The worst of them; undefined when no rule says anything of the lot. */
export const verdictOfLot = (parts: readonly LotPart[]): Verdict | undefined =>
  parts.length > 0 ? worstVerdict(parts.map(({ part }) => part.verdict)) : undefined

/** What the part is about beyond the lot itself: the test and its day, the deposit, the place. */
export function detailOf({ about = {} }: Part): string {
  const { method, testedOn, deposit, place } = about
  const details = [
    method && `${methodName(method)}${testedOn ? ` of ${testedOn}` : ''}`,
    deposit,
    place && PLATING_PLACES[place as PlatingPlace].label.toLowerCase(),
  ].filter(Boolean)
  return details.length > 0 ? `, ${details.join(', ')}` : ''
}
