import { ALLOYS } from '@/shared/materials/alloys'
import { bathTemperatureTolerance } from '@/shared/plan/limits/control-bath'
import { bathTemperatureTarget } from '@/shared/plan/parameters/control-bath'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { formatQuantity } from '@/shared/quantity/format'
import { bathTemperature as characteristic } from '@/shared/records/characteristics/bath-temperature'
import { columnSeries } from '@/shared/logs/log-series'
import type { Judged } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { logsOf } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import { sourceOf } from '@/shared/rules/governing-source'
import { distinctSources } from '@/shared/sources/distinct-sources'
import { bothWindows, marginIn, windowAround, windowInWords, guarded } from '@/shared/logs/logged-window'
import { processWindowGuard } from '@/shared/plan/limits/guard-bands'
import { judgeLoggedWindow } from '@/shared/logs/judge-logged-window'
import { bathRange, bathRangeReads, bathRequirements } from '@/shared/logs/process-windows'
import { calibrations, instrumentsOnFile, signalAnswers } from '@/shared/rules/log-record-sources'
import { solderingRuns } from '@/shared/rules/assembly-record-sources'
import { MACHINE_WORK } from '@/shared/logs/runs-held'
import { bathTemperatureInterval } from '@/shared/plan/limits/control-intervals'
import { HOT_SOLDER_CAUTIONS, keepsBath } from '@/shared/plan/soldering-baths'
import { measure } from '@/shared/rules/measure'

export const bathTemperatureRule = rule({
  id: 'bath-temperature',
  title: 'Solder bath temperature',
  why: 'Too cool and solder neither wets in time nor rises in the holes; too hot and copper dissolves, flux burns off and boards suffer.',
  formula:
    'each reading within target ± tolerance and what the alloy is run at; a reading before each run within the interval',
  stage: 'control',
  version: 3,
  reads: {
    family: alloyFamily,
    target: bathTemperatureTarget,
    process: optional(solderingProcess),
    tolerance: bathTemperatureTolerance,
    ...bathRangeReads,
    logs: logsOf(characteristic),
    answers: signalAnswers,
    instruments: instrumentsOnFile,
    calibrations,
    runs: solderingRuns,
    interval: bathTemperatureInterval,
    guard: processWindowGuard,
  },
  judge(inputs): Judged {
    const { family, target, process, tolerance, logs, answers, instruments } = inputs
    if (!keepsBath(process)) return notApplicable('No solder bath is kept in this programme.')
    const ofFamily = bathRange(family, process, inputs)
    const sources = distinctSources(
      [tolerance, ...bathRequirements(family, inputs), inputs.interval].map(sourceOf),
    )
    const { verdict, margin } = marginIn(ofFamily, target)
    if (verdict === 'fails' && margin)
      return {
        verdict,
        found: `The specified bath temperature of ${formatQuantity(target, '°C')} lies outside what a bath of ${inputs.alloy ? ALLOYS[inputs.alloy].label : family} is run at.`,
        limit: windowInWords(ofFamily),
        margin,
        measured: { specified: measure(target, '°C'), solder: inputs.alloy ?? family },
        working: [],
        sources,
        remedy: {
          message: `Specify ${formatQuantity(margin.limit, '°C')}, the nearest inside.`,
          parameter: bathTemperatureTarget.key,
          value: margin.limit,
        },
        cautions: HOT_SOLDER_CAUTIONS,
      }
    const around = windowAround(target, tolerance.value, '°C', tolerance.document)
    const window = guarded(bothWindows(ofFamily, around), inputs.guard)
    const judged = judgeLoggedWindow({
      what: 'Solder bath temperature',
      series: logs.map((log) => columnSeries(log, characteristic.charted)),
      window,
      answers,
      instruments: { instruments, calibrations: inputs.calibrations },
      mend: (newest) =>
        `Bring the bath ${newest < target ? 'up' : 'down'} to ${formatQuantity(target, '°C')}, let it settle and measure again.`,
      recordIn: 'a log of solder bath temperature',
      work: { ...MACHINE_WORK, runs: inputs.runs, interval: inputs.interval },
    })
    return {
      ...judged,
      working: [
        {
          label: 'Window',
          formula: 'target ± tolerance, within what the alloy is run at',
          numbers: `${target} ± ${tolerance.value} °C; ${windowInWords(ofFamily)}`,
          result: `${window.min ? formatQuantity(window.min.value, '°C') : '−∞'} to ${window.max ? formatQuantity(window.max.value, '°C') : '∞'}`,
        },
      ],
      sources,
      notes: [
        ...(judged.notes ?? []),
        'Old documents print bath temperatures in °F and °C that do not agree; the °C values are used here.',
      ],
      cautions: HOT_SOLDER_CAUTIONS,
    }
  },
})
