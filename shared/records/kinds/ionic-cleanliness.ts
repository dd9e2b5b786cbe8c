import { choiceColumn, dateColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import { recordKind } from '@/shared/records/record-kind'
import { EXTRACTION_METHODS } from '@/shared/materials/extraction-methods'

/** Ionic residue of an assembly, by solvent extract. */
export const ionicCleanliness = recordKind({
  key: 'ionic-cleanliness',
  label: 'ionic cleanliness test',
  plural: 'Ionic cleanliness tests',
  help: 'One row per assembly: what the extract holds as sodium chloride, its volume, the board, and how the extract was made.',
  stage: 'assessment',
  departments: ['production', 'quality'],
  assemblies: { column: 'assembly', one: true },
  teaches: false,
  columns: {
    testedOn: dateColumn({ label: 'Tested on' }),
    assembly: textColumn({ label: 'Assembly', maxLength: 40 }),
    method: choiceColumn({
      label: 'Extraction',
      options: Object.entries(EXTRACTION_METHODS).map(([value, { label }]) => ({
        value: value as keyof typeof EXTRACTION_METHODS,
        label,
      })),
    }),
    concentrationUgPerMl: numberColumn({
      label: 'Concentration as sodium chloride',
      unit: 'µg/ml',
      min: 0,
      max: 10_000,
    }),
    solventMl: numberColumn({ label: 'Volume of the extract', unit: 'ml', min: 1, max: 100_000 }),
    lengthMm: numberColumn({ label: 'Board length', unit: 'mm', min: 1, max: 2000 }),
    widthMm: numberColumn({ label: 'Board width', unit: 'mm', min: 1, max: 2000 }),
    componentAllowancePct: numberColumn({
      label: 'Area allowed for components',
      unit: '%',
      min: 0,
      max: 200,
      help: 'Added to both faces. It lowers the result: enter what the document asks for, 0 when it says nothing.',
    }),
    minutes: numberColumn({ label: 'Time of extraction', unit: 'min', min: 0.1, max: 1440 }),
    solventC: numberColumn({ label: 'Solvent temperature', unit: '°C', min: 0, max: 100 }),
    instrument: optionalColumn(textColumn({ label: 'Instrument', maxLength: 40, help: 'Its tag.' })),
  },
  cautions: [
    'The usual extract is mostly isopropyl alcohol: flammable, with vapour that travels. No flame or spark, good extraction; the solvent’s safety data sheet and local codes rule.',
  ],
})
