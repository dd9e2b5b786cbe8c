import {
  bathTemperatureTolerance,
  leadFreeBathLeast,
  leadFreeBathMost,
  tinLeadBathLeast,
  tinLeadBathMost,
} from '@/shared/plan/limits/control-bath'
import {
  preheatLeadFreeLeast,
  preheatLeadFreeMost,
  preheatTinLeadLeast,
  preheatTinLeadMost,
  waveDwellLeast,
  waveDwellMost,
} from '@/shared/plan/limits/control-wave'
import { bathTemperatureTarget } from '@/shared/plan/parameters/control-bath'
import {
  fluxAcidNumberTarget,
  fluxAcidNumberTolerance,
  fluxControlMethod,
  fluxDensityCoefficient,
  fluxDensityTarget,
  fluxDensityTolerance,
  fluxReferenceTemperature,
} from '@/shared/plan/parameters/control-flux'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import type { Log } from '@/shared/records/log'
import { columnSeries, type LogSeries } from '@/shared/records/log-series'
import { optional, type Inputs } from '@/shared/rules/rule'
import { acidNumberSeries } from './flux-acid-number'
import { densitySeries } from './flux-density'
import { bothWindows, boundBy, windowAround, type ProcessWindow } from './logged-window'
import { processLogs } from './records-read'
import { dwellSeries } from './wave-dwell'

/** What the window of a logged quantity follows from. */
export const limitedReads = {
  family: alloyFamily,
  method: optional(fluxControlMethod),
  density: optional(fluxDensityTarget),
  densityTolerance: optional(fluxDensityTolerance),
  reference: optional(fluxReferenceTemperature),
  coefficient: optional(fluxDensityCoefficient),
  acid: optional(fluxAcidNumberTarget),
  acidTolerance: optional(fluxAcidNumberTolerance),
  bath: optional(bathTemperatureTarget),
  bathTolerance: bathTemperatureTolerance,
  bathTinLeadLeast: tinLeadBathLeast,
  bathTinLeadMost: tinLeadBathMost,
  bathLeadFreeLeast: leadFreeBathLeast,
  bathLeadFreeMost: leadFreeBathMost,
  dwellLeast: waveDwellLeast,
  dwellMost: waveDwellMost,
  preheatTinLeadLeast,
  preheatTinLeadMost,
  preheatLeadFreeLeast,
  preheatLeadFreeMost,
  logs: processLogs,
}

/** A log in the quantity that the specification limits, with its window. */
export interface LimitedLog {
  readonly what: string
  readonly series: LogSeries
  readonly window: ProcessWindow
}

/** The logs whose window follows from the specification, in the quantity that is limited. */
export function limitedLogs(inputs: Inputs<typeof limitedReads>): LimitedLog[] {
  const { family, method, density, densityTolerance, acid, acidTolerance, bath, logs } = inputs
  const tinLead = family === 'tin-lead'
  const asked = (
    key: string,
    what: string,
    window: ProcessWindow,
    of: (log: Log) => LogSeries,
  ): LimitedLog[] => (logs.get(key) ?? []).map((log) => ({ what, window, series: of(log) }))
  return [
    ...(method === 'density' && density !== undefined && densityTolerance !== undefined
      ? asked(
          'flux-density',
          'flux density',
          windowAround(density, densityTolerance, 'g/ml', 'specified density'),
          (log) => densitySeries(log, inputs.reference, inputs.coefficient),
        )
      : []),
    ...(method === 'acid-number' && acid !== undefined && acidTolerance !== undefined
      ? asked(
          'flux-acid-number',
          'flux acid number',
          windowAround(acid, acidTolerance, 'mg KOH/g', 'specified acid number'),
          acidNumberSeries,
        )
      : []),
    ...(bath === undefined
      ? []
      : asked(
          'bath-temperature',
          'bath temperature',
          bothWindows(
            {
              least: boundBy(tinLead ? inputs.bathTinLeadLeast : inputs.bathLeadFreeLeast),
              most: boundBy(tinLead ? inputs.bathTinLeadMost : inputs.bathLeadFreeMost),
              unit: '°C',
            },
            windowAround(bath, inputs.bathTolerance.value, '°C', inputs.bathTolerance.document),
          ),
          (log) => columnSeries(log, 'bathC'),
        )),
    ...asked(
      'wave-contact',
      'dwell in the wave',
      { least: boundBy(inputs.dwellLeast), most: boundBy(inputs.dwellMost), unit: 's' },
      dwellSeries,
    ),
    ...asked(
      'wave-preheat',
      'preheat',
      {
        least: boundBy(tinLead ? inputs.preheatTinLeadLeast : inputs.preheatLeadFreeLeast),
        most: boundBy(tinLead ? inputs.preheatTinLeadMost : inputs.preheatLeadFreeMost),
        unit: '°C',
      },
      (log) => columnSeries(log, 'uppersideC'),
    ),
  ]
}
