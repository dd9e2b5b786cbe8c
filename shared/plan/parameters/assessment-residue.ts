import { INSULATION_CONDITIONS } from '@/shared/materials/insulation-conditions'
import { optionsOf } from '@/shared/columns/choice-options'
import { choiceParameter } from '@/shared/plan/parameter'

export const cleanlinessEdition = choiceParameter({
  key: 'cleanliness-edition',
  label: 'Edition of the cleanliness limit',
  help: 'Left open, the strictest figure in use applies. The newest issues of J-STD-001 name no figure: a programme then states the limit its own evidence supports, as a requirement.',
  owner: 'quality',
  options: [
    { value: 'nasa-8739', label: 'NASA-STD-8739.3: 1.55 µg/cm² (10.0 µg/in²)' },
    { value: 'j-std-001', label: 'J-STD-001 to 2018, MIL-P-28809: 1.56 µg/cm² (10.06 µg/in²)' },
    { value: 'own-evidence', label: 'J-STD-001 from 2018: own evidence, stated as a requirement' },
  ],
})

export const insulationTest = choiceParameter({
  key: 'insulation-test',
  label: 'Insulation resistance test',
  help: 'The damp-heat condition it is read under; results of two conditions are not interchangeable. Left open, none is asked unless the circuit needs insulation.',
  owner: 'quality',
  options: [{ value: 'not-asked', label: 'Not asked' }, ...optionsOf(INSULATION_CONDITIONS)],
})
