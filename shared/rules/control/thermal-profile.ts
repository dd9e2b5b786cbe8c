import { calibrationStatus, type InstrumentFile } from '@/shared/instruments/calibration-status'
import { cellAt, type LogSeries } from '@/shared/logs/log-series'
import { windowInWords } from '@/shared/logs/logged-window'
import { readingsOfRun } from '@/shared/logs/run-readings'
import { intervalInWords, runsInWords, runsMeasured } from '@/shared/logs/runs-held'
import { thermalProfileInterval } from '@/shared/plan/limits/control-intervals'
import { thermocouplesMin } from '@/shared/plan/limits/control-profile'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { profileSummary, SLOPE_WINDOW_S, type ProfileSummary } from '@/shared/profiles/profile-summary'
import { profileTerms } from '@/shared/profiles/profile-terms'
import {
  peakRequirements,
  profileReads,
  profileWindows,
  type ProfileWindows,
} from '@/shared/profiles/profile-windows'
import { formatQuantity } from '@/shared/quantity/format'
import { thermalProfile as characteristic } from '@/shared/records/characteristics/thermal-profile'
import type { Log } from '@/shared/records/log'
import type { SolderingRun } from '@/shared/records/soldering-work'
import { solderingRuns } from '@/shared/rules/assembly-record-sources'
import { undetermined, worstVerdict, type Judged, type Part } from '@/shared/rules/finding'
import { count } from '@/shared/rules/measure'
import { calibrations, instrumentsOnFile } from '@/shared/rules/log-record-sources'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts } from '@/shared/rules/parts'
import { logsOf } from '@/shared/rules/record-source'
import { rule } from '@/shared/rules/rule'
import { sourceOf } from '@/shared/rules/governing-source'
import { distinctSources } from '@/shared/sources/distinct-sources'
import { dayOf } from '@/shared/logs/log-day'

export const thermalProfileRule = rule({
  id: 'thermal-profile',
  title: 'Thermal profile of the board',
  why: 'The oven is set to temperatures; the joints follow with their own mass. Only a measured board tells whether its coolest joint melted long enough and its hottest part was spared.',
  formula: 'slopes, peak, times and spread of each run within their windows; enough thermocouples',
  stage: 'control',
  version: 2,
  reads: {
    ...profileReads,
    minCouples: thermocouplesMin,
    interval: thermalProfileInterval,
    logs: logsOf(characteristic),
    runs: solderingRuns,
    instruments: instrumentsOnFile,
    calibrations,
  },
  judge(inputs): Judged {
    const { process, alloy, logs, minCouples, interval } = inputs
    if (process !== 'reflow' && process !== undefined)
      return notApplicable(
        'No board is reflowed in this programme; a profile of the wave is drawn with its log.',
      )
    if (process === undefined && logs.length === 0)
      return notApplicable('No reflow is specified, and no thermal profile is recorded.')
    const windows = profileWindows(inputs)
    const { liquidusC } = windows
    const limit = `Peak: ${windowInWords(windows.peak)} Above ${formatQuantity(liquidusC, '°C')}: ${windowInWords(windows.aboveLiquidus)} ${intervalInWords({ interval })}`
    const passes = logs.filter(({ readings }) => readings.count > 0)
    if (passes.length === 0)
      return undetermined(
        'No thermal profile is recorded yet. Import one pass of a measured board as a log of its own.',
        ['a thermal profile of the board'],
        limit,
      )
    const asked = { windows, minCouples, file: inputs }
    const newest = newestOfEachMachine(passes)
    return judgedByParts({
      parts: [
        ...newest.flatMap((log) => passParts(log, asked)),
        ...(process === 'reflow' ? [runsPart(inputs.runs, passes, asked, interval)] : []),
      ],
      noun: 'terms',
      limit,
      working: newest.flatMap((log) => workingOf(log, profileSummary(log, liquidusC), liquidusC)),
      sources: distinctSources(
        [...peakRequirements(inputs), inputs.fallMax, inputs.spreadMax, minCouples, interval].map(sourceOf),
      ),
      notes: [
        'Of several passes on one machine the newest is judged, and for each run the newest before it. The paste and component data sheets govern: state them as requirements.',
        ...(alloy ? [] : [`No alloy is chosen: liquidus taken as ${liquidusC} °C.`]),
      ],
      cautions: ['Ovens, boards and thermocouples leave at soldering heat; fume extraction must run.'],
    })
  },
})

/** What every pass is held against. */
interface Asked {
  readonly windows: ProfileWindows
  readonly minCouples: GoverningRequirement
  readonly file: InstrumentFile
}

/** The newest profile of each line and machine, by its first reading. */
function newestOfEachMachine(logs: readonly Log[]): Log[] {
  const newest = new Map<string, Log>()
  for (const log of logs) {
    const key = `${log.line}\n${log.machine}`
    const known = newest.get(key)
    if (!known || cellAt(log, 'at', 0) >= cellAt(known, 'at', 0)) newest.set(key, log)
  }
  return [...newest.values()]
}

function passParts(log: Log, { windows, minCouples, file }: Asked): Part[] {
  const summary = profileSummary(log, windows.liquidusC)
  const named = { subject: `Profile ${log.code}`, about: { log: log.code } }
  if (!summary) return [{ ...named, verdict: 'undetermined', found: 'no thermocouple has two samples.' }]
  const status = calibrationStatus(log.instrumentId, dayOf(log, cellAt(log, 'at', 0)), file)
  if (!status.stands)
    return [
      {
        ...named,
        verdict: 'undetermined',
        found: `proves nothing: ${log.instrumentId === null ? 'no instrument is named' : status.message}.`,
      },
    ]
  return profileTerms(log, summary, windows, minCouples)
}

/** Every run of reflow rests on a pass before it on its line, in time and inside. */
function runsPart(
  runs: readonly SolderingRun[],
  passes: readonly Log[],
  asked: Asked,
  interval: GoverningRequirement,
): Part {
  const named = { subject: 'Soldering runs', about: { matter: 'soldering runs' } }
  const own = runs.filter(({ skill }) => skill === 'reflow-soldering')
  if (own.length === 0)
    return {
      ...named,
      verdict: 'undetermined',
      found: 'no reflow soldering is recorded yet: there is no day of work to hold a profile against.',
      remedy: { message: 'Record the runs of reflow soldering, each with its day and line.' },
    }
  const series = passes.map((log): LogSeries => ({
    log,
    instants: [cellAt(log, 'at', 0)],
    values: [0],
    rows: [0],
  }))
  const verdictOf = (run: SolderingRun) => {
    const found = readingsOfRun(run, series, interval.value)
    if ('missing' in found) return 'undetermined'
    const newest = newestOfEachMachine(found.readings.map((reading) => reading.series.log))
    return worstVerdict(newest.flatMap((log) => passParts(log, asked)).map((part) => part.verdict))
  }
  const judged = own.map((run) => ({ run, verdict: verdictOf(run) }))
  const verdict = worstVerdict(judged.map((one) => one.verdict))
  if (verdict === 'meets' || verdict === 'marginal')
    return {
      ...named,
      verdict,
      measured: { runs: count(own.length) },
      found: `all ${own.length} rest on a profile in time before them.`,
    }
  const shown = judged.filter((one) => one.verdict === verdict).map(({ run }) => run)
  return {
    ...named,
    verdict,
    measured: { runs: runsMeasured(shown) },
    found: `${runsInWords(shown)}: ${verdict === 'fails' ? 'soldered on a profile that lies outside' : 'no sound profile in time before the work'}.`,
    remedy: { message: 'Measure a board now, and let quality decide what the work of these runs is worth.' },
  }
}

const workingOf = (
  { code }: Log,
  summary: ProfileSummary | undefined,
  liquidusC: number,
): Judged['working'] =>
  (summary?.couples ?? []).map((couple) => ({
    label: `${code}, ${couple.name.toLowerCase()}`,
    formula: `slopes over ${SLOPE_WINDOW_S} s or more; times interpolated between samples`,
    result: `peak ${formatQuantity(couple.peakC, '°C')} after ${formatQuantity(couple.peakAtS, 's')}; ${formatQuantity(couple.timeAboveLiquidusS, 's')} above ${formatQuantity(liquidusC, '°C')}; soak ${formatQuantity(couple.soakS, 's')}; rise ${slope(couple.steepestRiseKPerS)}, fall ${slope(couple.steepestFallKPerS)}`,
  }))

const slope = (kPerS: number): string =>
  Number.isNaN(kPerS) ? 'not measured' : formatQuantity(kPerS, 'K/s', 3)
