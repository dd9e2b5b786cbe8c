import { namedRuling, sourceOf } from '@/shared/rules/ruling-source'
import { reaffirmationAgeMost } from '@/shared/plan/limits/evaluation-storage'
import { daysBetween } from '@/shared/quantity/calendar'
import { formatQuantity } from '@/shared/quantity/format'
import type { Lot } from '@/shared/records/lot'
import { isUsable, lotName, aboutLot } from '@/shared/records/lot-identity'
import { isSolderabilityMethod } from '@/shared/methods/test-methods'
import { verdictOn, type Judged, type Margin, type Part } from '@/shared/rules/finding'
import { rule, today } from '@/shared/rules/rule'
import { demandsFrom, standingReads } from '@/shared/sampling/sampling-reads'
import { whySetAside, type TestDemands } from '@/shared/sampling/test-status'
import { spokenByWorst } from '@/shared/rules/worst-part'
import { measure } from '@/shared/rules/measure'

/** Share of the age allowed that leaves time for a new test. */
const GUARD_SHARE = 0.25

export const resultStillFresh = rule({
  id: 'result-still-fresh',
  title: 'Results still fresh while lots wait',
  why: 'A surface that wetted well goes on ageing in store. A result is a picture of the day of the test, and a lot that waits too long needs a new one.',
  formula: 'days since the newest test that passed under the specified conditions ≤ most',
  stage: 'evaluation',
  version: 1,
  reads: { ...standingReads, most: reaffirmationAgeMost, today },
  judge(inputs): Judged {
    const { most } = inputs
    const limit = `soldered within ${formatQuantity(most.value, 'days')} of its newest result (${namedRuling(most)})`
    const demands = demandsFrom(inputs)
    const parts = inputs.lots.flatMap((lot) => partOf(lot, demands, most.value, inputs.today))
    const base = { limit, working: [], sources: [sourceOf(most)] }
    if (parts.length === 0) {
      return { verdict: 'meets', found: 'No tested lot waits in store.', ...base }
    }
    return {
      ...spokenByWorst(parts),
      ...base,
      notes: ['A lot that has gone into assemblies is judged by its time to soldering, in control.'],
    }
  },
})

function partOf(lot: Lot, demands: TestDemands, mostDays: number, now: string): Part[] {
  if (lot.usedIn.length > 0 || !isUsable(lot) || (lot.kind !== 'bare board' && lot.kind !== 'component'))
    return []
  const dates = lot.tests
    .filter((test) => isSolderabilityMethod(test.method) && whySetAside(test, demands) === undefined)
    .map(({ testedOn }) => testedOn)
  if (dates.length === 0) return []
  const newest = dates.reduce((latest, date) => (date > latest ? date : latest))
  const age = daysBetween(newest, now)
  const margin: Margin = {
    found: age,
    limit: mostDays,
    unit: 'days',
    direction: 'at most',
    guardBand: GUARD_SHARE * mostDays,
  }
  const verdict = verdictOn(margin)
  return [
    {
      subject: lotName(lot),
      about: aboutLot(lot),
      verdict,
      measured: { inStore: measure(daysBetween(lot.receivedOn, now), 'days') },
      found: `received ${formatQuantity(daysBetween(lot.receivedOn, now), 'days')} ago, newest result ${formatQuantity(age, 'days')} old (at most ${formatQuantity(mostDays, 'days')}).`,
      margin,
      remedy:
        verdict === 'meets'
          ? undefined
          : { says: 'Test a sample of the lot again before it is soldered, or solder it by then.' },
    },
  ]
}
