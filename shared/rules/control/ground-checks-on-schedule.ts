import { ironChecksOnSchedule } from '@/shared/irons/iron-checks-on-schedule'
import { groundCheckInterval } from '@/shared/plan/limits/control-hand'
import { tipGround } from '@/shared/records/characteristics/tip-ground'

export const groundChecksOnScheduleRule = ironChecksOnSchedule({
  id: 'ground-checks-on-schedule',
  title: 'Ground of irons checked on schedule',
  why: 'A broken earth lead shows on no display; parts that leakage or static harms fail later, in service.',
  formula: 'on each day of hand work, age of the newest ground check ≤ interval',
  version: 2,
  check: 'Ground check',
  interval: groundCheckInterval,
  characteristic: tipGround,
})
