import type { LotStory, LotTestStory } from '@/seed/level-transmitter/lot-story'
import { leadsOnBalance } from '@/seed/level-transmitter/wetting-balance'
import { rounded, scatterFrom } from '@/seed/readings'

const COMPONENTS = [
  ['T-118', 'transformer T1', 'Ostrava Wound Parts', 'Dip and look: 98 % coverage, certificate 118'],
  ['R-540', 'resistors R1–R40', 'Calder Passives', 'Dip and look: 99 % coverage'],
  ['C-221', 'capacitors C1–C22', 'Calder Passives', 'Dip and look: 99 % coverage'],
  ['U-902', 'circuits U1–U9', 'Meridian Semi', 'Dip and look: 97 % coverage'],
  ['J-640', 'connector J1', 'Ostrava Wound Parts', 'Dip and look: 98 % coverage'],
] as const

/** The lot whose leads were also put on the wetting balance: round wire, whose perimeter is known well. */
const ON_BALANCE = 'R-540'

/** Everything bought in for the first series of a board. */
export const lotsFor = (board: string): readonly LotStory[] => [
  {
    code: 'B-2609',
    kind: 'bare board',
    part: `bare board ${board}`,
    supplier: 'Northgate Circuits',
    quantity: 250,
    supplierResult: 'Rotary dip at 235 °C: 1.3 s at most, certificate NC-8812',
    tests: [
      rotaryDip(50, 11),
      plating('tin-lead', 'track', 9, 0.8, 21),
      plating('copper', 'hole', 30, 1.2, 22),
    ],
  },
  {
    code: 'K-2609',
    kind: 'coupon',
    part: `coupon ${board}`,
    supplier: 'Northgate Circuits',
    quantity: 20,
    supplierResult: 'From the same panels as B-2609',
    tests: [rotaryDip(13, 12)],
  },
  ...COMPONENTS.map(([code, part, supplier, supplierResult], index) => ({
    code,
    kind: 'component' as const,
    part,
    supplier,
    quantity: 260,
    supplierResult,
    tests: [dipAndLook(31 + index), ...(code === ON_BALANCE ? [leadsOnBalance()] : [])],
  })),
  {
    code: 'F-77',
    kind: 'consumable',
    part: 'flux F2',
    supplier: 'Brandt & Lowe Fluxes',
    quantity: 4,
    supplierResult: 'Density 0.812 g/ml at 25 °C',
    tests: [receivingCheck()],
  },
]

/** The codes of the lots that went into the assemblies. */
export const SOLDERED_LOTS = ['B-2609', ...COMPONENTS.map(([code]) => code)]

/** Lots of which another board gets some too. */
export const SHARED_LOTS: readonly string[] = ['R-540', 'C-221']

/** Wetting times as the tester's file gives them, one row a place. */
function rotaryDip(specimens: number, start: number): LotTestStory {
  const scatter = scatterFrom(start)
  return {
    method: 'rotary-dip',
    instrument: 'RD-02',
    conditions: { alloy: 'Sn60Pb40', flux: 'rosin-non-activated', bathTemperatureC: 235, ageing: 'none' },
    rows: Array.from({ length: specimens }, (_, index) =>
      (['track', 'hole'] as const).map((place) => ({
        specimen: String(index + 1),
        place,
        outcome: 'wetted',
        wettingTimeS: rounded(Math.max(0.5, (place === 'track' ? 0.95 : 1.15) + 0.12 * scatter()), 2),
      })),
    ).flat(),
  }
}

function plating(
  deposit: string,
  place: 'track' | 'hole',
  mean: number,
  spread: number,
  start: number,
): LotTestStory {
  const scatter = scatterFrom(start)
  return {
    method: 'plating-thickness',
    instrument: place === 'hole' ? 'MM-07' : 'XF-01',
    conditions: { deposit, technique: place === 'hole' ? 'microsection' : 'x-ray', uncertaintyUm: 0.3 },
    rows: Array.from({ length: 20 }, (_, index) => ({
      specimen: String(index + 1),
      place,
      thicknessUm: rounded(mean + spread * scatter(), 1),
    })),
  }
}

function dipAndLook(start: number): LotTestStory {
  const scatter = scatterFrom(start)
  return {
    method: 'dip-and-look',
    instrument: 'TH-05',
    conditions: {
      alloy: 'Sn60Pb40',
      flux: 'rosin-non-activated',
      bathTemperatureC: 245,
      ageing: 'steam-8h',
      dwellS: 5,
      magnification: 10,
    },
    rows: Array.from({ length: 50 }, (_, index) => ({
      specimen: String(index + 1),
      coveragePct: rounded(Math.min(100, 99 + 0.4 * scatter()), 1),
      nonWettingPct: 0.3,
      dewettingPct: 0,
    })),
  }
}

const receivingCheck = (): LotTestStory => ({
  method: 'receiving-check',
  instrument: null,
  conditions: { certificate: 'BL-77' },
  rows: ['1', '2', '3', '4'].flatMap((can) =>
    ['identity', 'date code', 'packing', 'shelf life'].map((checked) => ({
      specimen: `can ${can}`,
      checked,
      outcome: 'as ordered',
    })),
  ),
})
