import { choiceColumn, dateColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import { recordKind } from '@/shared/records/record-kind'

/** Time that moisture-sensitive parts lay open before they were soldered. */
export const moistureExposure = recordKind({
  key: 'moisture-exposure',
  label: 'moisture exposure',
  plural: 'Moisture exposures',
  help: 'One row per opened pack: the part, its level, hours open until soldered (or until now), and the floor climate. Start again after baking.',
  stage: 'control',
  departments: ['production'],
  assemblies: null,
  teaches: false,
  columns: {
    openedOn: dateColumn({ label: 'Pack opened on' }),
    part: textColumn({ label: 'Part', maxLength: 60 }),
    level: choiceColumn({
      label: 'Moisture sensitivity level',
      options: [
        { value: '1', label: 'Level 1' },
        { value: '2', label: 'Level 2' },
        { value: '2a', label: 'Level 2a' },
        { value: '3', label: 'Level 3' },
        { value: '4', label: 'Level 4' },
        { value: '5', label: 'Level 5' },
        { value: '5a', label: 'Level 5a' },
        { value: '6', label: 'Level 6' },
      ],
    }),
    hoursOpen: numberColumn({ label: 'Hours open', unit: 'h', min: 0, max: 100_000 }),
    hottestC: numberColumn({ label: 'Hottest on the floor', unit: '°C', min: -10, max: 60 }),
    dampestPct: numberColumn({ label: 'Dampest on the floor', unit: '% RH', min: 0, max: 100 }),
    baked: choiceColumn({
      label: 'Baked before soldering',
      options: [
        { value: 'no', label: 'No' },
        { value: 'yes', label: 'Yes, to the part maker’s schedule' },
      ],
    }),
    bake: optionalColumn(textColumn({ label: 'Bake record', maxLength: 80 })),
    labelHours: optionalColumn(
      numberColumn({
        label: 'Hours to reflow by its label',
        unit: 'h',
        min: 0,
        max: 1000,
        help: 'For level 6, whose label gives the time that remains after baking.',
      }),
    ),
  },
  cautions: [
    'Baking ovens are hot, and tape and reels may not stand the heat: follow the part maker’s schedule.',
  ],
})
