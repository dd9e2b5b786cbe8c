import { numberParameter } from '@/shared/plan/parameter'

/** How long and how warm what is bought in may wait before it is soldered. */

export const boardStorageMonths = numberParameter({
  key: 'board-storage-months',
  label: 'Boards in store, at most',
  help: 'From finishing at the fabricator to soldering.',
  owner: 'production',
  unit: 'months',
  min: 0,
  max: 240,
})

export const leadStorageMonths = numberParameter({
  key: 'component-storage-months',
  label: 'Components in store, at most',
  help: 'From the date code to soldering.',
  owner: 'production',
  unit: 'months',
  min: 0,
  max: 240,
})

export const storageTemperature = numberParameter({
  key: 'storage-temperature',
  label: 'Store temperature',
  help: 'The mean of the warmest season counts: compound grows about three times as fast at 40 °C as at 25 °C.',
  owner: 'production',
  unit: '°C',
  min: -20,
  max: 85,
})
