import { dateOf } from '@/shared/quantity/calendar'
import { formatAgainst, formatQuantity } from '@/shared/quantity/format'
import { calibrationStanding } from '@/shared/instruments/calibration-status'
import { thermalProfile as characteristic } from '@/shared/records/characteristics/thermal-profile'
import { cellAt } from '@/shared/logs/log-series'
import type { Log } from '@/shared/records/log'
import { undetermined, type Judged, type Part } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts } from '@/shared/rules/parts'
import { logsOf } from '@/shared/rules/record-source'
import { rule } from '@/shared/rules/rule'
import { sourceOf } from '@/shared/rules/ruling-source'
import { marginIn, windowInWords, type ProcessWindow } from '@/shared/logs/logged-window'
import { profileReads, profileWindows, type ProfileWindows } from '@/shared/profiles/profile-windows'
import { profileSummary, SLOPE_WINDOW_S, type ProfileSummary } from '@/shared/profiles/profile-summary'
import { calibrations, instrumentsOnFile } from '@/shared/rules/log-record-sources'

export const thermalProfileRule = rule({
  id: 'thermal-profile',
  title: 'Thermal profile of the board',
  why: 'The oven is set to temperatures; the joints follow with their own mass. Only a measured board tells whether its coolest joint melted long enough and its hottest part was spared.',
  stage: 'control',
  version: 1,
  reads: {
    ...profileReads,
    logs: logsOf(characteristic),
    instruments: instrumentsOnFile,
    calibrations,
  },
  judge(inputs): Judged {
    const { family, process, alloy, logs } = inputs
    if (process !== 'reflow' && process !== undefined)
      return notApplicable(
        'No board is reflowed in this programme; a profile of the wave is drawn with its log.',
      )
    if (process === undefined && logs.length === 0) return notApplicable('No thermal profile is recorded.')
    const windows = profileWindows(inputs)
    const { liquidusC } = windows
    const limit = `Peak: ${windowInWords(windows.peak)} Above ${formatQuantity(liquidusC, '°C')}: ${windowInWords(windows.aboveLiquidus)}`
    const newest = newestOfEachMachine(logs)
    if (newest.length === 0)
      return undetermined(
        'No thermal profile is recorded yet. Import one pass of a measured board as a log of its own.',
        ['a thermal profile of the board'],
        limit,
      )
    const file = { instruments: inputs.instruments, calibrations: inputs.calibrations }
    const parts = newest.flatMap((log): Part[] => {
      const summary = profileSummary(log, liquidusC)
      const subject = `Profile ${log.code}`
      if (!summary) return [{ subject, verdict: 'undetermined', found: 'no thermocouple has two samples.' }]
      const on = dateOf(cellAt(log, 'at', 0))
      const standing = log.instrumentId === null ? undefined : calibrationStanding(log.instrumentId, on, file)
      if (standing && !standing.stands)
        return [{ subject, verdict: 'undetermined', found: `proves nothing: ${standing.says}.` }]
      return partsOf(subject, summary, windows)
    })
    return judgedByParts({
      parts,
      noun: 'terms',
      limit,
      working: newest.flatMap((log) => workingOf(log, profileSummary(log, liquidusC), liquidusC)),
      sources: [
        sourceOf(family === 'tin-lead' ? inputs.peakTinLeadLeast : inputs.peakLeadFreeLeast),
        sourceOf(inputs.spreadMost),
      ],
      notes: [
        'Of several passes on one machine the newest is judged. The paste and component data sheets govern: state them as requirements.',
        ...(alloy ? [] : [`No alloy is chosen: liquidus taken as ${liquidusC} °C.`]),
      ],
      cautions: ['Ovens, boards and thermocouples leave at soldering heat; fume extraction must run.'],
    })
  },
})

/** The newest profile of each line and machine, by its first reading. */
function newestOfEachMachine(logs: readonly Log[]): Log[] {
  const newest = new Map<string, Log>()
  for (const log of logs) {
    if (log.readings.count === 0) continue
    const key = `${log.line}\n${log.machine}`
    const known = newest.get(key)
    if (!known || cellAt(log, 'at', 0) >= cellAt(known, 'at', 0)) newest.set(key, log)
  }
  return [...newest.values()]
}

/** Each term at its worst thermocouple. */
function partsOf(subject: string, summary: ProfileSummary, windows: ProfileWindows): Part[] {
  const { couples, peakSpreadK } = summary
  const term = (
    what: string,
    window: ProcessWindow,
    of: (couple: ProfileSummary['couples'][number]) => number,
    mend: string,
  ): Part[] => {
    const judged = couples.map((couple) => ({ couple, ...marginIn(window, of(couple)) }))
    const room = ({ margin }: (typeof judged)[number]): number =>
      margin
        ? margin.direction === 'at most'
          ? margin.limit - margin.found
          : margin.found - margin.limit
        : Infinity
    const worst = judged.reduce((least, one) => (room(one) < room(least) ? one : least))
    const printed = worst.margin
      ? formatAgainst(worst.margin.found, worst.margin.limit, window.unit).found
      : formatQuantity(of(worst.couple), window.unit)
    return [
      {
        subject: `${subject}, ${what}`,
        verdict: worst.verdict,
        found: `${printed} at ${worst.couple.name.toLowerCase()}.`,
        ...(worst.margin && { margin: worst.margin }),
        ...(worst.verdict === 'fails' && { remedy: { says: mend } }),
      },
    ]
  }
  const spread = marginIn(windows.spread, peakSpreadK)
  return [
    ...term(
      'peak',
      windows.peak,
      ({ peakC }) => peakC,
      'Change the last zones or the speed, and measure again.',
    ),
    ...term(
      'time above liquidus',
      windows.aboveLiquidus,
      ({ timeAboveLiquidusS }) => timeAboveLiquidusS,
      'Change the speed, or the zones about the peak, and measure again.',
    ),
    ...(windows.soak
      ? term(
          'soak',
          windows.soak,
          ({ soakS }) => soakS,
          'Change the middle zones or the speed, and measure again.',
        )
      : []),
    ...term(
      'steepest rise',
      windows.rise,
      ({ steepestRiseKPerS }) => steepestRiseKPerS,
      'Lower the first zones or run slower, and measure again.',
    ),
    ...(couples.length > 1
      ? [
          {
            subject: `${subject}, difference at the peak`,
            verdict: spread.verdict,
            found: `${formatQuantity(peakSpreadK, 'K', 3)} between the hottest and the coolest place.`,
            ...(spread.margin && { margin: spread.margin }),
            ...(spread.verdict === 'fails' && {
              remedy: { says: 'Soak longer so that heavy parts catch up, or shield the light ones.' },
            }),
          },
        ]
      : []),
  ]
}

const workingOf = (
  { code }: Log,
  summary: ProfileSummary | undefined,
  liquidusC: number,
): Judged['working'] =>
  (summary?.couples ?? []).map((couple) => ({
    label: `${code}, ${couple.name.toLowerCase()}`,
    formula: `slopes over ${SLOPE_WINDOW_S} s or more; times interpolated between samples`,
    result: `peak ${formatQuantity(couple.peakC, '°C')} after ${formatQuantity(couple.peakAtS, 's')}; ${formatQuantity(couple.timeAboveLiquidusS, 's')} above ${formatQuantity(liquidusC, '°C')}; soak ${formatQuantity(couple.soakS, 's')}; rise ${formatQuantity(couple.steepestRiseKPerS, 'K/s', 3)}, fall ${formatQuantity(couple.steepestFallKPerS, 'K/s', 3)}`,
  }))
