import type { ItemDefinition } from '@/shared/plan/item'
import { conductorRiseMost } from '@/shared/plan/limits/conductors'
import { conductorMethod, conductors } from '@/shared/plan/parameters/conductors'
import { conductorCurrent } from '@/shared/rules/specification/conductor-current'
import { conductorDrop } from '@/shared/rules/specification/conductor-drop'

export const conductorsItem: ItemDefinition = {
  key: 'conductors',
  stage: 'specification',
  title: 'Conductors',
  asks: 'Does every conductor carry its current without warming its joints or losing too much voltage?',
  owner: 'design',
  approvers: ['design', 'quality'],
  parameters: [conductors, conductorMethod],
  limits: [conductorRiseMost],
  rules: [conductorCurrent, conductorDrop],
  evidence: [],
  cautions: [],
}
