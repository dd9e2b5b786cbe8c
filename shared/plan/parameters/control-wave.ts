import { flagParameter } from '@/shared/plan/parameter'

export const chipCapacitorsInWave = flagParameter({
  key: 'chip-capacitors-in-wave',
  label: 'Ceramic chip capacitors pass through the wave',
  help: 'They crack in a steep step of temperature. Left empty, they are taken to be there.',
  owner: 'design',
})
