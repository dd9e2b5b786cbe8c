import { acidNumberSeries } from '@/shared/logs/acid-number-series'
import {
  fluxAcidNumberTarget,
  fluxAcidNumberTolerance,
  fluxControlMethod,
} from '@/shared/plan/parameters/control-flux'
import { formatQuantity } from '@/shared/quantity/format'
import { fluxAcidNumber as characteristic } from '@/shared/records/characteristics/flux-acid-number'
import { cellAt, type LogSeries } from '@/shared/logs/log-series'
import { undetermined, type Judged, type WorkingLine } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { logsOf } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import { sourceOf } from '@/shared/rules/governing-source'
import { windowAround, guarded } from '@/shared/logs/logged-window'
import { processWindowGuard } from '@/shared/plan/limits/guard-bands'
import { judgeLoggedWindow } from '@/shared/logs/judge-logged-window'
import { calibrations, instrumentsOnFile, signalAnswers } from '@/shared/rules/log-record-sources'
import { solderingRuns } from '@/shared/rules/assembly-record-sources'
import { MACHINE_WORK } from '@/shared/logs/runs-held'
import { fluxAcidNumberInterval } from '@/shared/plan/limits/control-intervals'

export const fluxAcidNumberRule = rule({
  id: 'flux-acid-number',
  title: 'Flux acid number',
  why: 'Flux with few solids weighs almost as its thinner: only its acid tells its strength. Too little acid and solder does not wet; too much stays behind on the board.',
  formula: 'ml · mol/l · 56.106/g within target ± tolerance',
  stage: 'control',
  version: 3,
  reads: {
    method: fluxControlMethod,
    target: optional(fluxAcidNumberTarget),
    tolerance: optional(fluxAcidNumberTolerance),
    logs: logsOf(characteristic),
    answers: signalAnswers,
    instruments: instrumentsOnFile,
    calibrations,
    runs: solderingRuns,
    interval: fluxAcidNumberInterval,
    guard: processWindowGuard,
  },
  judge({
    method,
    target,
    tolerance,
    logs,
    answers,
    instruments,
    calibrations: certificates,
    ...rest
  }): Judged {
    if (method !== 'acid-number') return notApplicable('The flux is not controlled by its acid number.')
    if (target === undefined || tolerance === undefined) {
      const missing = [
        ...(target === undefined ? [fluxAcidNumberTarget.label] : []),
        ...(tolerance === undefined ? [fluxAcidNumberTolerance.label] : []),
      ]
      return undetermined(`Cannot be judged without: ${missing.join('; ')}.`, missing)
    }
    const series = logs.map(acidNumberSeries)
    return {
      ...judgeLoggedWindow({
        what: 'Flux acid number',
        series,
        window: guarded(windowAround(target, tolerance, 'mg KOH/g', 'specified acid number'), rest.guard),
        answers,
        instruments: { instruments, calibrations: certificates },
        mend: (newest) =>
          newest > target
            ? 'Add the thinner that the flux maker names in small amounts, stir and titrate again.'
            : 'Add fresh flux or renew the tank, stir and titrate again.',
        recordIn: 'a log of flux acid number',
        work: { ...MACHINE_WORK, runs: rest.runs, interval: rest.interval },
      }),
      working: series.flatMap(workingOf),
      sources: [
        {
          cite: 'Titration as in ISO 9455-3 and IPC-TM-650 2.3.13 (formula from memory)',
          how: 'from memory',
        },
        sourceOf(rest.interval),
      ],
      cautions: [
        'Flux thinner is highly flammable and the titrant is caustic: eye protection and gloves, no flame; the safety data sheets rule.',
      ],
    }
  },
})

function workingOf({ log, values, rows }: LogSeries): WorkingLine[] {
  const at = values.length - 1
  const newest = values[at]
  if (newest === undefined) return []
  const cell = (column: string): number => cellAt(log, column, rows[at])
  return [
    {
      label: `Log ${log.code}: newest acid number`,
      formula: 'ml · mol/l · 56.106 / g',
      numbers: `${cell('titrantMl')} · ${cell('titrantMolPerL')} · 56.106 / ${cell('sampleG')}`,
      result: formatQuantity(newest, 'mg KOH/g'),
    },
  ]
}
