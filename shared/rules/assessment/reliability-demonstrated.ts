import { boardJoints } from '@/shared/plan/board-joints'
import { demonstrationConfidenceLeast } from '@/shared/plan/limits/assessment-proof'
import { lifeCyclesNeeded, lifeTestAsked } from '@/shared/plan/parameters/assessment-proof'
import { survivalTarget, surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { serviceYears } from '@/shared/plan/parameters/programme'
import { useCycles } from '@/shared/plan/parameters/thermal-fatigue'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { undetermined, verdictOn, type Judged, type Margin, type Part } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { optional, rule } from '@/shared/rules/rule'
import { namedRuling, sourceOf } from '@/shared/rules/ruling-source'
import { exactRateLowerBound, exactRateUpperBound } from '@/shared/statistics/intervals/exact-poisson-rate'
import { testLengthFactor } from '@/shared/reliability/demonstration/demonstration'
import { lifeTests } from '@/shared/rules/assembly-record-sources'
import { lifeTestFits, type LifeSpecimen } from '@/shared/reliability/life-test-fit'
import { measure, count } from '@/shared/rules/measure'

/** Shown with less than a tenth of the failures allowed to spare is marginal. */
const GUARD_SHARE = 0.1

export const reliabilityDemonstrated = rule({
  id: 'reliability-demonstrated',
  title: 'Reliability shown by life test',
  why: 'A prediction compares designs; a test shows joints. Few specimens show little: the rule says how much the test has shown, and how much longer it must run.',
  formula: 'rate or wear-out life shown at the confidence ≤ −ln R over the service',
  stage: 'assessment',
  version: 1,
  reads: {
    asked: optional(lifeTestAsked),
    holes: leadHoles,
    surfaceMount: optional(surfaceMountJoints),
    survival: survivalTarget,
    years: serviceYears,
    useCycles: optional(useCycles),
    needed: optional(lifeCyclesNeeded),
    confidenceLeast: demonstrationConfidenceLeast,
    specimens: lifeTests,
  },
  judge({ asked, holes, surfaceMount, survival, years, confidenceLeast, specimens, ...rest }): Judged {
    if (asked !== true && specimens.length === 0)
      return notApplicable('No life test is asked, and none was made.')
    const joints = boardJoints(holes, surfaceMount).total
    const cycles =
      rest.needed ?? (rest.useCycles?.reduce((sum, row) => sum + row.perYear, 0) ?? Number.NaN) * years
    const confidence = confidenceLeast.value / 100
    const limit = `${formatQuantity(survival, '%', 6)} of boards with ${joints} joints outlive ${Number.isFinite(cycles) ? formatQuantity(cycles, 'cycles', 5) : 'their service'}, shown with ${formatQuantity(confidenceLeast.value, '%')} confidence (${namedRuling(confidenceLeast)}).`
    if (!(cycles > 0))
      return undetermined(
        'How many service cycles are to be shown is not specified.',
        [`${lifeCyclesNeeded.label}, or the cycles a year in service`],
        limit,
      )
    if (!(confidence > 0 && confidence < 1))
      return undetermined('The confidence asked for must lie between 0 and 100 %, both excluded.', [
        'a confidence below 100 %',
      ])
    if (specimens.length === 0)
      return undetermined('No specimen of a life test is recorded yet.', ['life tests'], limit)

    const events = specimens.filter(({ failed }) => failed).length
    const exposure = specimens.reduce((sum, row) => sum + row.joints * row.cycles * row.acceleration, 0)
    if (!(exposure > 0))
      return undetermined('The specimens have not run yet.', ['cycles run by the specimens'], limit)
    // Failures that a board's joints may have over its life, on average, for the target to hold.
    const allowed = -Math.log(survival / 100)
    const boardCycles = joints * cycles
    const upper = exactRateUpperBound({ events, exposure }, confidence) * boardCycles
    const lower = exactRateLowerBound({ events, exposure }, confidence) * boardCycles
    const margin: Margin = {
      found: upper,
      limit: allowed,
      unit: '1',
      direction: 'at most',
      guardBand: GUARD_SHARE * allowed,
    }
    const exposureNeeded = (testLengthFactor({ confidence, failuresAllowed: events }) * boardCycles) / allowed
    const survives = (failures: number): string => formatQuantity(Math.exp(-failures) * 100, '%', 5)
    const counted = `${specimens.length} specimens, ${events} failed over ${formatNumber(exposure)} joint-cycles of service`
    const common = {
      limit,
      margin,
      measured: {
        specimens: count(specimens.length),
        failed: count(events),
        exposure: measure(exposure, '1'),
        failuresAtLeast: measure(lower, '1'),
      },
      working: [
        {
          label: 'Failures a board may have in its life',
          formula: '−ln R',
          numbers: `R = ${survival / 100}`,
          result: formatNumber(allowed),
        },
        {
          label: 'Failures shown at most',
          formula: 'χ²(C; 2r + 2)/2 / (joint-cycles tested) · joints · cycles of a life',
          numbers: `C = ${confidence}, r = ${events}, ${formatNumber(exposure)}, ${joints} · ${formatNumber(cycles)}`,
          result: `${formatNumber(upper)}: ${survives(upper)} survive`,
        },
        { label: 'Joint-cycles needed with no further failure', result: formatNumber(exposureNeeded) },
      ],
      sources: [
        { cite: 'NIST/SEMATECH e-Handbook 8.3.1.1: chi-square test length', how: 'published' as const },
        sourceOf(confidenceLeast),
      ],
      parts: partsOf(specimens),
      notes: [
        'A constant rate is presumed. Solder wears out: run specimens through a whole life of cycles at least, or the test cannot see it.',
        ...(specimens.some(({ cycles: ran, acceleration }) => ran * acceleration < cycles)
          ? ['Some specimens ran for less than one life.']
          : []),
        ...weibullNotes(specimens),
        ...(specimens.some(({ acceleration, model }) => acceleration !== 1 && model === undefined)
          ? ['An acceleration without a named model is a claim, not a result.']
          : []),
      ],
      cautions: [
        'A test supports a judgement; where safety depends on a joint, a competent person judges under the standard that applies.',
      ],
    }
    if (upper <= allowed)
      return {
        ...common,
        verdict: verdictOn(margin),
        found: `${counted}: at least ${survives(upper)} of boards survive. Shown.`,
      }
    if (lower > allowed)
      return {
        ...common,
        verdict: 'fails',
        found: `${counted}: at most ${survives(lower)} of boards survive. The target is contradicted.`,
        remedy: { says: 'Find the failure’s cause in section, change the design or process, and test anew.' },
      }
    const more = `${formatNumber(Math.ceil(exposureNeeded - exposure), 6)} more joint-cycles of service without a failure`
    return {
      ...common,
      verdict: 'undetermined',
      found: `${counted}: at least ${survives(upper)} of boards survive. Not shown yet: ${more} would show it.`,
      missing: [more],
      remedy: { says: `Run ${more}.` },
    }
  },
})

/** What each test's own Weibull fit says against the constant rate presumed. */
const weibullNotes = (specimens: readonly LifeSpecimen[]): string[] =>
  lifeTestFits(specimens, { shape: 2, confidence: 0.9 }).flatMap(({ test, fit, failures, onePercentAt }) =>
    fit && onePercentAt !== undefined
      ? [
          `${test}: ${failures} failures fit a Weibull of shape ${formatNumber(fit.shape, 3)} (${fit.shape > 1 ? 'wear-out' : 'early failures'}), characteristic life ${formatNumber(fit.scale)} test cycles, 1 % failed by ${formatNumber(onePercentAt, 3)}.`,
        ]
      : [],
  )

const partsOf = (
  specimens: readonly {
    test: string
    failed: boolean
    joints: number
    cycles: number
    acceleration: number
  }[],
): Part[] => {
  const tests = new Map<string, { tried: number; failed: number; exposure: number }>()
  for (const { test, failed, joints, cycles, acceleration } of specimens) {
    const known = tests.get(test) ?? { tried: 0, failed: 0, exposure: 0 }
    tests.set(test, {
      tried: known.tried + 1,
      failed: known.failed + (failed ? 1 : 0),
      exposure: known.exposure + joints * cycles * acceleration,
    })
  }
  return [...tests].map(([subject, { tried, failed, exposure }]) => ({
    subject,
    verdict: 'meets',
    measured: { tried: count(tried), failed: count(failed), exposure: measure(exposure, '1') },
    found: `${failed} of ${tried} failed over ${formatNumber(exposure)} joint-cycles of service; the target is judged for all tests together.`,
  }))
}
