import { thermalStepChipMax, thermalStepMax } from '@/shared/plan/limits/control-wave'
import { bathTemperatureTarget } from '@/shared/plan/parameters/control-bath'
import { chipCapacitorsInWave } from '@/shared/plan/parameters/control-wave'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { formatQuantity } from '@/shared/quantity/format'
import { wavePreheat as characteristic } from '@/shared/records/characteristics/wave-preheat'
import { seriesFrom, type LogSeries } from '@/shared/logs/log-series'
import type { Log } from '@/shared/records/log'
import type { Judged } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { logsOf } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import { sourceOf } from '@/shared/rules/governing-source'
import { boundBy, guarded } from '@/shared/logs/logged-window'
import { processWindowGuard } from '@/shared/plan/limits/guard-bands'
import { judgeLoggedWindow } from '@/shared/logs/judge-logged-window'
import { calibrations, instrumentsOnFile, signalAnswers } from '@/shared/rules/log-record-sources'
import { solderingRuns } from '@/shared/rules/assembly-record-sources'
import { MACHINE_WORK } from '@/shared/logs/runs-held'
import { wavePreheatInterval } from '@/shared/plan/limits/control-intervals'
import { passesWave } from '@/shared/plan/soldering-baths'

/** The step each board made into the wave, in K: by the bath as measured then, else as specified. */
export const stepSeries = (log: Log, specifiedBathC: number | undefined): LogSeries =>
  seriesFrom(log, (cell) => {
    const uppersideC = cell('uppersideC')
    const bathC = cell('bathC') ?? specifiedBathC
    return uppersideC === undefined || bathC === undefined ? undefined : bathC - uppersideC
  })

export const thermalStepRule = rule({
  id: 'thermal-step',
  title: 'Step of temperature into the wave',
  why: 'Ceramic parts crack when they go from a cool preheat into hot solder; the crack opens years later.',
  formula: 'T(bath) − T(upper side) ≤ most',
  stage: 'control',
  version: 3,
  reads: {
    process: optional(solderingProcess),
    bath: bathTemperatureTarget,
    chips: optional(chipCapacitorsInWave),
    max: thermalStepMax,
    chipMax: thermalStepChipMax,
    logs: logsOf(characteristic),
    answers: signalAnswers,
    instruments: instrumentsOnFile,
    calibrations,
    runs: solderingRuns,
    interval: wavePreheatInterval,
    guard: processWindowGuard,
  },
  judge({ process, bath, chips, max, chipMax, logs, answers, instruments, ...rest }): Judged {
    if (!passesWave(process)) return notApplicable('No board passes over a wave in this programme.')
    const governing = chips === false || max.value < chipMax.value ? max : chipMax
    const judged = judgeLoggedWindow({
      what: 'Step into the wave',
      series: logs.map((log) => stepSeries(log, bath)),
      window: guarded({ max: boundBy(governing), unit: 'K' }, rest.guard),
      answers,
      instruments: { instruments, calibrations: rest.calibrations },
      mend: (step) =>
        `Raise the preheat by ${formatQuantity(step - governing.value, 'K')} or more, within its own window, or run the bath cooler.`,
      recordIn: 'a log of preheat',
      work: { ...MACHINE_WORK, runs: rest.runs, interval: rest.interval },
    })
    return {
      ...judged,
      working: [
        {
          label: 'Step',
          formula: 'ΔT = T(bath) − T(upper side)',
          numbers: `bath specified at ${bath} °C`,
          result: 'see each log',
        },
      ],
      sources: [sourceOf(governing), sourceOf(rest.interval)],
      notes: [
        ...(judged.notes ?? []),
        ...(chips === undefined ? ['Ceramic chip capacitors are taken to pass through the wave.'] : []),
      ],
    }
  },
})
