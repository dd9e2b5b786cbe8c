import { commonPractice } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

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
