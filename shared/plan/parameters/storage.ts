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

/** What is in the air of the store beside moisture: read from coupons left there for a month. */

export const storeSilverFilm = numberParameter({
  key: 'store-silver-film',
  label: 'Sulphur in the store: film on a silver coupon in 30 days',
  help: 'Silver takes up sulphur from the air. Left empty when no coupon was exposed.',
  owner: 'production',
  unit: 'nm',
  min: 0,
  max: 10_000,
})

export const storeCopperFilm = numberParameter({
  key: 'store-copper-film',
  label: 'Corrosive gases in the store: film on a copper coupon in 30 days',
  help: 'Copper answers to sulphur with chlorine or damp. Left empty when no coupon was exposed.',
  owner: 'production',
  unit: 'nm',
  min: 0,
  max: 10_000,
})

export const storeChloride = numberParameter({
  key: 'store-chloride',
  label: 'Chlorides in the store: deposited',
  help: 'By the wet candle or a plate near the sea, a road that is salted, or a pickling line. Left empty when it was not measured.',
  owner: 'production',
  unit: 'mg/(m²·d)',
  min: 0,
  max: 5_000,
})
