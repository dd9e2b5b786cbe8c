import { boardJoints } from '@/shared/plan/board-joints'
import { wearOutShapeMin, wearOutShapeMax } from '@/shared/plan/limits/assessment-evidence'
import { lifeTestGuard } from '@/shared/plan/limits/assessment-guards'
import { demonstrationConfidenceMin } from '@/shared/plan/limits/assessment-proof'
import { lifeCyclesNeeded, lifeTestAsked } from '@/shared/plan/parameters/assessment-proof'
import { survivalTarget, surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { serviceYears } from '@/shared/plan/parameters/programme'
import { useCycles } from '@/shared/plan/parameters/thermal-fatigue'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { undetermined, verdictOn, type Judged, type Margin } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { optional, rule } from '@/shared/rules/rule'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { testLengthFactor } from '@/shared/reliability/demonstration/demonstration'
import { lifeTests } from '@/shared/rules/assembly-record-sources'
import { lifeTestFits } from '@/shared/reliability/life-test-fit'
import { FIT_CONFIDENCE, overlap, partsOfTests, weibullNotes } from '@/shared/reliability/life-test-parts'
import { isAccelerationNamed, runsOf, wearOutShown } from '@/shared/reliability/demonstration/wear-out-shown'
import { measure, count } from '@/shared/rules/measure'

export const reliabilityDemonstrated = rule({
  id: 'reliability-demonstrated',
  title: 'Reliability shown by life test',
  why: 'A prediction compares designs; a test shows joints. Few specimens show little: the rule says how much the test has shown, and how much longer it must run.',
  formula: 'rate or wear-out life shown at the confidence ≤ −ln R over the service',
  stage: 'assessment',
  version: 3,
  reads: {
    asked: optional(lifeTestAsked),
    holes: leadHoles,
    surfaceMount: surfaceMountJoints,
    survival: survivalTarget,
    years: serviceYears,
    useCycles: optional(useCycles),
    needed: optional(lifeCyclesNeeded),
    confidenceMin: demonstrationConfidenceMin,
    shapeMin: wearOutShapeMin,
    shapeMax: wearOutShapeMax,
    guard: lifeTestGuard,
    specimens: lifeTests,
  },
  judge({ asked, holes, surfaceMount, survival, years, confidenceMin, specimens, ...rest }): Judged {
    const { shapeMin, shapeMax, guard } = rest
    if (asked !== true && specimens.length === 0)
      return notApplicable('No life test is asked, and none was made.')
    const joints = boardJoints(holes, surfaceMount).total
    const cycles =
      rest.needed ?? (rest.useCycles?.reduce((sum, row) => sum + row.perYear, 0) ?? Number.NaN) * years
    const confidence = confidenceMin.value / 100
    const limit = `${formatQuantity(survival, '%', 6)} of boards with ${joints} joints outlive ${Number.isFinite(cycles) ? formatQuantity(cycles, 'cycles', 5) : 'their service'}, shown with ${formatQuantity(confidenceMin.value, '%')} confidence (${governingName(confidenceMin)}) for joints that wear out with a Weibull shape of ${formatNumber(shapeMin.value)} (${governingName(shapeMin)}) to ${formatNumber(shapeMax.value)} (${governingName(shapeMax)}).`
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

    const unnamed = specimens.find((specimen) => !isAccelerationNamed(specimen))
    if (unnamed)
      return undetermined(
        `${unnamed.test}: one test cycle is said to stand for ${formatNumber(unnamed.acceleration)} of service by no named model; unlike stresses are not added on a claim.`,
        [`the model behind the acceleration of ${unnamed.test}`],
        limit,
      )
    const runs = runsOf(specimens, cycles)
    const events = runs.filter(({ failed }) => failed).length
    if (!runs.some(({ lives }) => lives > 0))
      return undetermined('The specimens have not run yet.', ['cycles run by the specimens'], limit)
    const shapes = { min: shapeMin.value, max: Math.max(shapeMin.value, shapeMax.value) }
    const { upper, lower, jointLives, shapeOfMin } = wearOutShown(runs, {
      boardJoints: joints,
      shapes,
      confidence,
    })
    // Failures that a board's joints may have over its life, on average, for the target to hold.
    const allowed = -Math.log(survival / 100)
    const margin: Margin = {
      found: upper,
      limit: allowed,
      unit: '1',
      direction: 'at most',
      guardBand: (guard.value / 100) * allowed,
    }
    const livesNeeded = (testLengthFactor({ confidence, failuresAllowed: events }) * joints) / allowed
    const survives = (failures: number): string => formatQuantity(Math.exp(-failures) * 100, '%', 5)
    const whole = runs.filter(({ lives }) => lives >= 1).length
    const counted = `${specimens.length} specimens, ${whole} of them through a whole life, ${events} failed; they count for ${formatNumber(jointLives)} joints run through a life`
    const fits = lifeTestFits(specimens, { shape: shapes.min, confidence: FIT_CONFIDENCE })
    const odd = fits.find(({ bounds }) => bounds && !overlap(bounds.shape, shapes))
    const common = {
      limit,
      margin,
      measured: {
        specimens: count(specimens.length),
        wholeLife: count(whole),
        failed: count(events),
        jointLives: measure(jointLives, 'joints'),
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
          label: 'Joints run through a life',
          formula: 'Σ joints · (lives run)^β, at the shape β presumed that counts least',
          numbers: `β = ${formatNumber(shapeOfMin, 3)}, a life of ${formatNumber(cycles)} cycles`,
          result: formatNumber(jointLives),
        },
        {
          label: 'Failures shown at most',
          formula: 'χ²(C; 2r + 2)/2 / (joints run through a life) · joints of a board',
          numbers: `C = ${confidence}, r = ${events}, ${formatNumber(jointLives)}, ${joints}`,
          result: `${formatNumber(upper)}: ${survives(upper)} survive`,
        },
        {
          label: 'Joints to run through a life, with no further failure',
          result: formatNumber(livesNeeded),
        },
      ],
      sources: [
        { cite: 'NIST/SEMATECH e-Handbook 8.3.1.1: chi-square test length', how: 'published' as const },
        {
          cite: 'Weibayes: joints counted by lives run to the power of the Weibull shape (R. B. Abernethy, The New Weibull Handbook)',
          how: 'from memory' as const,
        },
        ...[confidenceMin, shapeMin, shapeMax].map(sourceOf),
      ],
      parts: partsOfTests(specimens, runs),
      notes: [
        'Solder wears out: a short run counts for almost nothing, however many specimens ran it.',
        ...weibullNotes(fits),
      ],
      cautions: [
        'A test supports a judgement; where safety depends on a joint, a competent person judges under the standard that applies.',
      ],
    }
    if (odd?.bounds)
      return {
        ...common,
        verdict: 'undetermined',
        found: `${odd.test}: its failures have a Weibull shape of ${formatNumber(odd.bounds.shape.lower, 2)} to ${formatNumber(odd.bounds.shape.upper, 2)}, not the ${formatNumber(shapes.min)} to ${formatNumber(shapes.max)} presumed of joints that wear out.`,
        missing: ['a wear-out shape that agrees with the failures'],
        remedy: {
          message:
            'Find in section what failed: joints that wear out, or something else; then state the shape that fits as a requirement.',
        },
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
        remedy: {
          message: 'Find the failure’s cause in section, change the design or process, and test again.',
        },
      }
    const more = `${formatNumber(Math.ceil(livesNeeded - jointLives), 12)} more joints run through a whole life without a failure`
    return {
      ...common,
      verdict: 'undetermined',
      found: `${counted}: at least ${survives(upper)} of boards survive. Not shown yet: ${more} would show it.`,
      missing: [more],
      remedy: { message: `Run specimens on, or new ones: ${more}.` },
    }
  },
})
