import { governingName, sourceOf } from '@/shared/rules/governing-source'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { reaffirmationAgeMax } from '@/shared/plan/limits/evaluation-storage'
import { daysBetween } from '@/shared/quantity/calendar'
import { formatQuantity } from '@/shared/quantity/format'
import type { Lot } from '@/shared/records/lot'
import { isUsable, lotName, aboutLot } from '@/shared/records/lot-identity'
import { verdictOn, type Judged, type Margin, type Part } from '@/shared/rules/finding'
import { resultAgeGuard } from '@/shared/plan/limits/evaluation-guards'
import { notApplicable } from '@/shared/rules/not-applicable'
import { lots } from '@/shared/rules/record-source'
import { rule, today } from '@/shared/rules/rule'
import {
  passingReads,
  solderabilityResults,
  type SolderabilityResult,
} from '@/shared/lot-tests/solderability-results'
import { spokenByWorst } from '@/shared/rules/worst-part'
import { measure } from '@/shared/rules/measure'

export const resultStillFresh = rule({
  id: 'result-still-fresh',
  title: 'Results still fresh while lots wait',
  why: 'A surface that wetted well goes on ageing in store. A result is a picture of the day of the test, and a lot that waits too long needs a new one.',
  formula: 'days since the newest test that passed under the specified conditions ≤ most',
  stage: 'evaluation',
  version: 4,
  reads: { ...passingReads, lots, max: reaffirmationAgeMax, guard: resultAgeGuard, today },
  judge(inputs): Judged {
    const { max } = inputs
    const limit = `soldered within ${formatQuantity(max.value, 'days')} of its newest result (${governingName(max)})`
    const parts = inputs.lots
      .filter(waits)
      .map((lot) => partOf(lot, solderabilityResults(lot, inputs).at(-1), inputs))
    if (parts.length === 0) return notApplicable('No lot of boards or components waits in store.')
    return {
      ...spokenByWorst(parts),
      limit,
      working: [],
      sources: [sourceOf(max)],
      notes: ['A lot that has gone into assemblies is judged by its time to soldering, in control.'],
    }
  },
})

/** In store and soldered into nothing yet. */
const waits = (lot: Lot): boolean =>
  lot.usedIn.length === 0 && isUsable(lot) && (lot.kind === 'bare board' || lot.kind === 'component')

function partOf(
  lot: Lot,
  newest: SolderabilityResult | undefined,
  {
    max,
    guard,
    today: now,
  }: { readonly max: GoverningRequirement; readonly guard: GoverningRequirement; readonly today: string },
): Part {
  const inStore = daysBetween(lot.receivedOn, now)
  const common = {
    subject: lotName(lot),
    about: aboutLot(lot),
    measured: { inStore: measure(inStore, 'days') },
  }
  const received = `received ${formatQuantity(inStore, 'days')} ago`
  if (!newest) {
    return {
      ...common,
      verdict: 'undetermined',
      found: `${received}; no solderability test of it counts.`,
      remedy: { message: 'Test a sample of the lot under the specified conditions.' },
    }
  }
  if (!newest.passed) {
    return {
      ...common,
      verdict: 'fails',
      measured: { ...common.measured, failedOn: newest.restsOn },
      found: `${received}; failed its newest test, of ${newest.restsOn}.`,
      remedy: { message: 'Reject the lot, or have it refinished and test it again.' },
    }
  }
  const age = daysBetween(newest.restsOn, now)
  const margin: Margin = {
    found: age,
    limit: max.value,
    unit: 'days',
    direction: 'at most',
    guardBand: (guard.value / 100) * max.value,
  }
  const verdict = verdictOn(margin)
  return {
    ...common,
    verdict,
    found: `${received}, newest result ${formatQuantity(age, 'days')} old (at most ${formatQuantity(max.value, 'days')}).`,
    margin,
    remedy:
      verdict === 'meets'
        ? undefined
        : { message: 'Test a sample of the lot again before it is soldered, or solder it by then.' },
  }
}
