import type { ItemDefinition } from './item'
import { handJointsMax, processExcessMax } from '@/shared/plan/limits/soldering-process'
import { handJointsGuard, processExcessGuard } from '@/shared/plan/limits/specification-guards'
import { processCosts, solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { processEconomy } from '@/shared/rules/specification/process-economy'
import { processSuitsJoints } from '@/shared/rules/specification/process-suits-joints'

export const solderingProcessItem: ItemDefinition = {
  key: 'soldering-process',
  stage: 'specification',
  title: 'Soldering process',
  asks: 'By which process are the joints made, and is it right for their number, the heat they bear and the money?',
  version: 1,
  owner: 'production',
  approvers: ['design', 'production', 'quality'],
  parameters: [solderingProcess, processCosts],
  limits: [handJointsMax, processExcessMax, handJointsGuard, processExcessGuard],
  rules: [processSuitsJoints, processEconomy],
  evidence: [],
  cautions: [
    'Hot metal, fume and flammable flux: machines and benches are set up and guarded by competent people under local codes.',
  ],
}
