import { ironChecksOnSchedule } from '@/shared/irons/iron-checks-on-schedule'
import { tipCheckInterval } from '@/shared/plan/limits/control-hand'
import { tipTemperature } from '@/shared/records/characteristics/tip-temperature'

export const tipChecksOnScheduleRule = ironChecksOnSchedule({
  id: 'tip-checks-on-schedule',
  title: 'Irons checked on schedule',
  why: 'Tips wear and stations drift unseen: work between two far checks rests on hope.',
  formula: 'on each day of hand work, age of the newest tip check ≤ interval',
  version: 2,
  check: 'Tip check',
  interval: tipCheckInterval,
  characteristic: tipTemperature,
})
