import {
  bathTemperatureTolerance,
  leadFreeBathLeast,
  leadFreeBathMost,
  tinLeadBathLeast,
  tinLeadBathMost,
} from '@/shared/plan/limits/control-bath'
import { capabilityLeast } from '@/shared/plan/limits/control-charts'
import {
  preheatLeadFreeLeast,
  preheatLeadFreeMost,
  preheatTinLeadLeast,
  preheatTinLeadMost,
  waveDwellLeast,
  waveDwellMost,
} from '@/shared/plan/limits/control-wave'
import { bathTemperatureTarget } from '@/shared/plan/parameters/control-bath'
import { capabilityAsked } from '@/shared/plan/parameters/control-charts'
import {
  fluxAcidNumberTarget,
  fluxAcidNumberTolerance,
  fluxControlMethod,
  fluxDensityCoefficient,
  fluxDensityTarget,
  fluxDensityTolerance,
  fluxReferenceTemperature,
} from '@/shared/plan/parameters/control-flux'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { formatAgainst, formatNumber } from '@/shared/quantity/format'
import type { LogSeries } from '@/shared/records/log-series'
import type { Log } from '@/shared/records/log'
import { columnSeries } from '@/shared/records/log-series'
import { undetermined, verdictOn, type Judged, type Margin, type Part } from '@/shared/rules/finding'
import { notAsked } from '@/shared/rules/not-asked'
import { judgedByParts } from '@/shared/rules/parts'
import { optional, rule, type Inputs } from '@/shared/rules/rule'
import { namedRuling, sourceOf } from '@/shared/rules/ruling-source'
import { capabilityOf, FEWEST_FOR_CAPABILITY, type LogCapability } from './capability-of-log'
import { acidNumberSeries } from './flux-acid-number'
import { densitySeries } from './flux-density'
import { bothWindows, boundBy, windowAround, type ProcessWindow } from './logged-window'
import { processLogs } from './records-read'
import { dwellSeries } from './wave-dwell'

const CONFIDENCE = 0.95

const reads = {
  asked: optional(capabilityAsked),
  least: capabilityLeast,
  family: alloyFamily,
  method: optional(fluxControlMethod),
  density: optional(fluxDensityTarget),
  densityTolerance: optional(fluxDensityTolerance),
  reference: optional(fluxReferenceTemperature),
  coefficient: optional(fluxDensityCoefficient),
  acid: optional(fluxAcidNumberTarget),
  acidTolerance: optional(fluxAcidNumberTolerance),
  bath: optional(bathTemperatureTarget),
  bathTolerance: bathTemperatureTolerance,
  bathTinLeadLeast: tinLeadBathLeast,
  bathTinLeadMost: tinLeadBathMost,
  bathLeadFreeLeast: leadFreeBathLeast,
  bathLeadFreeMost: leadFreeBathMost,
  dwellLeast: waveDwellLeast,
  dwellMost: waveDwellMost,
  preheatTinLeadLeast,
  preheatTinLeadMost,
  preheatLeadFreeLeast,
  preheatLeadFreeMost,
  logs: processLogs,
}

export const processCapabilityRule = rule({
  id: 'process-capability',
  title: 'Capability of the process',
  why: 'Readings inside the limits today promise nothing for tomorrow unless the process is steady and its spread leaves room. Capability says how much room, and how surely it is known.',
  stage: 'control',
  version: 1,
  reads,
  judge(inputs): Judged {
    const { asked, least } = inputs
    if (asked !== true) return notAsked('This programme asks for no proof of capability.')
    const limit = `Cpk of at least ${formatNumber(least.value)} with ${CONFIDENCE * 100} % confidence, on a log without a point beyond its control limits (${namedRuling(least)}).`
    const questions = questionsOf(inputs)
      .filter(({ series }) => series.values.length > 0)
      .map((question) => ({
        ...question,
        capability: capabilityOf(question.series, question.window, CONFIDENCE),
      }))
    if (questions.length === 0)
      return undetermined(
        'No log has readings and a specified window yet: there is nothing to hold the spread against.',
        [`${FEWEST_FOR_CAPABILITY} readings in a process log, and its window specified`],
        limit,
      )
    const parts = questions.map((question) => partOf(question, least.value))
    return judgedByParts({
      parts,
      noun: 'logs',
      limit,
      working: questions.flatMap(workingOf),
      sources: [
        { cite: 'NIST/SEMATECH e-Handbook 6.1.6: capability indices', how: 'published' },
        { cite: 'A. F. Bissell, Applied Statistics 39 (1990) 331: bound of Cpk', how: 'from memory' },
        sourceOf(least),
      ],
      notes: [
        'Spread is taken from the moving range of successive readings: readings that follow close upon each other look steadier than the process is.',
        'The index presumes a normal spread; look at the chart before believing it.',
      ],
    })
  },
})

interface Question {
  readonly what: string
  readonly series: LogSeries
  readonly window: ProcessWindow
}

/** A question with the capability of its log, worked out once. */
interface Answered extends Question {
  readonly capability: LogCapability | undefined
}

/** The logs whose window follows from the specification, in the quantity that is limited. */
function questionsOf(inputs: Inputs<typeof reads>): Question[] {
  const { family, method, density, densityTolerance, acid, acidTolerance, bath, logs } = inputs
  const tinLead = family === 'tin-lead'
  const asked = (key: string, what: string, window: ProcessWindow, of: (log: Log) => LogSeries): Question[] =>
    (logs.get(key) ?? []).map((log) => ({ what, window, series: of(log) }))
  return [
    ...(method === 'density' && density !== undefined && densityTolerance !== undefined
      ? asked(
          'flux-density',
          'flux density',
          windowAround(density, densityTolerance, 'g/ml', 'specified density'),
          (log) => densitySeries(log, inputs.reference, inputs.coefficient),
        )
      : []),
    ...(method === 'acid-number' && acid !== undefined && acidTolerance !== undefined
      ? asked(
          'flux-acid-number',
          'flux acid number',
          windowAround(acid, acidTolerance, 'mg KOH/g', 'specified acid number'),
          acidNumberSeries,
        )
      : []),
    ...(bath === undefined
      ? []
      : asked(
          'bath-temperature',
          'bath temperature',
          bothWindows(
            {
              least: boundBy(tinLead ? inputs.bathTinLeadLeast : inputs.bathLeadFreeLeast),
              most: boundBy(tinLead ? inputs.bathTinLeadMost : inputs.bathLeadFreeMost),
              unit: '°C',
            },
            windowAround(bath, inputs.bathTolerance.value, '°C', inputs.bathTolerance.document),
          ),
          (log) => columnSeries(log, 'bathC'),
        )),
    ...asked(
      'wave-contact',
      'dwell in the wave',
      { least: boundBy(inputs.dwellLeast), most: boundBy(inputs.dwellMost), unit: 's' },
      dwellSeries,
    ),
    ...asked(
      'wave-preheat',
      'preheat',
      {
        least: boundBy(tinLead ? inputs.preheatTinLeadLeast : inputs.preheatLeadFreeLeast),
        most: boundBy(tinLead ? inputs.preheatTinLeadMost : inputs.preheatLeadFreeMost),
        unit: '°C',
      },
      (log) => columnSeries(log, 'uppersideC'),
    ),
  ]
}

/** Proven by the bound: meets. By the estimate alone: marginal. On an unstable log: no answer. */
function partOf({ what, series, capability }: Answered, leastCpk: number): Part {
  const subject = `Log ${series.log.code} (${what})`
  if (!capability)
    return {
      subject,
      verdict: 'undetermined',
      found:
        series.values.length < FEWEST_FOR_CAPABILITY
          ? `${series.values.length} readings of the ${FEWEST_FOR_CAPABILITY} that a capability needs.`
          : 'the readings show no spread: the instrument is too coarse to tell a capability.',
    }
  const { study, pointsBeyond } = capability
  const { cpk, cpkLowerBound } = study.shortTerm
  const found = `Cpk ${formatAgainst(cpk, leastCpk, '1').found}, with ${CONFIDENCE * 100} % confidence at least ${formatAgainst(cpkLowerBound, leastCpk, '1').found}; long-term Ppk ${formatNumber(study.longTerm.cpk, 3)}, ${study.readings} readings.`
  if (!study.speaksForTheFuture)
    return {
      subject,
      verdict: 'undetermined',
      found: `the log is unstable (${pointsBeyond} points beyond the control limits), so its capability promises nothing. ${found}`,
      remedy: { says: 'Find and remove the causes of the signals, then take readings anew.' },
    }
  const margin: Margin = {
    found: cpkLowerBound,
    limit: leastCpk,
    unit: '1',
    direction: 'at least',
    guardBand: 0,
  }
  if (verdictOn(margin) === 'meets') return { subject, verdict: 'meets', found, margin }
  if (cpk >= leastCpk)
    return {
      subject,
      verdict: 'marginal',
      found: `${found} Likely, not shown: more readings narrow the bound.`,
      remedy: { says: 'Take more readings while the process stays as it is.' },
    }
  return {
    subject,
    verdict: 'fails',
    found,
    margin: { ...margin, found: cpk },
    remedy: {
      says: 'Bring the mean to the middle of the window and lessen the spread, or let design widen the window.',
    },
  }
}

function workingOf({ what, series, window, capability }: Answered): Judged['working'] {
  if (!capability) return []
  const { mean, shortTerm } = capability.study
  return [
    {
      label: `Log ${series.log.code} (${what})`,
      formula: 'Cpk = min(upper − mean, mean − lower) / 3σ, σ = mean moving range / 1.128',
      numbers: `mean ${formatNumber(mean, 6)}, σ ${formatNumber(shortTerm.sigma.sigma, 4)}, window ${window.least?.value ?? '−∞'} to ${window.most?.value ?? '∞'}`,
      result: formatNumber(shortTerm.cpk, 4),
    },
  ]
}
