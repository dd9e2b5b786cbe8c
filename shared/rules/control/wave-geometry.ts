import { guarded } from '@/shared/logs/logged-window'
import { processWindowGuard } from '@/shared/plan/limits/guard-bands'
import {
  conveyorAngleMin,
  conveyorAngleMax,
  immersionMin,
  immersionMax,
} from '@/shared/plan/limits/control-wave'
import { boardThickness } from '@/shared/plan/parameters/laminate'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { formatQuantity } from '@/shared/quantity/format'
import { waveGeometry as characteristic } from '@/shared/records/characteristics/wave-geometry'
import { columnSeries, seriesFrom, type LogSeries } from '@/shared/logs/log-series'
import type { Log } from '@/shared/records/log'
import type { Judged } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { logsOf } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import { sourceOf } from '@/shared/rules/governing-source'
import { distinctSources } from '@/shared/sources/distinct-sources'
import { withFurtherParts } from '@/shared/rules/secondary-parts'
import { judgeLoggedWindow, judgeSeries } from '@/shared/logs/judge-logged-window'
import { between } from '@/shared/logs/process-windows'
import { calibrations, instrumentsOnFile, signalAnswers } from '@/shared/rules/log-record-sources'
import { solderingRuns } from '@/shared/rules/assembly-record-sources'
import { MACHINE_WORK } from '@/shared/logs/runs-held'
import { waveGeometryInterval } from '@/shared/plan/limits/control-intervals'
import { passesWave } from '@/shared/plan/soldering-baths'
import { logSubject } from '@/shared/logs/judge-logged-window'

/** Immersion as a share of the board's thickness, in %. */
export const immersionShareSeries = (log: Log, thicknessMm: number): LogSeries =>
  seriesFrom(log, (cell) => {
    const immersionMm = cell('immersionMm')
    return immersionMm === undefined ? undefined : Number(((immersionMm / thicknessMm) * 100).toPrecision(12))
  })

export const waveGeometryRule = rule({
  id: 'wave-geometry',
  title: 'Immersion and conveyor angle',
  why: 'Too shallow and joints are skipped; too deep and solder floods the upper side. The climb lets bridges peel off.',
  formula: 'depth/board thickness, and conveyor angle, within their windows',
  stage: 'control',
  version: 3,
  reads: {
    process: optional(solderingProcess),
    thickness: boardThickness,
    min: immersionMin,
    max: immersionMax,
    angleMin: conveyorAngleMin,
    angleMax: conveyorAngleMax,
    logs: logsOf(characteristic),
    answers: signalAnswers,
    instruments: instrumentsOnFile,
    calibrations,
    runs: solderingRuns,
    interval: waveGeometryInterval,
    guard: processWindowGuard,
  },
  judge({ process, thickness, min, max, angleMin, angleMax, logs, answers, ...rest }): Judged {
    if (!passesWave(process)) return notApplicable('No board passes over a wave in this programme.')
    const instruments = { instruments: rest.instruments, calibrations: rest.calibrations }
    const inMm = (share: number): string => formatQuantity((share / 100) * thickness, 'mm', 3)
    const judged = judgeLoggedWindow({
      what: 'Immersion',
      series: logs.map((log) => immersionShareSeries(log, thickness)),
      window: guarded(between(min, max, '%'), rest.guard),
      answers,
      instruments,
      mend: () => `Set the wave so that the board dips ${inMm(min.value)} to ${inMm(max.value)}.`,
      recordIn: 'a log of wave immersion and conveyor angle',
      work: { ...MACHINE_WORK, runs: rest.runs, interval: rest.interval },
    })
    const angles = logs
      .map((log) => columnSeries(log, 'angleDeg'))
      .filter(({ values }) => values.length > 0)
      .map((one) =>
        judgeSeries(
          one,
          {
            window: guarded(between(angleMin, angleMax, '°'), rest.guard),
            answers,
            instruments,
            mend: () => `Set the conveyor to climb by ${angleMin.value} to ${angleMax.value}°.`,
          },
          logSubject(one.log, { key: 'angle', words: 'angle' }),
        ),
      )
    return {
      ...withFurtherParts(judged, 'Conveyor angle', angles),
      working: [
        {
          label: 'Immersion',
          formula: 'share = depth / board thickness',
          numbers: `board ${thickness} mm`,
          result: `${inMm(min.value)} to ${inMm(max.value)}`,
        },
      ],
      sources: distinctSources([sourceOf(min), sourceOf(angleMin), sourceOf(rest.interval)]),
    }
  },
})
