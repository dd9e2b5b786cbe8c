import {
  choiceColumn,
  numberColumn,
  optionalColumn,
  textColumn,
  type NumberColumn,
} from '@/shared/columns/column'
import { numberParameter, tableParameter, type ValueOf } from '@/shared/plan/parameter'

export const inspectedAssembliesShare = numberParameter({
  key: 'inspected-assemblies-share',
  label: 'Assemblies inspected',
  help: 'Share of the assemblies made that are inspected visually: 100 % for all.',
  owner: 'quality',
  unit: '%',
  min: 0.1,
  max: 100,
})

export const boardLength = numberParameter({
  key: 'board-length',
  label: 'Board along the travel',
  help: 'Length of the assembly in the direction in which it crosses the solder, for the plan on which defects are placed.',
  owner: 'design',
  unit: 'mm',
  min: 10,
  max: 2000,
})

export const boardWidth = numberParameter({
  key: 'board-width',
  label: 'Board across the travel',
  help: 'Width of the assembly across the direction in which it crosses the solder.',
  owner: 'design',
  unit: 'mm',
  min: 10,
  max: 2000,
})

export const componentPlaces = tableParameter({
  key: 'component-places',
  label: 'Where components stand',
  help: 'Seen from the soldered side, with the travel to the right: which way each component’s row of joints lies, and where its middle is. With it, defects can be tested for an effect of direction. Left open, they are not.',
  owner: 'design',
  maxRows: 400,
  columns: {
    component: textColumn({ label: 'Component', maxLength: 60, help: 'As in the hole table.' }),
    row: choiceColumn({
      label: 'Row of joints',
      options: [
        { value: 'along', label: 'Along the travel' },
        { value: 'across', label: 'Across the travel' },
        { value: 'neither', label: 'Neither: two joints, or a field' },
      ],
    }),
    xMm: optionalColumn<NumberColumn>(
      numberColumn({ label: 'Middle, across the plan', unit: 'mm', min: 0, max: 2000 }),
    ),
    yMm: optionalColumn<NumberColumn>(
      numberColumn({ label: 'Middle, up the plan', unit: 'mm', min: 0, max: 2000 }),
    ),
  },
})
export type ComponentPlace = ValueOf<typeof componentPlaces>[number]
