import { limit, type Limit } from '@/shared/plan/requirement'
import { commonPractice } from '@/shared/sources/provenance'

/**
 * How old the newest reading of a process characteristic may be when boards are
 * soldered. J-STD-001 asks for documented process control and leaves the
 * interval to the shop; its own record may lengthen or shorten it.
 */
const interval = (key: string, what: string, hours: number, practice: string): Limit =>
  limit({
    key: `${key}-interval-most`,
    label: `Age of the newest reading of ${what} when boards are soldered`,
    unit: 'h',
    direction: 'at most',
    byDefault: { value: hours, authority: 'common practice', from: commonPractice(practice) },
  })

const EACH_DAY = 'read on each day of work at least; each shift where the process drifts'

export const fluxDensityInterval = interval('flux-density', 'flux density', 24, `Flux density ${EACH_DAY}`)
export const fluxAcidNumberInterval = interval(
  'flux-acid-number',
  'flux acid number',
  24,
  `Acid number ${EACH_DAY}`,
)
export const bathTemperatureInterval = interval(
  'bath-temperature',
  'bath temperature',
  24,
  `Bath temperature ${EACH_DAY}`,
)
export const waveContactInterval = interval(
  'wave-contact',
  'wave contact and speed',
  24,
  `Wave contact ${EACH_DAY}`,
)
export const waveGeometryInterval = interval(
  'wave-geometry',
  'immersion and conveyor angle',
  24,
  `Immersion and angle ${EACH_DAY}`,
)
export const wavePreheatInterval = interval('wave-preheat', 'preheat', 24, `Preheat ${EACH_DAY}`)
export const thermalProfileInterval = interval(
  'thermal-profile',
  'the thermal profile',
  744,
  'A board measured through the oven once a month at least, and after every change of oven, paste or board',
)
