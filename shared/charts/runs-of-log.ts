import type { LevelCharacteristic } from '@/shared/logs/level-characteristics'
import { guarded } from '@/shared/logs/logged-window'
import { mayBeOfLog } from '@/shared/logs/run-readings'
import { MACHINE_WORK, runsHeld, type HeldRun } from '@/shared/logs/runs-held'
import {
  bathTemperatureInterval,
  fluxAcidNumberInterval,
  fluxDensityInterval,
  waveContactInterval,
  waveGeometryInterval,
  wavePreheatInterval,
} from '@/shared/plan/limits/control-intervals'
import { processWindowGuard } from '@/shared/plan/limits/guard-bands'
import type { Limit } from '@/shared/plan/requirement'
import { governingRequirement } from '@/shared/plan/requirement'
import type { Log } from '@/shared/records/log'
import { solderingRuns } from '@/shared/rules/assembly-record-sources'
import type { Facts } from '@/shared/rules/facts'
import { inputsOf } from '@/shared/rules/inputs-of'
import { calibrations, instrumentsOnFile, signalAnswers } from '@/shared/rules/log-record-sources'
import { limitedLogs, limitedReads } from './limited-logs'
import { instantAtHour } from '@/shared/logs/log-day'

/** A soldering run of a log's line, at the instant it began (noon where only its day is known), epoch milliseconds. */
export interface RunOfLog extends HeldRun {
  readonly at: number
}

/** The runs a log is kept for, and how old a reading may be for them, in hours. */
export interface RunsOfLog {
  readonly maxHours: number
  readonly runs: readonly RunOfLog[]
}

const INTERVALS: Readonly<Record<LevelCharacteristic, Limit>> = {
  'flux-density': fluxDensityInterval,
  'flux-acid-number': fluxAcidNumberInterval,
  'bath-temperature': bathTemperatureInterval,
  'wave-contact': waveContactInterval,
  'wave-geometry': waveGeometryInterval,
  'wave-preheat': wavePreheatInterval,
}

const NOON = 12

const reads = {
  ...limitedReads,
  runs: solderingRuns,
  answers: signalAnswers,
  instruments: instrumentsOnFile,
  calibrations,
}

/**
 * The soldering runs of a log's line in order of time, each held against the
 * readings of all logs of that characteristic as the control rules hold it.
 * Undefined where the specification sets the log no window.
 */
export function runsOfLog(log: Log, facts: Facts): RunsOfLog | undefined {
  const inputs = inputsOf(reads, facts)
  if (!inputs) return undefined
  const alike = limitedLogs(inputs).filter(
    ({ characteristic, series }) => characteristic === log.characteristic && series.values.length > 0,
  )
  const own = alike.find(({ series }) => series.log.code === log.code)
  if (!own) return undefined
  const interval = governingRequirement(INTERVALS[own.characteristic], facts.requirements)
  const { answers, instruments, calibrations: earlier } = inputs
  const held = runsHeld(
    { ...MACHINE_WORK, runs: inputs.runs, interval },
    alike.map(({ series }) => series),
    {
      window: guarded(own.window, governingRequirement(processWindowGuard, facts.requirements)),
      answers,
      instruments: { instruments, calibrations: earlier },
    },
  )
  return {
    maxHours: interval.value,
    runs: held
      .filter(({ run }) => mayBeOfLog(run, own.series))
      .map((one) => ({
        ...one,
        at: instantAtHour(own.series.log, one.run.doneOn, one.run.begunAtH ?? NOON),
      }))
      .sort((a, b) => a.at - b.at),
  }
}
