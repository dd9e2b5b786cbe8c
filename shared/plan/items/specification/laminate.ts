import type { ItemDefinition } from '@/shared/plan/item'
import { boardThickness, copperLayers, laminate, serviceTemperature } from '@/shared/plan/parameters/laminate'
import { laminatePlatedHoles } from '@/shared/rules/specification/laminate-plated-holes'

export const laminateItem: ItemDefinition = {
  key: 'laminate',
  stage: 'specification',
  title: 'Laminate',
  asks: 'Which base material carries the holes, the soldering heat and the service temperature?',
  owner: 'design',
  approvers: ['design', 'production', 'quality'],
  parameters: [laminate, boardThickness, copperLayers, serviceTemperature],
  limits: [],
  rules: [laminatePlatedHoles],
  evidence: [{ kind: 'certificate', label: 'Laminate data sheet or certificate', required: false }],
  cautions: [],
}
