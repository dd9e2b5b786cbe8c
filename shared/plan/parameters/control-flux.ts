import { choiceParameter, numberParameter } from '@/shared/plan/parameter'

/** How the flux in use is kept the flux that was chosen. */

export const fluxControlMethod = choiceParameter({
  key: 'flux-control-method',
  label: 'How the flux is controlled',
  help: 'Density suits flux with much solids in alcohol; low-solids flux needs its acid number; flux sprayed from a sealed supply needs neither.',
  owner: 'production',
  options: [
    { value: 'density', label: 'By density, corrected to the reference temperature' },
    { value: 'acid-number', label: 'By acid number' },
    { value: 'sealed-supply', label: 'Used fresh from a sealed supply' },
    { value: 'no-liquid-flux', label: 'No liquid flux: cored wire or paste only' },
  ],
})

export const fluxSolids = numberParameter({
  key: 'flux-solids',
  label: 'Solids in the flux',
  help: 'Share by mass, from the flux data sheet. Decides whether density can tell anything.',
  owner: 'production',
  unit: '%',
  min: 0.1,
  max: 60,
})

export const fluxDensityTarget = numberParameter({
  key: 'flux-density-target',
  label: 'Flux density',
  help: 'At the reference temperature, from the flux data sheet.',
  owner: 'production',
  unit: 'g/ml',
  min: 0.6,
  max: 1.4,
})

export const fluxDensityTolerance = numberParameter({
  key: 'flux-density-tolerance',
  label: 'Tolerance of the flux density, ±',
  help: 'How far the density may lie from its target on either side.',
  owner: 'production',
  unit: 'g/ml',
  min: 0.0005,
  max: 0.1,
})

export const fluxReferenceTemperature = numberParameter({
  key: 'flux-reference-temperature',
  label: 'Reference temperature of the density',
  help: 'The temperature the data sheet states the density for. 25 °C is taken when it is left empty.',
  owner: 'production',
  unit: '°C',
  min: 0,
  max: 40,
})

export const fluxDensityCoefficient = numberParameter({
  key: 'flux-density-coefficient',
  label: 'Change of density with temperature, g/ml per K',
  help: 'From the flux data sheet. 0.00085 (alcohol-based flux) is taken when it is left empty.',
  owner: 'production',
  unit: '1',
  min: 0,
  max: 0.005,
})

export const thinnerDensity = numberParameter({
  key: 'thinner-density',
  label: 'Density of the thinner',
  help: 'At the reference temperature. 0.781 g/ml (isopropyl alcohol at 25 °C) is taken when it is left empty.',
  owner: 'production',
  unit: 'g/ml',
  min: 0.6,
  max: 1.1,
})

export const fluxTankVolume = numberParameter({
  key: 'flux-tank-volume',
  label: 'Flux in the tank',
  help: 'So that the thinner to add can be said in litres, not only per litre.',
  owner: 'production',
  unit: 'l',
  min: 0.1,
  max: 1000,
})

export const fluxAcidNumberTarget = numberParameter({
  key: 'flux-acid-number-target',
  label: 'Flux acid number',
  help: 'From the flux data sheet.',
  owner: 'production',
  unit: 'mg KOH/g',
  min: 0.1,
  max: 300,
})

export const fluxAcidNumberTolerance = numberParameter({
  key: 'flux-acid-number-tolerance',
  label: 'Tolerance of the acid number, ±',
  help: 'How far the acid number may lie from its target on either side.',
  owner: 'production',
  unit: 'mg KOH/g',
  min: 0.05,
  max: 100,
})
