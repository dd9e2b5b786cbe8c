import type { Characteristic } from './characteristic'
import { bathComposition } from './characteristics/bath-composition'
import { bathTemperature } from './characteristics/bath-temperature'
import { fluxAcidNumber } from './characteristics/flux-acid-number'
import { fluxDensity } from './characteristics/flux-density'
import { storeClimate } from './characteristics/store-climate'
import { thermalProfile } from './characteristics/thermal-profile'
import { tipGround } from './characteristics/tip-ground'
import { tipTemperature } from './characteristics/tip-temperature'
import { waveContact } from './characteristics/wave-contact'
import { waveGeometry } from './characteristics/wave-geometry'
import { wavePreheat } from './characteristics/wave-preheat'
import { ownMember } from '@/shared/own-member'

/** Every process characteristic that is logged, by key. A new one is added here; the compiler asks what of it is charted and drawn. */
export const CHARACTERISTICS = {
  'bath-composition': bathComposition,
  'bath-temperature': bathTemperature,
  'flux-acid-number': fluxAcidNumber,
  'flux-density': fluxDensity,
  'store-climate': storeClimate,
  'thermal-profile': thermalProfile,
  'tip-ground': tipGround,
  'tip-temperature': tipTemperature,
  'wave-contact': waveContact,
  'wave-geometry': waveGeometry,
  'wave-preheat': wavePreheat,
} as const satisfies Record<string, Characteristic>
export type CharacteristicKey = keyof typeof CHARACTERISTICS

/** The characteristic of a log, or undefined when its key is unknown. */
export const findCharacteristic = (key: string): Characteristic | undefined => ownMember(CHARACTERISTICS, key)
