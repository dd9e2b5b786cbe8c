import { storeHumidityMax, storeReadingInterval } from '@/shared/plan/limits/control-storage'
import { storageTemperature } from '@/shared/plan/parameters/storage'
import { addMonths } from '@/shared/quantity/calendar'
import { formatQuantity } from '@/shared/quantity/format'
import { storeClimate as characteristic } from '@/shared/records/characteristics/store-climate'
import { columnSeries, type Series } from '@/shared/logs/log-series'
import type { Log } from '@/shared/records/log'
import type { Lot } from '@/shared/records/lot'
import { isUsable, lotName, aboutLot } from '@/shared/records/lot-identity'
import type { Judged, Part } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts } from '@/shared/rules/parts'
import { logsOf, lots } from '@/shared/rules/record-source'
import type { InstrumentFile } from '@/shared/instruments/calibration-status'
import { daysRead, doubtOfStore } from '@/shared/storage/store-readings'
import { staysInStore, watchPart } from '@/shared/storage/store-watch'
import { rule, today } from '@/shared/rules/rule'
import { solderingRuns } from '@/shared/rules/assembly-record-sources'
import { calibrations, instrumentsOnFile } from '@/shared/rules/log-record-sources'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { marginIn, type ProcessWindow, guarded } from '@/shared/logs/logged-window'
import { processWindowGuard } from '@/shared/plan/limits/guard-bands'
import { monthsFor } from '@/shared/storage/storage-time'
import { measure, count } from '@/shared/rules/measure'
import { logSubject } from '@/shared/logs/judge-logged-window'
import { dayBegins, dayOf } from '@/shared/logs/log-day'

export const storeClimateRule = rule({
  id: 'store-climate',
  title: 'Climate of the store',
  why: 'The months that a finish may wait were calculated for one temperature. A warmer store ages it faster than the clock counts, a damp one tarnishes and corrodes it.',
  formula:
    'mean of each month within its window; while lots wait, days between readings by instruments in calibration ≤ most',
  stage: 'control',
  version: 3,
  reads: {
    temperature: storageTemperature,
    humidityMax: storeHumidityMax,
    guard: processWindowGuard,
    interval: storeReadingInterval,
    logs: logsOf(characteristic),
    lots,
    runs: solderingRuns,
    instruments: instrumentsOnFile,
    calibrations,
    today,
  },
  judge({ temperature, humidityMax, guard, logs, lots: onFile, ...rest }): Judged {
    const { interval } = rest
    const file = { instruments: rest.instruments, calibrations: rest.calibrations }
    const windows: Windows = {
      temperature: guarded(
        { max: { value: temperature, document: 'specified store temperature' }, unit: '°C' },
        guard,
      ),
      humidity: guarded(
        { max: { value: humidityMax.value, document: governingName(humidityMax) }, unit: '% RH' },
        guard,
      ),
    }
    const stored = onFile.filter((lot) => isUsable(lot) && monthsFor(lot, 1, 1) !== undefined)
    const logged = logs.filter(({ readings }) => readings.count > 0)
    const parts = [
      ...logged.flatMap((log) => logParts(log, windows, file)),
      ...stored.flatMap((lot) => lotParts(lot, windows)),
      ...watchPart(staysInStore(stored, rest.runs, rest.today), daysRead(logged, file), interval.value),
    ]
    if (parts.length === 0) return notApplicable('No lot is in store, and no climate of a store is logged.')
    return judgedByParts({
      parts,
      noun: 'means and statements',
      limit: `At most ${formatQuantity(temperature, '°C')} on the mean of any month, and ${formatQuantity(humidityMax.value, '% RH')} (${governingName(humidityMax)}); read every ${formatQuantity(interval.value, 'days')} at least while lots wait (${governingName(interval)}).`,
      working: [],
      sources: [humidityMax, interval].map(sourceOf),
      notes: [
        'Ageing follows the mean of the warmest time, so each month is held against the temperature, not each reading.',
      ],
    })
  },
})

type Windows = { readonly temperature: ProcessWindow; readonly humidity: ProcessWindow }

/** The warmest and the dampest month of a logged store. */
function logParts(log: Log, windows: Windows, file: InstrumentFile): Part[] {
  const part = (words: string, column: string, window: ProcessWindow): Part[] => {
    const worst = highestMonth(columnSeries(log, column))
    if (!worst) return []
    const { verdict, margin } = marginIn(window, worst.mean)
    const measured = {
      mean: measure(worst.mean, window.unit),
      month: worst.month,
      readings: count(worst.readings),
    }
    const found = `${formatQuantity(worst.mean, window.unit, 3)} on the mean of ${worst.month}, ${worst.readings} readings`
    const doubt = verdict === 'fails' ? undefined : doubtOfStore(log, verdict === 'marginal', file)
    if (doubt !== undefined)
      return [
        {
          ...logSubject(log, { key: column, words }),
          verdict: 'undetermined',
          measured: { ...measured, doubt },
          found: `${found}, proves nothing: ${doubt}.`,
          ...(margin && { margin }),
          remedy: { message: 'Read the store with an instrument in calibration, named in the log.' },
        },
      ]
    return [
      {
        ...logSubject(log, { key: column, words }),
        verdict,
        measured,
        found: `${found}.`,
        ...(margin && { margin }),
        ...(verdict === 'fails' && {
          remedy: {
            message: 'Cool or dry the store, or calculate the storage life again at what it really is.',
          },
        }),
      },
    ]
  }
  return [
    ...part('temperature', 'temperatureC', windows.temperature),
    ...part('humidity', 'relativeHumidityPct', windows.humidity),
  ]
}

interface MonthMean {
  readonly month: string
  readonly mean: number
  readonly readings: number
}

/** The month of the highest mean; undefined without readings. Instants ascend, so that a month's end is worked out once. */
export function highestMonth({ instants, values, log = {} }: Series): MonthMean | undefined {
  let highest: MonthMean | undefined
  let from = 0
  while (from < values.length) {
    const month = dayOf(log, instants[from]!).slice(0, 7)
    const end = dayBegins(log, addMonths(`${month}-01`, 1))
    let [sum, to] = [0, from]
    while (to < values.length && instants[to]! < end) sum += values[to++]!
    const mean = sum / (to - from)
    if (!highest || mean > highest.mean) highest = { month, mean, readings: to - from }
    from = to
  }
  return highest
}

/** What was stated when the lot came in: only what lies beyond is worth a line of its own. */
function lotParts(lot: Lot, { temperature, humidity }: Windows): Part[] {
  const { temperatureC, relativeHumidityPct } = lot.storage
  const named = {
    subject: lotName(lot),
    about: aboutLot(lot),
    measured: {
      temperature: measure(temperatureC, '°C'),
      humidity: measure(relativeHumidityPct, '% RH'),
    },
  }
  const hot = marginIn(temperature, temperatureC)
  const damp = marginIn(humidity, relativeHumidityPct)
  const beyond = hot.verdict === 'fails' ? hot : damp.verdict === 'fails' ? damp : undefined
  const found = `put in store at ${formatQuantity(temperatureC, '°C')} and ${formatQuantity(relativeHumidityPct, '% RH')}.`
  if (!beyond) return [{ ...named, verdict: 'meets', found }]
  return [
    {
      ...named,
      verdict: 'fails',
      found,
      ...(beyond.margin && { margin: beyond.margin }),
      remedy: {
        message: 'Move the lot to the specified store, and test its solderability again before it is used.',
      },
    },
  ]
}
