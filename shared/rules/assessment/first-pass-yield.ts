import { firstPassYieldConfidenceMin } from '@/shared/plan/limits/assessment-evidence'
import { firstPassYieldMin } from '@/shared/plan/limits/assessment-inspection'
import { formatAgainst, formatNumber, formatQuantity } from '@/shared/quantity/format'
import {
  undetermined,
  verdictOn,
  worstVerdict,
  type Judged,
  type Margin,
  type Part,
} from '@/shared/rules/finding'
import { count, measure } from '@/shared/rules/measure'
import { rule } from '@/shared/rules/rule'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { goodStillToSee } from '@/shared/inspection/good-still-to-see'
import {
  exactProportionLowerBound,
  exactProportionUpperBound,
  type Tally,
} from '@/shared/statistics/intervals/exact-proportion'
import { firstPassYield as yieldOf } from '@/shared/statistics/yield/process-yield'
import { electricalTests } from '@/shared/rules/assembly-record-sources'

export const firstPassYield = rule({
  id: 'first-pass-yield',
  title: 'First-pass yield of electrical test',
  why: 'Boards that pass only after repair carry repaired joints; the share that passes at first says what soldering is worth before anyone mends it.',
  formula: 'passed at first/tested, its lower bound ≥ least',
  stage: 'assessment',
  version: 3,
  reads: {
    min: firstPassYieldMin,
    confidenceMin: firstPassYieldConfidenceMin,
    tests: electricalTests,
  },
  judge({ min, confidenceMin, tests }): Judged {
    const limit = `At least ${formatQuantity(min.value, '%')} pass at the first test (${governingName(min)}), shown with ${formatQuantity(confidenceMin.value, '%')} confidence (${governingName(confidenceMin)}).`
    const confidence = confidenceMin.value / 100
    if (!(confidence > 0 && confidence < 1))
      return undetermined(
        'The confidence asked for must lie between 0 and 100 %, both excluded.',
        ['a confidence below 100 %'],
        limit,
      )
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
        sources: [sourceOf(min)],
        remedy: { message: 'Withdraw that record and enter it right.' },
      }
    const tested = tests.reduce((sum, row) => sum + row.tested, 0)
    const passed = tests.reduce((sum, row) => sum + row.passedFirst, 0)
    const joints = tests.reduce((sum, row) => sum + row.jointFailures, 0)
    const share = yieldOf(passed, tested) * 100
    const seen = { found: passed, inspected: tested }
    const status = statusOf(seen, min.value, confidence)
    const { lower, upper, verdict } = status
    const months = byMonth(tests, min.value, confidence)
    const margin: Margin = {
      found: verdict === 'fails' ? upper : lower,
      limit: min.value,
      unit: '%',
      direction: 'at least',
      guardBand: 0,
    }
    const printed = formatAgainst(margin.found, min.value, '%').found
    const counted = `${passed} of ${tested} boards passed at the first test (${formatNumber(share)} %)`
    const more = verdict === 'undetermined' ? goodStillToSee(seen, min.value / 100, confidence) : undefined
    const ask = more === undefined ? undefined : `${formatNumber(more, 12)} more boards that pass at first`
    return {
      verdict: worstVerdict([verdict, ...months.map((month) => month.verdict)]),
      found: `${counted}: with ${formatNumber(confidenceMin.value)} % confidence ${verdict === 'fails' ? 'at most' : 'at least'} ${printed}.${ask === undefined ? '' : ` Not shown yet: ${ask} would show it.`} ${joints} joints were at fault.`,
      limit,
      margin,
      measured: {
        tested: count(tested, 'boards'),
        passed: count(passed, 'boards'),
        jointsAtFault: count(joints, 'joints'),
        atMost: measure(upper, '%'),
        confidence: measure(confidenceMin.value, '%'),
      },
      working: [
        {
          label: 'First-pass yield',
          formula: 'passed at first / tested',
          numbers: `${passed} / ${tested}`,
          result: `${formatNumber(share)} %, at least ${formatNumber(lower)} %, at most ${formatNumber(upper)} %`,
        },
      ],
      sources: [
        sourceOf(min),
        sourceOf(confidenceMin),
        { cite: 'Clopper and Pearson, Biometrika 26 (1934): exact bounds of a proportion', how: 'computed' },
      ],
      ...(verdict === 'undetermined' && {
        missing: [ask ?? 'a yield to be shown below 100 %'],
        remedy: {
          message:
            ask === undefined
              ? 'A yield of all boards cannot be shown by counting: ask for less than 100 %.'
              : `Test ${ask}, or mend the cause first where boards fail for one.`,
        },
      }),
      ...(verdict === 'fails' && {
        remedy: {
          message: 'Mend the causes; boards tested after that may be counted as a series of their own.',
        },
      }),
      parts: months,
    }
  },
})

/** What so many that passed show: the limit kept, missed, or neither. Bounds in %, one-sided each. */
function statusOf(seen: Tally, minPct: number, confidence: number) {
  const lower = 100 * exactProportionLowerBound(seen, confidence)
  const upper = 100 * exactProportionUpperBound(seen, confidence)
  const verdict =
    verdictOn({ found: lower, limit: minPct, unit: '%', direction: 'at least', guardBand: 0 }) === 'meets'
      ? 'meets'
      : upper < minPct
        ? 'fails'
        : 'undetermined'
  return { lower, upper, verdict } as const
}

/** The month by itself: information, for the limit is on the whole. Shown to miss the limit, it is close to it. */
const MONTH_VERDICT = { meets: 'meets', fails: 'marginal', undetermined: 'not applicable' } as const

/** The yield month by month, so that a fall shows before it moves the whole. */
function byMonth(
  tests: readonly { readonly testedOn: string; readonly tested: number; readonly passedFirst: number }[],
  minPct: number,
  confidence: number,
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
      const { lower, upper, verdict } = statusOf({ found: passed, inspected: tested }, minPct, confidence)
      return {
        subject: month,
        about: { month },
        verdict: MONTH_VERDICT[verdict],
        measured: {
          tested: count(tested, 'boards'),
          passed: count(passed, 'boards'),
          lower: measure(lower, '%'),
          upper: measure(upper, '%'),
        },
        found: `${passed} of ${tested} passed at first, ${formatNumber(lower, 3)} to ${formatNumber(upper, 3)} %. The limit is for all months together.`,
      }
    })
}
