import { preheatRiseMax } from '@/shared/plan/limits/control-wave'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { wavePreheat as characteristic } from '@/shared/records/characteristics/wave-preheat'
import { columnSeries } from '@/shared/logs/log-series'
import type { Judged, Part } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { logsOf } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import { sourceOf } from '@/shared/rules/governing-source'
import { distinctSources } from '@/shared/sources/distinct-sources'
import { withFurtherParts } from '@/shared/rules/secondary-parts'
import { boundBy, guarded } from '@/shared/logs/logged-window'
import { processWindowGuard } from '@/shared/plan/limits/guard-bands'
import { judgeLoggedWindow, judgeSeries } from '@/shared/logs/judge-logged-window'
import { between, preheatRangeReads, preheatRequirements } from '@/shared/logs/process-windows'
import { calibrations, instrumentsOnFile, signalAnswers } from '@/shared/rules/log-record-sources'
import { solderingRuns } from '@/shared/rules/assembly-record-sources'
import { furtherRunsPart, MACHINE_WORK } from '@/shared/logs/runs-held'
import { thermalProfileInterval, wavePreheatInterval } from '@/shared/plan/limits/control-intervals'
import { HOT_SOLDER_CAUTIONS, passesWave } from '@/shared/plan/soldering-baths'
import { logSubject } from '@/shared/logs/judge-logged-window'

/** What the parts on the rise are about. */
const RISE = { key: 'steepest rise', words: 'steepest rise' } as const

export const wavePreheatRule = rule({
  id: 'wave-preheat',
  title: 'Preheat before the wave',
  why: 'Preheat dries and wakes the flux and takes the shock out of the wave; too much burns the flux off before it is needed.',
  formula: 'temperature of the upper side before the wave within the window',
  stage: 'control',
  version: 4,
  reads: {
    family: alloyFamily,
    process: optional(solderingProcess),
    ...preheatRangeReads,
    riseMax: preheatRiseMax,
    logs: logsOf(characteristic),
    answers: signalAnswers,
    instruments: instrumentsOnFile,
    calibrations,
    runs: solderingRuns,
    interval: wavePreheatInterval,
    riseInterval: thermalProfileInterval,
    guard: processWindowGuard,
  },
  judge(inputs): Judged {
    const { family, process, logs, answers, riseMax } = inputs
    if (!passesWave(process)) return notApplicable('No board passes over a wave in this programme.')
    const [min, max] = preheatRequirements(family, inputs)
    const instruments = { instruments: inputs.instruments, calibrations: inputs.calibrations }
    const judged = judgeLoggedWindow({
      what: 'Upper side entering the wave',
      series: logs.map((log) => columnSeries(log, characteristic.charted)),
      window: guarded(between(min, max, '°C'), inputs.guard),
      answers,
      instruments,
      mend: (newest) =>
        newest < min.value
          ? 'Raise the preheaters or run slower, and measure again with the board’s own mass.'
          : 'Lower the preheaters or run faster, and measure again with the board’s own mass.',
      recordIn: 'a log of preheat',
      work: { ...MACHINE_WORK, runs: inputs.runs, interval: inputs.interval },
    })
    const riseWindow = guarded({ max: boundBy(riseMax), unit: 'K/s' }, inputs.guard)
    const rises = logs
      .filter(({ readings }) => readings.count > 0)
      .map((log): Part => {
        const series = columnSeries(log, 'steepestRiseKPerS')
        const named = logSubject(log, RISE)
        if (series.values.length === 0)
          return {
            ...named,
            verdict: 'undetermined',
            found: 'never recorded.',
            remedy: {
              message: 'Take the steepest rise from the measured board and record it with the reading.',
            },
          }
        const mend = () => 'Spread the heat over more of the preheat zone.'
        return judgeSeries(series, { window: riseWindow, answers, instruments, mend }, named)
      })
    // The rise comes of a measured board, as a profile does, and is good for as long.
    const riseInTime = furtherRunsPart(
      { ...MACHINE_WORK, runs: inputs.runs, interval: inputs.riseInterval },
      logs.map((log) => columnSeries(log, 'steepestRiseKPerS')),
      { window: riseWindow, answers, instruments },
      RISE,
    )
    return {
      ...withFurtherParts(judged, 'Steepest rise', [...rises, ...riseInTime]),
      working: [],
      sources: distinctSources([
        sourceOf(min),
        sourceOf(max),
        sourceOf(riseMax),
        sourceOf(inputs.interval),
        sourceOf(inputs.riseInterval),
      ]),
      notes: [
        ...(judged.notes ?? []),
        'The flux data sheet governs the window: state it as a requirement where it differs.',
      ],
      cautions: HOT_SOLDER_CAUTIONS,
    }
  },
})
