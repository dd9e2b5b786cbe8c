import { firstPassYieldLeast } from '@/shared/plan/limits/assessment-inspection'
import { formatAgainst, formatNumber, formatQuantity } from '@/shared/quantity/format'
import {
  undetermined,
  verdictOn,
  worstVerdict,
  type Judged,
  type Margin,
  type Part,
} from '@/shared/rules/finding'
import { count } from '@/shared/rules/measure'
import { rule } from '@/shared/rules/rule'
import { namedRuling, sourceOf } from '@/shared/rules/ruling-source'
import { exactProportionInterval } from '@/shared/statistics/intervals/exact-proportion'
import { firstPassYield as yieldOf } from '@/shared/statistics/yield/process-yield'
import { electricalTests } from '@/shared/rules/assembly-record-sources'

/** Inside by less than one point of yield is marginal. */
const GUARD_PCT = 1
const CONFIDENCE = 0.9

export const firstPassYield = rule({
  id: 'first-pass-yield',
  title: 'First-pass yield of electrical test',
  why: 'Boards that pass only after repair carry repaired joints; the share that passes at first says what soldering is worth before anyone mends it.',
  formula: 'passed at first/tested, its lower bound ≥ least',
  stage: 'assessment',
  version: 2,
  reads: { least: firstPassYieldLeast, tests: electricalTests },
  judge({ least, tests }): Judged {
    const limit = `At least ${formatQuantity(least.value, '%')} pass at the first test (${namedRuling(least)}).`
    if (tests.length === 0)
      return undetermined('No electrical test is recorded yet.', ['electrical tests'], limit)
    const contradictory = tests.find(({ tested, passedFirst }) => passedFirst > tested)
    if (contradictory)
      return {
        verdict: 'fails',
        measured: {
          contradictory: contradictory.assembly,
          on: contradictory.testedOn,
          tested: count(contradictory.tested, 'boards'),
          passed: count(contradictory.passedFirst, 'boards'),
        },
        found: `${contradictory.assembly}, ${contradictory.testedOn}: more passed (${contradictory.passedFirst}) than were tested (${contradictory.tested}).`,
        limit,
        working: [],
        sources: [sourceOf(least)],
        remedy: { says: 'Withdraw that record and enter it right.' },
      }
    const tested = tests.reduce((sum, row) => sum + row.tested, 0)
    const passed = tests.reduce((sum, row) => sum + row.passedFirst, 0)
    const joints = tests.reduce((sum, row) => sum + row.jointFailures, 0)
    const share = yieldOf(passed, tested) * 100
    const bounds = exactProportionInterval({ found: passed, inspected: tested }, CONFIDENCE)
    const margin: Margin = {
      found: share,
      limit: least.value,
      unit: '%',
      direction: 'at least',
      guardBand: GUARD_PCT,
    }
    const printed = formatAgainst(share, least.value, '%')
    const months = byMonth(tests, least.value)
    const needed = Math.ceil((least.value * tested - 100 * passed) / (100 - least.value) - 1e-9)
    return {
      verdict: worstVerdict([verdictOn(margin), ...months.map(({ verdict }) => verdict)]),
      found: `${passed} of ${tested} boards passed at the first test: ${printed.found} (${formatNumber(bounds.lower * 100)} to ${formatNumber(bounds.upper * 100)} % with ${CONFIDENCE * 100} % confidence). ${joints} joints were at fault.`,
      limit,
      margin,
      measured: {
        tested: count(tested, 'boards'),
        passed: count(passed, 'boards'),
        jointsAtFault: count(joints, 'joints'),
      },
      working: [
        {
          label: 'First-pass yield',
          formula: 'passed at first / tested',
          numbers: `${passed} / ${tested}`,
          result: printed.found,
        },
      ],
      sources: [
        sourceOf(least),
        { cite: 'Clopper and Pearson, Biometrika 26 (1934): exact bounds of a proportion', how: 'computed' },
      ],
      remedy:
        verdictOn(margin) === 'fails'
          ? {
              says:
                least.value < 100
                  ? `Mend the causes; ${formatNumber(needed, 12)} boards in a row that pass at first would bring the yield to the limit.`
                  : 'Mend the causes; a yield of all cannot be regained by later boards.',
            }
          : undefined,
      parts: months,
    }
  },
})

/** The yield month by month, so that a fall shows before it moves the whole: marginal, for the limit is on the whole. */
function byMonth(
  tests: readonly { readonly testedOn: string; readonly tested: number; readonly passedFirst: number }[],
  leastPct: number,
): Part[] {
  const months = new Map<string, { tested: number; passed: number }>()
  for (const { testedOn, tested, passedFirst } of tests) {
    const month = testedOn.slice(0, 7)
    const known = months.get(month) ?? { tested: 0, passed: 0 }
    months.set(month, { tested: known.tested + tested, passed: known.passed + passedFirst })
  }
  return [...months]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([month, { tested, passed }]) => {
      const found = (passed / tested) * 100
      const margin: Margin = {
        found,
        limit: leastPct,
        unit: '%',
        direction: 'at least',
        guardBand: GUARD_PCT,
      }
      return {
        subject: month,
        about: { month },
        verdict: verdictOn(margin) === 'meets' ? 'meets' : 'marginal',
        measured: { tested: count(tested, 'boards'), passed: count(passed, 'boards') },
        found: `${passed} of ${tested} passed at first.`,
        margin,
      }
    })
}
