import { commonPractice, fromMemory } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

/** What a solderability test has to show. */

export const wettingTimeMax = limit({
  key: 'wetting-time-most',
  label: 'Wetting time, rotary dip',
  unit: 's',
  direction: 'at most',
  byDefault: {
    value: 2,
    authority: 'common practice',
    from: commonPractice('Rotary dip, boards at 235 °C in Sn60Pb40 with non-activated rosin'),
  },
})

/** The bath, the solders and the flux that the default wetting time is one of; another is looser. */
export const WETTING_TIME_HOLDS_AT = {
  bathTemperatureC: 235,
  alloys: ['Sn60Pb40', 'Sn63Pb37'],
  flux: 'rosin-non-activated',
} as const

export const coverageMin = limit({
  key: 'dip-coverage-least',
  label: 'Coverage, dip and look',
  unit: '%',
  direction: 'at least',
  byDefault: {
    value: 95,
    authority: 'standard',
    from: fromMemory('MIL-STD-883 method 2003, solderability: 95 % of the dipped area covered'),
  },
})

export const holeRiseMin = limit({
  key: 'hole-rise-least',
  label: 'Rise in plated holes',
  unit: '%',
  direction: 'at least',
  byDefault: {
    value: 100,
    authority: 'standard',
    from: fromMemory('J-STD-003, plated through holes: solder rises and wets the knee'),
  },
})

const float = fromMemory('IPC-TM-650 2.4.13.1 and 2.6.8: floated at 288 ± 5 °C for 10 s')

export const floatTemperatureMin = limit({
  key: 'float-temperature-least',
  label: 'Temperature of the solder float',
  unit: '°C',
  direction: 'at least',
  byDefault: { value: 283, authority: 'standard', from: float },
})

export const floatTimeMin = limit({
  key: 'float-time-least',
  label: 'Time of the solder float',
  unit: 's',
  direction: 'at least',
  byDefault: { value: 10, authority: 'standard', from: float },
})

export const testTemperatureToleranceMax = limit({
  key: 'test-temperature-tolerance-most',
  label: 'Test bath off its specified temperature',
  unit: 'K',
  direction: 'at most',
  byDefault: {
    value: 5,
    authority: 'standard',
    from: fromMemory('IEC 60068-2-20, Test Ta method 1: 235 ± 5 °C'),
  },
})
