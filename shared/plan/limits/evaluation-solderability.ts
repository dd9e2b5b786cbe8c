import { commonPractice, fromMemory, published } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

/** What a solderability test has to show. */

export const wettingTimeMost = limit({
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

export const coverageLeast = limit({
  key: 'dip-coverage-least',
  label: 'Coverage, dip and look',
  unit: '%',
  direction: 'at least',
  byDefault: {
    value: 95,
    authority: 'standard',
    from: published('MIL-STD-883 method 2003 (secondary copy)'),
  },
})

export const holeRiseLeast = limit({
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

export const testTemperatureToleranceMost = limit({
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
