import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Lot } from '@/shared/records/lot'
import { PLATING_PLACES, type PlatingPlace } from '@/shared/methods/plating-thickness'
import { methodName } from '@/shared/methods/test-methods'
import { storeClimateRule } from '@/shared/rules/control/store-climate'
import { instrumentsInCalibration } from '@/shared/rules/evaluation/instruments-in-calibration'
import { resultStillFresh } from '@/shared/rules/evaluation/result-still-fresh'
import { samplingPlanRisk } from '@/shared/rules/evaluation/sampling-plan-risk'
import { testConditionsAlike } from '@/shared/rules/evaluation/test-conditions-alike'
import { toldInWords } from '@/shared/lot-tests/stated-conditions'
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

/** What has failed where a rule fails on a lot: often the lot, but also how it was tried or kept. */
export type Blamed = 'lot' | 'plan' | 'test' | 'age of the test' | 'store'

/** What a part of a finding blames when it fails. */
export function blamedBy({ rule, part }: LotPart): Blamed {
  if (rule === resultStillFresh.id) return part.margin ? 'age of the test' : 'lot'
  return BLAMED[rule] ?? 'lot'
}

const BLAMED: Readonly<Record<string, Blamed>> = {
  [samplingPlanRisk.id]: 'plan',
  [testConditionsAlike.id]: 'test',
  [instrumentsInCalibration.id]: 'test',
  [storeClimateRule.id]: 'store',
}

/**
 * The worst that is said of the lot itself; undefined when no rule says anything
 * of it. A plan that lets much through is no verdict on a lot, and what was tried
 * or kept otherwise than specified shows nothing of it yet.
 */
export function verdictOfLot(parts: readonly LotPart[]): Verdict | undefined {
  const own = parts.filter((part) => blamedBy(part) !== 'plan')
  if (own.length === 0) return undefined
  return worstVerdict(
    own.map((one) =>
      one.part.verdict === 'fails' && blamedBy(one) !== 'lot' ? 'undetermined' : one.part.verdict,
    ),
  )
}

/** What the part is about beyond the lot itself: the test and its day, the deposit, the place. */
export function detailOf({ about = {} }: Part): string {
  const { method, testedOn, deposit, place } = about
  const details = [
    method && `${methodName(method)}${testedOn ? ` of ${testedOn}` : ''}`,
    toldInWords(about),
    deposit,
    place && PLATING_PLACES[place as PlatingPlace].label.toLowerCase(),
  ].filter(Boolean)
  return details.length > 0 ? `, ${details.join(', ')}` : ''
}
