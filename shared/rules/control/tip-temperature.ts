import { foldedList } from '@/shared/quantity/folded-names'
import { accuracyRequirement } from '@/shared/irons/tip-accuracy'
import {
  tipAccuracyMax,
  tipCeilingLeadFree,
  tipCeilingTinLead,
  tipHoldMax,
} from '@/shared/plan/limits/control-hand'
import { ALLOYS, meltsAsItsFamily, type Alloy } from '@/shared/materials/alloys'
import { followingAlloy } from '@/shared/plan/alloy-requirement'
import { tipAboveLiquidusMax } from '@/shared/plan/limits/control-alloy'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { tipAccuracyEdition, tipTemperatureTarget } from '@/shared/plan/parameters/control-hand'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { formatAgainst, formatQuantity } from '@/shared/quantity/format'
import type { InstrumentFile } from '@/shared/instruments/calibration-status'
import { checkDoubt } from '@/shared/irons/check-doubt'
import { daysOnBadChecks, type CheckedIron } from '@/shared/irons/days-on-bad-checks'
import { OUTSIDE_WINDOW, type SignalAnswer } from '@/shared/logs/signal-answers'
import { daysOfHandWork } from '@/shared/records/soldering-work'
import { solderingRuns } from '@/shared/rules/assembly-record-sources'
import { tipCheckGuard } from '@/shared/plan/limits/guard-bands'
import { spokenByWorst } from '@/shared/rules/worst-part'
import { tipTemperature as characteristic } from '@/shared/records/characteristics/tip-temperature'
import { cellAt } from '@/shared/logs/log-series'
import type { Log } from '@/shared/records/log'
import { ofEveryIron } from '@/shared/irons/of-every-iron'
import { undetermined, verdictOn, type Judged, type Margin, type Part } from '@/shared/rules/finding'
import { logsOf } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { distinctSources } from '@/shared/sources/distinct-sources'
import { calibrations, instrumentsOnFile, signalAnswers } from '@/shared/rules/log-record-sources'
import { HOT_SOLDER_CAUTIONS } from '@/shared/plan/soldering-baths'
import { measure } from '@/shared/rules/measure'
import { dayOf } from '@/shared/logs/log-day'

export const tipTemperatureRule = rule({
  id: 'tip-temperature',
  title: 'Soldering iron tips',
  why: 'A tip hotter than it says chars flux and lifts lands; a cooler one makes cold joints. Near the setting, steady, and under the ceiling are three different things.',
  formula: '|measured − set| ≤ most; |deviation now − deviation before| ≤ most',
  stage: 'control',
  version: 3,
  reads: {
    family: alloyFamily,
    target: tipTemperatureTarget,
    edition: optional(tipAccuracyEdition),
    accuracyMax: tipAccuracyMax,
    holdMax: tipHoldMax,
    guard: tipCheckGuard,
    answers: signalAnswers,
    runs: solderingRuns,
    ceilingTinLead: tipCeilingTinLead,
    ceilingLeadFree: tipCeilingLeadFree,
    alloy: optional(solderAlloy),
    aboveLiquidusMax: tipAboveLiquidusMax,
    logs: logsOf(characteristic),
    instruments: instrumentsOnFile,
    calibrations,
  },
  judge({ family, target, edition, holdMax, logs, instruments, ...rest }): Judged {
    const ceiling = ceilingRequirement(
      family === 'tin-lead' ? rest.ceilingTinLead : rest.ceilingLeadFree,
      rest,
    )
    const accuracy = accuracyRequirement(rest.accuracyMax, edition)
    const sources = distinctSources([
      sourceOf(accuracy),
      sourceOf(holdMax),
      sourceOf(ceiling),
      sourceOf(rest.guard),
    ])
    const limit = `Within ${formatQuantity(accuracy.value, 'K')} of the setting (${governingName(accuracy)}), steady within ${formatQuantity(holdMax.value, 'K')} (${governingName(holdMax)}), set to ${formatQuantity(target, '°C')} at most.`
    const ceilingMargin: Margin = {
      found: target,
      limit: ceiling.value,
      unit: '°C',
      direction: 'at most',
      guardBand: 0,
    }
    if (verdictOn(ceilingMargin) === 'fails')
      return {
        verdict: 'fails',
        measured: { family: rest.alloy ?? family },
        found: `Tips may be set to ${formatQuantity(target, '°C')}, above the ceiling for ${rest.alloy ? ALLOYS[rest.alloy].label : family}.`,
        limit: `At most ${formatQuantity(ceiling.value, '°C')} (${governingName(ceiling)}).`,
        margin: ceilingMargin,
        working: [],
        sources,
        remedy: {
          message: `Specify ${formatQuantity(ceiling.value, '°C')} at most; help heavy joints with a larger bit or preheat.`,
          parameter: tipTemperatureTarget.key,
          value: ceiling.value,
        },
        cautions: HOT_SOLDER_CAUTIONS,
      }
    const asked: Demands = {
      target,
      accuracyK: accuracy.value,
      holdK: holdMax.value,
      guardShare: rest.guard.value / 100,
      file: { instruments, calibrations: rest.calibrations },
      answers: rest.answers,
      days: daysOfHandWork(rest.runs),
    }
    const parts = ofEveryIron(logs, (log, iron, rows) => ironPart(log, iron, rows, asked))
    if (parts.length === 0)
      return undetermined(
        'No tip check is recorded yet. Record one for each iron in a log of soldering iron tip temperature.',
        ['a tip check of each iron'],
        limit,
      )
    return {
      ...spokenByWorst(parts),
      limit,
      working: [
        {
          label: 'Accuracy and hold',
          formula: '|measured − set| now; |deviation now − deviation at the check before|, same setting',
          result: `${parts.length} irons judged`,
        },
      ],
      sources,
      cautions: HOT_SOLDER_CAUTIONS,
    }
  },
})

/** The family's ceiling, or so far above its liquidus where the alloy melts lower than its family. */
function ceilingRequirement(
  ofFamily: GoverningRequirement,
  { alloy: key, aboveLiquidusMax }: { alloy?: keyof typeof ALLOYS; aboveLiquidusMax: GoverningRequirement },
): GoverningRequirement {
  const alloy: Alloy | undefined = key && ALLOYS[key]
  if (!alloy || meltsAsItsFamily(alloy)) return ofFamily
  const following = followingAlloy(ofFamily, alloy.liquidusC, aboveLiquidusMax)
  return following.value < ofFamily.value ? following : ofFamily
}

interface Demands {
  readonly target: number
  readonly accuracyK: number
  readonly holdK: number
  readonly guardShare: number
  readonly file: InstrumentFile
  readonly answers: readonly SignalAnswer[]
  /** On which work was done by hand, ascending. */
  readonly days: readonly string[]
}

/** The newest check of one iron against its setting, the ceiling, and the check before it. */
function ironPart(log: Log, iron: string, rows: readonly number[], demands: Demands): Part {
  const { target, accuracyK, holdK, guardShare, file } = demands
  const row = rows[rows.length - 1]
  const setC = cellAt(log, 'setC', row)
  const deviationK = cellAt(log, 'measuredC', row) - setC
  const at = cellAt(log, 'at', row)
  const named = { subject: `Iron ${iron}`, about: { log: log.code, iron } }
  if (!Number.isFinite(deviationK) || !Number.isFinite(at))
    return { ...named, verdict: 'undetermined', found: 'its newest check lacks a setting or a measurement.' }
  const on = dayOf(log, at)
  const measured = { set: measure(setC, '°C'), offSetting: measure(deviationK, 'K'), on }
  const margin: Margin = {
    found: Math.abs(deviationK),
    limit: accuracyK,
    unit: 'K',
    direction: 'at most',
    guardBand: guardShare * accuracyK,
  }
  const printed = formatAgainst(Math.abs(deviationK), accuracyK, 'K').found
  const message = `${printed} ${deviationK < 0 ? 'below' : 'above'} its setting of ${formatQuantity(setC, '°C')} on ${on}`
  const badDays = daysOnBadChecks(log, checksOf(log, rows, demands), demands)
  if (badDays.length === 0 && log.readings.columns['state']?.[row ?? -1] === 'withdrawn')
    return { ...named, verdict: 'not applicable', found: `taken out of use on ${on}.` }
  if (setC > target)
    return {
      ...named,
      verdict: 'fails',
      measured,
      found: `set to ${formatQuantity(setC, '°C')} on ${on}, above the ${formatQuantity(target, '°C')} specified.`,
      margin: { found: setC, limit: target, unit: '°C', direction: 'at most', guardBand: 0 },
      remedy: { message: `Set iron ${iron} to ${formatQuantity(target, '°C')} or less and check it again.` },
    }
  const verdict = verdictOn(margin)
  if (verdict === 'fails')
    return {
      ...named,
      verdict,
      measured,
      found: `${message}.`,
      margin,
      remedy: { message: `Clean or change the bit of iron ${iron}, adjust its station, and check it again.` },
    }
  if (badDays.length > 0)
    return {
      ...named,
      verdict: 'fails',
      measured: { ...measured, workedOn: badDays },
      found: `${message}, but work was done on ${foldedList(badDays)} after a check outside.`,
      margin,
      remedy: {
        message: `Answer the check in log ${log.code} (chart rule "${OUTSIDE_WINDOW}"): what was done about iron ${iron}, and what became of the joints made with it.`,
      },
    }
  const doubt = checkDoubt(log, on, verdict, file)
  if (doubt !== undefined)
    return {
      ...named,
      measured,
      verdict: 'undetermined',
      found: `${message} proves nothing: ${doubt}.`,
      margin,
    }
  const driftK = driftSince(log, rows, setC, deviationK)
  if (driftK !== undefined && !(driftK <= holdK))
    return {
      ...named,
      verdict: 'fails',
      measured: { ...measured, check: 'drift' },
      found: `drifted by ${formatQuantity(driftK, 'K')} since the check before, at one setting.`,
      margin: { found: driftK, limit: holdK, unit: 'K', direction: 'at most', guardBand: 0 },
      remedy: {
        message: `Have the station of iron ${iron} mended; two checks in a row within ${formatQuantity(holdK, 'K')} clear it.`,
      },
    }
  return { ...named, verdict, measured, found: `${message}.`, margin }
}

/** How far the deviation moved since the check before, if that was at the same setting. */
function driftSince(log: Log, rows: readonly number[], setC: number, deviationK: number): number | undefined {
  const before = rows[rows.length - 2]
  if (before === undefined || cellAt(log, 'setC', before) !== setC) return undefined
  const drift = Math.abs(deviationK - (cellAt(log, 'measuredC', before) - setC))
  return Number.isFinite(drift) ? Number(drift.toPrecision(12)) : undefined
}

/** Each check of the iron, bad where it was left in use outside or set too hot. */
const checksOf = (log: Log, rows: readonly number[], { target, accuracyK }: Demands): CheckedIron[] =>
  rows.map((row) => {
    const setC = cellAt(log, 'setC', row)
    const off: Margin = {
      found: Math.abs(cellAt(log, 'measuredC', row) - setC),
      limit: accuracyK,
      unit: 'K',
      direction: 'at most',
      guardBand: 0,
    }
    const inUse = log.readings.columns['state']?.[row] !== 'withdrawn'
    return { at: cellAt(log, 'at', row), isBad: inUse && (setC > target || verdictOn(off) === 'fails') }
  })
