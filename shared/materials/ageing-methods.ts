import { fromMemory, published } from '@/shared/sources/provenance'
import type { Source } from '@/shared/sources/source'
import { ownMember } from '@/shared/own-member'

/** How a piece is conditioned before a solderability test. */
export interface AgeingMethod {
  readonly label: string
  /** What acts on the surface: it decides whether any equivalence in time can be computed. */
  readonly acts: 'nothing' | 'steam' | 'dry heat' | 'damp heat'
  readonly temperatureC?: number
  readonly relativeHumidityPct?: number
  readonly hours: number
  readonly from: Source
}

const iec20: Source = fromMemory('IEC 60068-2-20, ageing before Test Ta')
const jStd002: Source = fromMemory('J-STD-002, conditioning categories')

/**
 * Methods of artificial ageing. Steam temperature is taken at sea level; it
 * follows the local boiling point (see `shared/physics/steam-temperature`).
 */
export const AGEING_METHODS = {
  none: {
    label: 'None: as received',
    acts: 'nothing',
    hours: 0,
    from: fromMemory('J-STD-002, conditioning category 1'),
  },
  'steam-1h': { label: 'Steam, 1 h', acts: 'steam', temperatureC: 93, hours: 1, from: iec20 },
  'steam-4h': { label: 'Steam, 4 h', acts: 'steam', temperatureC: 93, hours: 4, from: iec20 },
  'steam-8h': {
    label: 'Steam, 8 h',
    acts: 'steam',
    temperatureC: 93,
    hours: 8,
    from: published('MIL-STD-883 method 2003: 8 h of steam'),
  },
  'steam-16h': { label: 'Steam, 16 h', acts: 'steam', temperatureC: 93, hours: 16, from: jStd002 },
  'damp-heat-40-93-10d': {
    label: 'Damp heat, 10 days at 40 °C and 93 % RH',
    acts: 'damp heat',
    temperatureC: 40,
    relativeHumidityPct: 93,
    hours: 240,
    from: iec20,
  },
  'damp-heat-120-85-4h': {
    label: 'Unsaturated steam, 4 h at 120 °C and 85 % RH',
    acts: 'damp heat',
    temperatureC: 120,
    relativeHumidityPct: 85,
    hours: 4,
    from: iec20,
  },
  'dry-heat-155-2h': {
    label: 'Dry heat, 2 h at 155 °C',
    acts: 'dry heat',
    temperatureC: 155,
    hours: 2,
    from: iec20,
  },
  'dry-heat-155-4h': {
    label: 'Dry heat, 4 h at 155 °C',
    acts: 'dry heat',
    temperatureC: 155,
    hours: 4,
    from: fromMemory('J-STD-002 condition E; IEC 60068-2-58'),
  },
  'dry-heat-155-16h': {
    label: 'Dry heat, 16 h at 155 °C',
    acts: 'dry heat',
    temperatureC: 155,
    hours: 16,
    from: iec20,
  },
} as const satisfies Record<string, AgeingMethod>

export type AgeingKey = keyof typeof AGEING_METHODS

/** The method by its key; undefined for a text that names none. */
export const ageingMethod = (key: unknown): AgeingMethod | undefined =>
  typeof key === 'string' ? ownMember(AGEING_METHODS, key) : undefined
