import type { ProcessChartRow } from '@/shared/plan/parameters/control-charts'
import type { CHARACTERISTICS, CharacteristicKey } from '@/shared/records/characteristics'

/**
 * What stays level while nothing is wrong. The rest has no level to chart: metals
 * build up in a bath, irons of several settings share a log, a profile is one
 * run, the season moves a store; their own rules judge them.
 */
export type LevelCharacteristic = {
  [K in CharacteristicKey]: (typeof CHARACTERISTICS)[K]['level'] extends true ? K : never
}[CharacteristicKey]

/** In the order in which they are judged and listed. */
const LISTED: Readonly<Record<LevelCharacteristic, true>> = {
  'flux-density': true,
  'flux-acid-number': true,
  'bath-temperature': true,
  'wave-contact': true,
  'wave-geometry': true,
  'wave-preheat': true,
}
/** The type of a chart's row holds the specification to offering a row for each. */
export const LEVEL_CHARACTERISTICS: readonly (LevelCharacteristic & ProcessChartRow['characteristic'])[] =
  Object.keys(LISTED) as LevelCharacteristic[]

export const isLevel = (characteristic: string): characteristic is LevelCharacteristic =>
  Object.hasOwn(LISTED, characteristic)
