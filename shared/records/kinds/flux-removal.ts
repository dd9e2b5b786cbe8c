import { choiceColumn, dateColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import { recordKind } from '@/shared/records/record-kind'

/** An assembly judged before and after its flux was removed. */
export const fluxRemoval = recordKind({
  key: 'flux-removal',
  label: 'flux removal trial',
  plural: 'Flux removal trials',
  help: 'One row per assembly: ionic residue before and after cleaning by the same method, and what is still to be seen.',
  stage: 'assessment',
  departments: ['production', 'quality'],
  assemblies: { column: 'assembly', one: true },
  teaches: false,
  columns: {
    triedOn: dateColumn({ label: 'Tried on' }),
    assembly: textColumn({ label: 'Assembly', maxLength: 40 }),
    cleaning: textColumn({ label: 'Cleaning', maxLength: 120, help: 'Agent, time, temperature, rinses.' }),
    beforeUgPerCm2: numberColumn({ label: 'Before', unit: 'µg/cm²', min: 0, max: 10_000 }),
    afterUgPerCm2: numberColumn({ label: 'After', unit: 'µg/cm²', min: 0, max: 10_000 }),
    residue: choiceColumn({
      label: 'Residue to be seen after cleaning',
      options: [
        { value: 'none', label: 'None' },
        { value: 'traces', label: 'Traces, away from contacts' },
        { value: 'plain', label: 'Plain to see, or on a contact' },
      ],
    }),
    note: optionalColumn(textColumn({ label: 'Note', maxLength: 200 })),
  },
  cautions: [
    'Cleaning solvents burn or harm by their vapour: their safety data sheets and local codes rule on ventilation, gloves and waste.',
  ],
})
