import { choiceParameter, numberParameter } from '@/shared/plan/parameter'

/** Hand soldering: what the irons are set to and checked by. */

export const tipTemperatureTarget = numberParameter({
  key: 'tip-temperature-target',
  label: 'Tip temperature, at most',
  help: 'The hottest setting that hand soldering needs here: the lowest that wets in time. A slow joint wants a heavier bit or preheat, not a hotter tip.',
  owner: 'production',
  unit: '°C',
  min: 200,
  max: 450,
})

export const tipAccuracyEdition = choiceParameter({
  key: 'tip-accuracy-edition',
  label: 'Edition of the iron checks',
  help: 'Editions differ on how near the setting a tip must be, and on its resistance to ground. Left empty, the strictest rules.',
  owner: 'quality',
  options: [
    { value: 'strictest', label: 'The strictest of the editions' },
    { value: 'j-std-001', label: 'J-STD-001, appendix A: 15 K, 5 Ω' },
    { value: 'nasa-8739', label: 'NASA-STD-8739.3 / MIL-STD-2000: 5.5 K, 2 Ω' },
  ],
})
