import type { Row } from '@/seed/level-transmitter/lot-story'
import { rounded, scatterFrom } from '@/seed/readings'
import type { CharacteristicKey } from '@/shared/records/characteristics'

/** One log of the line: what is read, where, with what, and the readings with their instants (epoch ms). */
export interface LogStory {
  readonly code: string
  readonly characteristic: CharacteristicKey
  readonly machine: string
  readonly instrument: string | null
  readonly rows: readonly Row[]
}

/** When what was read: the machines twice a shift, the bath by the laboratory, the store each day. */
export interface LogInstants {
  readonly instants: readonly number[]
  readonly analyses: readonly number[]
  readonly store: readonly number[]
}

/** The logs of a line that holds what the level transmitter specifies, read at the given instants. */
export function logsAt({ instants, analyses, store }: LogInstants): readonly LogStory[] {
  const each = (make: (at: number, index: number) => Row): Row[] => instants.map(make)
  const [density, bath, dwell, depth, preheat, tip, copper, warmth, damp] = [
    41, 42, 43, 44, 45, 46, 47, 48, 49,
  ].map(scatterFrom) as [Scatter, Scatter, Scatter, Scatter, Scatter, Scatter, Scatter, Scatter, Scatter]
  return [
    {
      code: 'FLUX-1',
      characteristic: 'flux-density',
      machine: 'Foam fluxer',
      instrument: 'HY-03',
      rows: each((at, index) => {
        const temperatureC = rounded(22 + (index % 4), 1)
        return {
          at,
          densityGPerMl: rounded(0.812 - 0.00085 * (temperatureC - 25) + 0.0012 * density(), 4),
          temperatureC,
        }
      }),
    },
    {
      code: 'BATH-1',
      characteristic: 'bath-temperature',
      machine: 'Wave 1',
      instrument: 'TC-09',
      rows: each((at) => ({ at, bathC: rounded(250 + 0.7 * bath(), 1) })),
    },
    {
      code: 'WAVE-1',
      characteristic: 'wave-contact',
      machine: 'Wave 1',
      instrument: 'TC-09',
      rows: each((at) => ({
        at,
        contactLengthMm: rounded(52 + 0.4 * dwell(), 1),
        conveyorSpeedMPerMin: 1.05,
      })),
    },
    {
      code: 'GEOM-1',
      characteristic: 'wave-geometry',
      machine: 'Wave 1',
      instrument: null,
      rows: each((at) => ({ at, immersionMm: rounded(0.93 + 0.02 * depth(), 2), angleDeg: 6 })),
    },
    {
      code: 'HEAT-1',
      characteristic: 'wave-preheat',
      machine: 'Wave 1',
      instrument: 'TC-09',
      rows: each((at) => ({
        at,
        uppersideC: rounded(106 + 0.8 * preheat(), 1),
        steepestRiseKPerS: 1.6,
        bathC: 250,
      })),
    },
    {
      code: 'POT-1',
      characteristic: 'bath-composition',
      machine: 'Wave 1',
      instrument: 'SP-04',
      rows: analyses.map((at, index) => analysis(at, 0.105 + 0.009 * index + 0.002 * copper())),
    },
    {
      code: 'STORE-1',
      characteristic: 'store-climate',
      machine: 'Board store',
      instrument: null,
      rows: store.map((at) => ({
        at,
        temperatureC: rounded(21 + 0.6 * warmth(), 1),
        relativeHumidityPct: rounded(44 + 2 * damp(), 0),
      })),
    },
    {
      code: 'TIP-1',
      characteristic: 'tip-temperature',
      machine: 'Bench 3',
      instrument: 'TC-09',
      rows: each((at) => ({
        at,
        iron: 'IR-3',
        bit: 'chisel 2.4',
        setC: 310,
        measuredC: rounded(310 + 1.2 * tip(), 1),
      })),
    },
    {
      code: 'GND-1',
      characteristic: 'tip-ground',
      machine: 'Bench 3',
      instrument: 'TC-09',
      rows: each((at) => ({ at, iron: 'IR-3', resistanceOhm: 1.1, leakageMv: 0.4, tip: 'hot' })),
    },
  ]
}

type Scatter = () => number

const analysis = (at: number, copperPct: number): Row => ({
  at,
  tinPct: 63,
  copperPct: rounded(copperPct, 3),
  goldPct: 0.01,
  cadmiumPct: 0.001,
  zincPct: 0.001,
  aluminiumPct: 0.001,
  antimonyPct: 0.05,
  ironPct: 0.003,
  arsenicPct: 0.005,
  bismuthPct: 0.02,
  silverPct: 0.02,
  nickelPct: 0.002,
})
