import type { CharacteristicKey } from '@/shared/records/characteristics'

/**
 * What stays level while nothing is wrong. The rest has no level to chart: metals
 * build up in a bath, irons of several settings share a log, a profile is one
 * run, the season moves a store; their own rules judge them.
 */
export const LEVEL_CHARACTERISTICS = [
  'flux-density',
  'flux-acid-number',
  'bath-temperature',
  'wave-contact',
  'wave-geometry',
  'wave-preheat',
] as const satisfies readonly CharacteristicKey[]
export type LevelCharacteristic = (typeof LEVEL_CHARACTERISTICS)[number]

export const isLevel = (characteristic: string): characteristic is LevelCharacteristic =>
  (LEVEL_CHARACTERISTICS as readonly string[]).includes(characteristic)
