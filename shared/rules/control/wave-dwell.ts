import { dwellSeries, totalDwellSeries } from '@/shared/logs/dwell-series'
import { contactLengthFor, conveyorSpeedFor } from '@/shared/physics/wave-contact'
import { waveDwellMin, waveDwellMax, waveDwellTotalMax } from '@/shared/plan/limits/control-wave'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { waveContact as characteristic } from '@/shared/records/characteristics/wave-contact'
import { cellAt, type LogSeries } from '@/shared/logs/log-series'
import type { Judged } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { logsOf } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import { sourceOf } from '@/shared/rules/governing-source'
import { distinctSources } from '@/shared/sources/distinct-sources'
import { withFurtherParts } from '@/shared/rules/secondary-parts'
import { boundBy, guarded } from '@/shared/logs/logged-window'
import { processWindowGuard } from '@/shared/plan/limits/guard-bands'
import { judgeLoggedWindow, judgeSeries } from '@/shared/logs/judge-logged-window'
import { between } from '@/shared/logs/process-windows'
import { calibrations, instrumentsOnFile, signalAnswers } from '@/shared/rules/log-record-sources'
import { solderingRuns } from '@/shared/rules/assembly-record-sources'
import { furtherRunsPart, MACHINE_WORK } from '@/shared/logs/runs-held'
import { waveContactInterval } from '@/shared/plan/limits/control-intervals'
import { HOT_SOLDER_CAUTIONS, passesWave } from '@/shared/plan/soldering-baths'
import { logSubject } from '@/shared/logs/judge-logged-window'

/** What the part on both waves is about. */
const BOTH = { key: 'both waves', words: 'both waves' } as const

export const waveDwellRule = rule({
  id: 'wave-dwell',
  title: 'Dwell in the wave',
  why: 'A joint needs so many seconds in the wave to heat through, wet and fill; more of them dissolves copper and harms laminate and parts.',
  formula: 'length of contact/conveyor speed within the window',
  stage: 'control',
  version: 4,
  reads: {
    process: optional(solderingProcess),
    min: waveDwellMin,
    max: waveDwellMax,
    totalMax: waveDwellTotalMax,
    logs: logsOf(characteristic),
    answers: signalAnswers,
    instruments: instrumentsOnFile,
    calibrations,
    runs: solderingRuns,
    interval: waveContactInterval,
    guard: processWindowGuard,
  },
  judge({ process, min, max, totalMax, logs, answers, ...rest }): Judged {
    if (!passesWave(process)) return notApplicable('No board passes over a wave in this programme.')
    const window = guarded(between(min, max, 's'), rest.guard)
    const instruments = { instruments: rest.instruments, calibrations: rest.calibrations }
    const work = { ...MACHINE_WORK, runs: rest.runs, interval: rest.interval }
    const series = logs.map(dwellSeries)
    const judged = judgeLoggedWindow({
      what: 'Dwell in the main wave',
      series,
      window,
      answers,
      instruments,
      mend: (_, at) => settingsFor((min.value + max.value) / 2, at),
      recordIn: 'a log of wave contact and speed',
      work,
    })
    const both = logs.map(totalDwellSeries).filter(({ values }) => values.length > 0)
    const bothWindow = guarded({ max: boundBy(totalMax), unit: 's' }, rest.guard)
    const totals = [
      ...both.map((one) =>
        judgeSeries(
          one,
          {
            window: bothWindow,
            answers,
            instruments,
            mend: () => 'Run faster, or shorten the contact of either wave.',
          },
          logSubject(one.log, BOTH),
        ),
      ),
      // Where a first wave runs, its contact is read as often as that of the main wave.
      ...furtherRunsPart(work, both, { window: bothWindow, answers, instruments }, BOTH),
    ]
    return {
      ...withFurtherParts(judged, 'Both waves together', totals),
      working: series.flatMap((one) => workingOf(one)),
      sources: distinctSources([sourceOf(min), sourceOf(max), sourceOf(totalMax), sourceOf(rest.interval)]),
      notes: [
        ...(judged.notes ?? []),
        'The dwell judged is that of the main wave alone; both waves are held to their own limit.',
      ],
      cautions: HOT_SOLDER_CAUTIONS,
    }
  },
})

/** The conveyor speed at the contact measured, or the contact at that speed, that gives the dwell. */
function settingsFor(wantedS: number, { log, rows }: LogSeries): string {
  const row = rows[rows.length - 1]
  const lengthMm = cellAt(log, 'contactLengthMm', row)
  const speed = cellAt(log, 'conveyorSpeedMPerMin', row)
  return `Run at ${formatNumber(conveyorSpeedFor(lengthMm, wantedS), 3)} m/min with this contact, or set a contact of ${formatNumber(contactLengthFor(speed, wantedS), 3)} mm at this speed: that gives ${formatQuantity(wantedS, 's')}.`
}

function workingOf({ log, rows, values }: LogSeries): Judged['working'] {
  const newest = values[values.length - 1]
  if (newest === undefined) return []
  const row = rows[rows.length - 1]
  return [
    {
      label: `Log ${log.code}: dwell in the main wave`,
      formula: 't = L / v',
      numbers: `${cellAt(log, 'contactLengthMm', row)} mm / ${cellAt(log, 'conveyorSpeedMPerMin', row)} m/min · 60/1000`,
      result: formatQuantity(newest, 's'),
    },
  ]
}
