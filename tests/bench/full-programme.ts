import { LEVEL_TRANSMITTER } from '@/seed/boards/level-transmitter'
import { readingsOf, rounded, scatterFrom } from '@/seed/readings'
import type { ProgrammeState } from '@/shared/gate/programme-state'
import { ALL_PARAMETERS, STANDARD_PLAN } from '@/shared/catalogue/standard-plan'
import type { LotKind } from '@/shared/methods/lot-kind'
import type { Log } from '@/shared/records/log'
import type { Lot, LotTest } from '@/shared/records/lot'
import type { Readings } from '@/shared/records/readings'
import type { RecordOf } from '@/shared/records/record-kinds'

/*
 * A programme as large as one gets: the whole standard plan specified, 100
 * lots with their tests, and logs that bring its readings to 50,000.
 */
const LOTS = 100
const READINGS = 50_000
const FIRST_LOGGED = Date.parse('2026-03-20T06:00:00Z')
const LAST_LOGGED = Date.parse('2026-06-17T18:00:00Z')
const TODAY = '2026-06-18'

const ASSEMBLIES = Array.from({ length: 200 }, (_, index) => `LX41-${String(index + 1).padStart(4, '0')}`)
const COMPONENTS = [
  'transformer T1',
  'resistors R1–R40',
  'capacitors C1–C22',
  'circuits U1–U9',
  'connector J1',
] as const

/** What the demo's board does not say, because its first two stages do not need it. */
const FURTHER_VALUES: Readonly<Record<string, unknown>> = {
  'product-class': '3',
  'alloy-family': 'tin-lead',
  'service-years': 20,
  environment: 'GF',
  'annual-volume': 400,
  'flux-control-method': 'density',
  'flux-solids': 20,
  'flux-density-target': 0.812,
  'flux-density-tolerance': 0.005,
  'flux-reference-temperature': 25,
  'flux-density-coefficient': 0.0009,
  'thinner-density': 0.785,
  'flux-tank-volume': 12,
  'bath-temperature-target': 250,
  'bath-mass': 400,
  'tip-temperature-target': 315,
  'chart-rules': 'zones',
  'inspected-assemblies-share': 100,
  'microsections-asked': 5,
}

/** A fresh copy on every call, so that nothing remembered about an earlier one helps. */
export function fullProgramme(): ProgrammeState {
  const lots = Array.from({ length: LOTS }, (_, index) => lotNumber(index))
  const tested = lots.flatMap((lot) => lot.tests).reduce((sum, test) => sum + test.readings.count, 0)
  const logs = logsOf(READINGS - tested)
  return {
    programme: { id: 'p', code: 'LX-41', title: 'Level transmitter, main board', leadId: 'ines' },
    members: [],
    items: STANDARD_PLAN.map((definition) => ({ definition, added: false, tailoredOut: null, lesson: null })),
    revisions: new Map(),
    facts: {
      values: specified(),
      requirements: [],
      records: {
        lots,
        deliveries: [],
        logs: new Map(logs.map((log) => [log.characteristic, [log]])),
        inspections: inspections(),
        instruments: ['RD-02', 'TH-05', 'XF-01', 'PT-09'].map((tag) => ({
          id: tag,
          tag,
          measures: 'what it is used for',
          calibratedOn: '2026-01-12',
          dueOn: '2027-01-12',
          certificate: `C-${tag}`,
          outOfUse: false,
        })),
        parts: [],
        byKind: new Map<string, readonly { readonly id: string }[]>([
          ['soldering-run', runs()],
          ['training', trained()],
        ]),
      },
      today: TODAY,
    },
    evidence: [],
    actions: [],
    approvals: [],
    concessions: [],
    gateSignatures: [],
  }
}

export const readingsIn = ({ facts }: ProgrammeState): number =>
  [...facts.records.lots.flatMap((lot) => lot.tests), ...[...facts.records.logs.values()].flat()].reduce(
    (sum, { readings }) => sum + readings.count,
    0,
  )

/** Every value as the door would have parsed it. */
function specified(): ReadonlyMap<string, unknown> {
  const given = structuredClone({ ...FURTHER_VALUES, ...LEVEL_TRANSMITTER })
  return new Map(
    ALL_PARAMETERS.filter(({ key }) => key in given).map(({ key, schema }) => [
      key,
      schema.parse(given[key]),
    ]),
  )
}

/** A can of flux; of the others one in five is boards, one in five their coupons, the rest components in turn. */
function lotNumber(index: number): Lot {
  const code = `N-${String(index + 1).padStart(3, '0')}`
  const scatter = scatterFrom(index + 1)
  if (index === LOTS - 1) return lotOf(code, 'consumable', 'flux F2', [receivingCheck(code)])
  if (index % 5 === 0)
    return lotOf(code, 'bare board', 'bare board LX-41', [
      rotaryDip(code, 50, scatter),
      plating(code, 'tin-lead', 'track', 9, scatter),
      plating(code, 'copper', 'hole', 30, scatter),
    ])
  if (index % 5 === 1) return lotOf(code, 'coupon', 'coupon LX-41', [rotaryDip(code, 50, scatter)])
  const part = COMPONENTS[Math.floor(index / 5) % COMPONENTS.length] ?? COMPONENTS[0]
  return lotOf(code, 'component', part, [dipAndLook(code, 50, scatter)])
}

const lotOf = (code: string, kind: LotKind, part: string, tests: readonly LotTest[]): Lot => ({
  id: code,
  code,
  kind,
  part,
  supplier: 'Northgate Circuits',
  dateCode: '2608',
  quantity: 200,
  receivedOn: '2026-03-09',
  storage: { temperatureC: 22, relativeHumidityPct: 42, packing: 'sealed, with desiccant' },
  supplierResult: 'As ordered, certificate with the lot',
  tests,
  disposition: { verdict: 'accept', by: 'Sunniva Brandt', on: '2026-03-16', reason: 'Every finding meets.' },
  usedIn: ASSEMBLIES,
})

function testOf(
  code: string,
  method: string,
  instrumentId: string,
  conditions: LotTest['conditions'],
  rows: Parameters<typeof readingsOf>[0],
): LotTest {
  return {
    id: `${code} ${method} ${String(conditions['deposit'] ?? '')}`,
    method,
    testedOn: '2026-03-11',
    testedBy: 'Sunniva Brandt',
    instrumentId,
    conditions,
    readings: readingsOf(rows),
  }
}

const rotaryDip = (code: string, specimens: number, scatter: () => number): LotTest =>
  testOf(
    code,
    'rotary-dip',
    'RD-02',
    { alloy: 'Sn60Pb40', flux: 'rosin-non-activated', bathTemperatureC: 235, ageing: 'none' },
    Array.from({ length: 2 * specimens }, (_, index) => ({
      specimen: String((index >> 1) + 1),
      place: index % 2 === 0 ? 'track' : 'hole',
      outcome: 'wetted',
      wettingTimeS: rounded(Math.max(0.5, 1.05 + 0.12 * scatter()), 2),
    })),
  )

const receivingCheck = (code: string): LotTest =>
  testOf(
    code,
    'receiving-check',
    'TH-05',
    { certificate: 'BL-77' },
    ['identity', 'date code', 'packing', 'shelf life'].flatMap((checked) =>
      Array.from({ length: 50 }, (_, index) => ({
        specimen: `can ${index + 1}`,
        checked,
        outcome: 'as ordered',
      })),
    ),
  )

const dipAndLook = (code: string, specimens: number, scatter: () => number): LotTest =>
  testOf(
    code,
    'dip-and-look',
    'TH-05',
    {
      alloy: 'Sn60Pb40',
      flux: 'rosin-non-activated',
      bathTemperatureC: 245,
      ageing: 'steam-8h',
      dwellS: 5,
      magnification: 10,
    },
    Array.from({ length: specimens }, (_, index) => ({
      specimen: String(index + 1),
      coveragePct: rounded(Math.min(100, 99 + 0.4 * scatter()), 1),
      nonWettingPct: 0.3,
      dewettingPct: 0,
    })),
  )

const plating = (
  code: string,
  deposit: string,
  place: string,
  meanUm: number,
  scatter: () => number,
): LotTest =>
  testOf(
    code,
    'plating-thickness',
    'XF-01',
    { deposit, technique: place === 'hole' ? 'microsection' : 'x-ray', uncertaintyUm: 0.3 },
    Array.from({ length: 20 }, (_, index) => ({
      specimen: String(index + 1),
      place,
      thicknessUm: rounded(meanUm + 0.04 * meanUm * scatter(), 1),
    })),
  )

type Cells = (scatter: () => number, index: number) => Readonly<Record<string, number | string>>
interface Logged {
  readonly characteristic: string
  /** Its part of all logged readings. */
  readonly share: number
  readonly cells: Cells
}

const LOGGED: readonly Logged[] = [
  {
    characteristic: 'bath-temperature',
    share: 0.4,
    cells: (scatter) => ({ bathC: rounded(250 + scatter(), 1) }),
  },
  {
    characteristic: 'store-climate',
    share: 0.2,
    cells: (scatter) => ({
      temperatureC: rounded(22 + scatter(), 1),
      relativeHumidityPct: rounded(42 + 2 * scatter(), 1),
    }),
  },
  {
    characteristic: 'flux-density',
    share: 0.1,
    cells: (scatter) => ({
      densityGPerMl: rounded(0.814 + 0.001 * scatter(), 4),
      temperatureC: rounded(23 + scatter(), 1),
    }),
  },
  {
    characteristic: 'wave-contact',
    share: 0.1,
    cells: (scatter) => ({ contactLengthMm: rounded(50 + scatter(), 1), conveyorSpeedMPerMin: 1.2 }),
  },
  {
    characteristic: 'wave-geometry',
    share: 0.05,
    cells: (scatter) => ({
      immersionMm: rounded(1 + 0.05 * scatter(), 2),
      angleDeg: rounded(6 + 0.1 * scatter(), 1),
    }),
  },
  {
    characteristic: 'wave-preheat',
    share: 0.05,
    cells: (scatter) => ({ uppersideC: rounded(105 + 2 * scatter(), 1), steepestRiseKPerS: 1.5, bathC: 250 }),
  },
  {
    characteristic: 'tip-temperature',
    share: 0.05,
    cells: (scatter, index) => ({
      iron: `iron ${(index % 6) + 1}`,
      bit: 'chisel 1.6',
      setC: 315,
      measuredC: rounded(315 + 2 * scatter(), 1),
      state: 'in-use',
    }),
  },
  {
    characteristic: 'tip-ground',
    share: 0.04,
    cells: (scatter, index) => ({
      iron: `iron ${(index % 6) + 1}`,
      resistanceOhm: rounded(0.9 + 0.05 * scatter(), 2),
      leakageMv: 0.4,
      tip: 'hot',
    }),
  },
  {
    characteristic: 'bath-composition',
    share: 0.01,
    cells: (scatter, index) => ({
      tinPct: rounded(62.6 + 0.1 * scatter(), 2),
      copperPct: rounded(0.08 + 0.0001 * index, 4),
      goldPct: 0.01,
      cadmiumPct: 0.001,
      zincPct: 0.001,
      aluminiumPct: 0.001,
      antimonyPct: 0.1,
      arsenicPct: 0.002,
      bismuthPct: 0.02,
      silverPct: 0.01,
      nickelPct: 0.001,
      ironPct: 0.002,
    }),
  },
]

/** So many readings, shared out; what rounding leaves goes to the longest log. */
function logsOf(count: number): Log[] {
  const rest = LOGGED.slice(1).map(({ share }) => Math.floor(share * count))
  const longest = count - rest.reduce((sum, part) => sum + part, 0)
  return LOGGED.map((logged, index) => logOf(logged, index === 0 ? longest : (rest[index - 1] ?? 0)))
}

function logOf({ characteristic, cells }: Logged, count: number): Log {
  const scatter = scatterFrom(1_000 + count)
  const rows = Array.from({ length: count }, (_, index) => ({
    at: Math.round(FIRST_LOGGED + ((LAST_LOGGED - FIRST_LOGGED) * index) / (count - 1)),
    ...cells(scatter, index),
  }))
  const readings: Readings = readingsOf(rows)
  return {
    id: characteristic,
    code: `L-${characteristic}`,
    characteristic,
    line: 'line 1',
    machine: 'machine 1',
    instrumentId: 'PT-09',
    readings,
  }
}

/** Boards soldered, a batch each second day, by people whose certificates are current. */
const runs = (): RecordOf<'soldering-run'>[] =>
  Array.from({ length: 40 }, (_, index) => ({
    id: `run-${index}`,
    doneOn: new Date(FIRST_LOGGED + index * 2 * 86_400_000).toISOString().slice(0, 10),
    worker: index % 2 === 0 ? 'Goran Eide' : 'Petra Vance',
    skill: index % 2 === 0 ? 'machine-soldering' : 'hand-soldering',
    assemblies: 10,
    begunAtH: undefined,
    serials: undefined,
    lots: 'N-001, N-002, N-003',
    line: 'line 1',
  }))

const trained = (): RecordOf<'training'>[] =>
  (['machine-soldering', 'hand-soldering', 'solderability-testing', 'inspection'] as const).flatMap((skill) =>
    ['Goran Eide', 'Petra Vance', 'Quill Amaro', 'Sunniva Brandt'].map((worker) => ({
      id: `${worker} ${skill}`,
      worker,
      skill,
      passedOn: '2026-01-12',
      expiresOn: '2027-01-12',
      certificate: 'H-12',
    })),
  )

const inspections = () =>
  ASSEMBLIES.map((assembly, index) => ({
    id: `inspection-${index}`,
    assembly,
    inspectedOn: '2026-06-10',
    inspector: 'Quill Amaro',
    magnification: 3,
    jointsSeen: 306,
    defects: index % 50 === 0 ? [{ kind: 'bridge' as const, joint: 'U1-3' }] : [],
    note: '',
  }))
