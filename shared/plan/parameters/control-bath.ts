import { choiceParameter, numberParameter } from '@/shared/plan/parameter'

/** What the solder bath is held to, and what is known of it. */

export const bathLimitEdition = choiceParameter({
  key: 'bath-limit-edition',
  label: 'Edition of the bath contamination limits',
  help: 'Sources disagree on aluminium. Left empty, the strictest value of the assembly editions rules.',
  owner: 'quality',
  options: [
    { value: 'strictest', label: 'The strictest of the assembly editions' },
    { value: 'j-std-001c-assembly', label: 'J-STD-001C / DOD-STD-2000A, assembly' },
    { value: 'mil-std-2000a-assembly', label: 'MIL-STD-2000A, assembly' },
    { value: 'j-std-001c-preconditioning', label: 'J-STD-001C / DOD-STD-2000A, tinning pot' },
    { value: 'j-std-001-lead-free', label: 'J-STD-001F, lead-free' },
  ],
})

export const bathMass = numberParameter({
  key: 'bath-mass',
  label: 'Solder in the bath',
  help: 'So that the solder to exchange can be said in kilograms.',
  owner: 'production',
  unit: 'kg',
  min: 0.1,
  max: 5000,
})

export const newSolderCopper = numberParameter({
  key: 'new-solder-copper',
  label: 'Copper in the solder added',
  help: 'Share by mass, from the certificate of the solder added. Left empty: the most that J-STD-006 allows in tin-lead, 0.08 %; lead-free alloys hold copper on purpose and need the value.',
  owner: 'production',
  unit: '%',
  min: 0,
  max: 3,
})

export const bathTemperatureTarget = numberParameter({
  key: 'bath-temperature-target',
  label: 'Solder bath temperature',
  help: 'Measured in the solder where the boards pass.',
  owner: 'production',
  unit: '°C',
  min: 180,
  max: 400,
})
