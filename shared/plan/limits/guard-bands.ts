import { limit, type Limit } from '@/shared/plan/requirement'
import { commonPractice } from '@/shared/sources/provenance'

/**
 * How near to its limit a value counts as only just good: a share of the limit,
 * or of a window's width. Wider is stricter. One limit a family of rules.
 */
export const guard = (key: string, label: string, sharePct: number, practice: string): Limit =>
  limit({
    key: `${key}-guard`,
    label,
    unit: '%',
    direction: 'at least',
    byDefault: { value: sharePct, authority: 'common practice', from: commonPractice(practice) },
  })

export const processWindowGuard = guard(
  'process-window',
  'Only just inside a process window: share of its width, or of its one limit',
  10,
  'A reading within a tenth of the window’s width from its end is brought back before it leaves',
)

export const leadBendGuard = guard(
  'lead-bend',
  'Only just enough bend radius or straight length: share of the least',
  5,
  'Within a twentieth of the least a bend is only just good: calipers read no finer on it',
)
export const floorLifeGuard = guard(
  'floor-life',
  'Only just within the floor life: share of it',
  10,
  'Within the last tenth of its floor life a part is soldered first',
)
export const storageClockGuard = guard(
  'storage-clock',
  'Only just soldered in time: share of the time allowed',
  10,
  'Within the last tenth of its time a lot is soldered first or tested again',
)
export const tipCheckGuard = guard(
  'tip-check',
  'Only just good tip temperature, ground or leakage: share of the limit',
  10,
  'A tip within a tenth of its limit is mended before the next check',
)
