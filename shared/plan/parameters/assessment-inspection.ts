import { numberParameter } from '@/shared/plan/parameter'

export const inspectedAssembliesShare = numberParameter({
  key: 'inspected-assemblies-share',
  label: 'Assemblies inspected',
  help: 'Share of the assemblies made that are inspected visually: 100 % for all.',
  owner: 'quality',
  unit: '%',
  min: 0.1,
  max: 100,
})
