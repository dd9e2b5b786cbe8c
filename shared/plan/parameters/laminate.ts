import { COPPER_FOILS } from '@/shared/materials/copper-foils'
import { LAMINATES } from '@/shared/materials/laminates'
import { optionsOf } from '@/shared/columns/choice-options'
import { choiceColumn, numberColumn, textColumn } from '@/shared/columns/column'
import { choiceParameter, numberParameter, tableParameter, type ValueOf } from '@/shared/plan/parameter'

export const laminate = choiceParameter({
  key: 'laminate',
  label: 'Laminate',
  help: 'The base material of the board.',
  owner: 'design',
  options: optionsOf(LAMINATES),
})

export const boardThickness = numberParameter({
  key: 'board-thickness',
  label: 'Board thickness',
  help: 'Finished, over the copper.',
  owner: 'design',
  unit: 'mm',
  min: 0.2,
  max: 10,
})

export const copperLayers = numberParameter({
  key: 'copper-layers',
  label: 'Copper layers',
  help: 'Planes of copper that the plated holes pass: 1 for a single-sided board.',
  owner: 'design',
  unit: '1',
  min: 1,
  max: 40,
  whole: true,
})

export const copperFoil = choiceParameter({
  key: 'copper-foil',
  label: 'Copper foil',
  help: 'Nominal, as the laminate is ordered, on every layer. Plating adds to the outer layers.',
  owner: 'design',
  options: optionsOf(COPPER_FOILS),
})

export const glassTransition = numberParameter({
  key: 'glass-transition',
  label: 'Glass transition as certified',
  help: 'The maker’s certified value for the laminate ordered. Left open, the grade’s table value applies.',
  owner: 'design',
  unit: '°C',
  min: 60,
  max: 400,
})

export const bowAndTwist = numberParameter({
  key: 'bow-and-twist',
  label: 'Bow and twist allowed',
  help: 'As ordered, in per cent of the length (bow) or the diagonal (twist).',
  owner: 'design',
  unit: '%',
  min: 0.05,
  max: 5,
})

export const serviceTemperature = numberParameter({
  key: 'service-temperature',
  label: 'Board temperature in service, at most',
  help: 'The warmest place of the board with its own heat.',
  owner: 'design',
  unit: '°C',
  min: -40,
  max: 250,
})

export const boardBuild = choiceParameter({
  key: 'board-build',
  label: 'Copper of the holes',
  help: 'How the barrels are made: plated up by current on etched foil, or built up without current. Left open, by current.',
  owner: 'design',
  options: [
    { value: 'subtractive', label: 'Etched foil, plated by current' },
    { value: 'additive', label: 'Built up without current (additive)' },
  ],
})

/** Every time the board meets soldering heat, from levelling of the finish to rework. */
export const solderExposures = tableParameter({
  key: 'solder-exposures',
  label: 'Solder exposures',
  help: 'Every time the same place meets soldering heat: levelling of the finish, both waves, reflow, and the rework that is allowed.',
  owner: 'production',
  maxRows: 20,
  columns: {
    step: textColumn({ label: 'Step', maxLength: 60 }),
    kind: choiceColumn({
      label: 'Kind',
      options: [
        { value: 'levelling', label: 'Hot-air levelling' },
        { value: 'dip', label: 'Dip' },
        { value: 'wave', label: 'Wave' },
        { value: 'selective', label: 'Selective wave' },
        { value: 'reflow', label: 'Reflow' },
        { value: 'hand', label: 'Hand iron' },
        { value: 'rework', label: 'Rework' },
      ],
    }),
    temperatureC: numberColumn({
      label: 'Temperature',
      unit: '°C',
      min: 150,
      max: 450,
      help: 'Of the solder or the board; for an iron, of the joint, not the tip.',
    }),
    seconds: numberColumn({ label: 'Time', unit: 's', min: 0.1, max: 600 }),
    times: numberColumn({ label: 'Times', unit: '1', min: 1, max: 20, whole: true }),
  },
})
export type SolderExposure = ValueOf<typeof solderExposures>[number]
