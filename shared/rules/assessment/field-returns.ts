import { allowedFailureRateFit } from '@/shared/physics/joint-budget'
import { boardJoints } from '@/shared/plan/board-joints'
import { demonstrationConfidenceMin } from '@/shared/plan/limits/assessment-proof'
import { fieldRecordAsked } from '@/shared/plan/parameters/assessment-proof'
import { survivalTarget, surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { serviceYears } from '@/shared/plan/parameters/programme'
import { formatAgainst, formatNumber, formatQuantity } from '@/shared/quantity/format'
import { undetermined, type Judged, type Margin } from '@/shared/rules/finding'
import { measure, count } from '@/shared/rules/measure'
import { optional, rule } from '@/shared/rules/rule'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { notApplicable } from '@/shared/rules/not-applicable'
import { exactRateLowerBound, exactRateUpperBound } from '@/shared/statistics/intervals/exact-poisson-rate'
import { boardHoursStillToServe } from '@/shared/reliability/field-shown'
import { fieldExposures, fieldReturns } from '@/shared/rules/assembly-record-sources'

export const fieldReturnsAgainstBudget = rule({
  id: 'field-returns',
  title: 'Field returns against the budget',
  why: 'Service is the last judge. Returns are held against the failure rate that the specification allowed, so that the next programme starts wiser.',
  formula: 'upper bound of boards failed at a joint, or not analysed yet/board-hours ≤ budget',
  stage: 'assessment',
  version: 4,
  reads: {
    asked: optional(fieldRecordAsked),
    holes: leadHoles,
    surfaceMount: surfaceMountJoints,
    survival: survivalTarget,
    years: serviceYears,
    confidenceMin: demonstrationConfidenceMin,
    returns: fieldReturns,
    exposures: fieldExposures,
  },
  judge({ asked, holes, surfaceMount, survival, years, confidenceMin, returns, exposures }): Judged {
    const hours = exposures.reduce((sum, { boards, hoursEach }) => sum + boards * hoursEach, 0)
    if (!(hours > 0))
      return returns.length === 0
        ? notApplicable('No boards in service yet: no service exposure is recorded.')
        : undetermined(
            `${returns.length} boards came back, but no service exposure is recorded to hold them against: record boards in service and their hours.`,
            ['boards in service, and their hours'],
          )
    const joints = boardJoints(holes, surfaceMount).total
    const allowed = allowedFailureRateFit({ joints, serviceYears: years, survival: survival / 100 }) * joints
    const confidence = confidenceMin.value / 100
    const limit = `At most ${formatQuantity(allowed, 'FIT', 4)} a board, so that ${formatQuantity(survival, '%', 6)} outlive ${formatQuantity(years, 'years')}.`
    const failed = returns.filter(({ cause }) => cause === 'solder-joint').length
    const open = returns.filter(({ cause }) => cause === 'open').length
    const asks = `${limit} Shown with ${formatQuantity(confidenceMin.value, '%')} confidence (${governingName(confidenceMin)}).`
    if (!(confidence > 0 && confidence < 1))
      return undetermined(
        'The confidence asked for must lie between 0 and 100 %, both excluded.',
        ['a confidence below 100 %'],
        asks,
      )
    const seen = { events: failed, exposure: hours / 1e9 }
    // A board that nobody has looked into may have failed at a joint: what is shown is shown with it, what is exceeded without.
    const upper = exactRateUpperBound({ ...seen, events: failed + open }, confidence)
    const lower = exactRateLowerBound(seen, confidence)
    const rate = failed / seen.exposure
    const exceeded = lower > allowed
    const shown = upper <= allowed
    const margin: Margin = {
      found: exceeded ? lower : upper,
      limit: allowed,
      unit: 'FIT',
      direction: 'at most',
      guardBand: 0,
    }
    const unanalysed = open > 0 ? `, ${open} not yet analysed counted among them` : ''
    const counted = `${failed} boards came back with a failed solder joint over ${formatNumber(hours)} board-hours: ${formatQuantity(rate, 'FIT', 3)} (${formatQuantity(lower, 'FIT', 3)} to ${formatQuantity(upper, 'FIT', 3)}${unanalysed}, each with ${formatNumber(confidenceMin.value)} % confidence)`
    const more = `${formatNumber(Math.ceil(boardHoursStillToServe({ boardHours: hours, failed: failed + open }, { boardFit: allowed, confidence })), 6)} more board-hours without a failed joint`
    // Watched only: hours too few to show anything stand in nobody’s way, as long as what came back does not exceed the rate.
    const watched = asked === false && (failed + open) / seen.exposure <= allowed
    return {
      verdict: exceeded ? 'fails' : shown ? 'meets' : watched ? 'not applicable' : 'undetermined',
      found: exceeded
        ? `${counted}. At least ${formatAgainst(lower, allowed, 'FIT').found}: the budget is exceeded.`
        : shown
          ? `${counted}. The budget is shown to hold.`
          : `${counted}. Neither shown nor contradicted: ${more} would show it${watched ? '; by decision service is watched and need not show it' : ''}.`,
      limit: asks,
      // Hours too few to show anything have no place on a bar.
      ...((exceeded || shown || !watched) && { margin }),
      measured: {
        failed: count(failed, 'boards'),
        ...(open > 0 && { notAnalysed: count(open, 'boards') }),
        boardHours: measure(hours, 'h'),
        rateAtLeast: measure(lower, 'FIT'),
        rateAtMost: measure(upper, 'FIT'),
        allowed: measure(allowed, 'FIT'),
        confidence: measure(confidenceMin.value, '%'),
      },
      working: [
        {
          label: 'Rate in service',
          formula: 'boards failed at a joint / board-hours · 10⁹',
          numbers: `${failed} / ${formatNumber(hours)} · 10⁹`,
          result: formatQuantity(rate, 'FIT', 4),
        },
      ],
      sources: [
        { cite: 'Garwood, Biometrika 28 (1936): exact bounds of a rate', how: 'computed' },
        sourceOf(confidenceMin),
      ],
      ...(exceeded && {
        remedy: {
          message:
            'Section the joints that failed, find the decision behind them, and reopen it; warn whoever answers for the equipment in service.',
        },
      }),
      ...(!exceeded &&
        !shown &&
        !watched && {
          missing: [more],
          remedy: {
            message: `${open > 0 ? `Analyse what came back and is still open (${open}). ` : ''}Serve ${more}; where the fleet cannot come to that, quality decides that service is watched only.`,
          },
        }),
      notes: [
        'Only returns traced to a solder joint count, and those not analysed yet until they are; boards that fail and do not come back are not seen.',
      ],
    }
  },
})
