import { commonPractice } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

/** How long boards and components may wait in a store whose climate nobody reads. */
export const storeReadingInterval = limit({
  key: 'store-climate-interval-most',
  label: 'Time between readings of the store’s climate while lots wait',
  unit: 'days',
  direction: 'at most',
  byDefault: {
    value: 7,
    authority: 'common practice',
    from: commonPractice(
      'A store is read once a week at least while lots wait; each day, or by a logger, where it is not conditioned',
    ),
  },
})

export const storeHumidityMax = limit({
  key: 'store-humidity-most',
  label: 'Humidity of the store of boards and components',
  unit: '% RH',
  direction: 'at most',
  byDefault: {
    value: 60,
    authority: 'common practice',
    from: commonPractice('Boards and components stored at 60 % relative humidity at most'),
  },
})
