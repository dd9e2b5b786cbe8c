import { attachText, storeText } from '@/seed/attach-file'
import { csvOf, readingsOf, rounded, scatterFrom } from '@/seed/readings'
import type { Story } from '@/seed/story'

const COMPONENTS = [
  ['T-118', 'transformer T1', 'Ostrava Wound Parts', 'Dip and look: 98 % coverage, certificate 118'],
  ['R-540', 'resistors R1–R40', 'Calder Passives', 'Dip and look: 99 % coverage'],
  ['C-221', 'capacitors C1–C22', 'Calder Passives', 'Dip and look: 99 % coverage'],
  ['U-902', 'circuits U1–U9', 'Meridian Semi', 'Dip and look: 97 % coverage'],
  ['J-640', 'connector J1', 'Ostrava Wound Parts', 'Dip and look: 98 % coverage'],
] as const

type Row = Record<string, number | string | null>

/** What is bought in is shown to meet the specification, lot by lot. */
export async function evaluate(story: Story, instruments: Readonly<Record<string, string>>): Promise<void> {
  story.on('2026-03-09')
  await receive(
    story,
    'B-2609',
    'bare board',
    'bare board LX-41',
    'Northgate Circuits',
    250,
    'Rotary dip at 235 °C: 1.3 s at most, certificate NC-8812',
  )
  await receive(
    story,
    'K-2609',
    'coupon',
    'coupon LX-41',
    'Northgate Circuits',
    20,
    'From the same panels as B-2609',
  )
  for (const [code, part, supplier, result] of COMPONENTS)
    await receive(story, code, 'component', part, supplier, 260, result)
  await receive(
    story,
    'F-77',
    'consumable',
    'flux F2',
    'Brandt & Lowe Fluxes',
    4,
    'Density 0.812 g/ml at 25 °C',
  )
  story.on('2026-03-11')
  await rotaryDip(story, instruments, 'B-2609', 50, 11)
  await rotaryDip(story, instruments, 'K-2609', 13, 12)
  await plating(story, instruments)
  for (const [index, [code]] of COMPONENTS.entries()) await dipAndLook(story, instruments, code, 31 + index)
  await story.do('sunniva', 'test-lot', {
    lot: 'F-77',
    method: 'receiving-check',
    testedOn: '2026-03-11',
    testedBy: 'Sunniva Brandt',
    instrument: null,
    conditions: { certificate: 'BL-77' },
    readings: readingsOf(
      ['1', '2', '3', '4'].flatMap((can) =>
        ['identity', 'date code', 'packing', 'shelf life'].map((checked) => ({
          specimen: `can ${can}`,
          checked,
          outcome: 'as ordered',
        })),
      ),
    ),
    file: null,
  })
  story.on('2026-03-16')
  for (const lot of ['B-2609', 'K-2609', ...COMPONENTS.map(([code]) => code), 'F-77']) {
    await story.do('sunniva', 'dispose-lot', {
      lot,
      verdict: 'accept',
      reason: 'Every finding on the lot meets.',
    })
  }
  await story.do('goran', 'trace-lot', { lot: 'B-2609', assemblies: serials(1, 240) })
  for (const [code] of COMPONENTS)
    await story.do('goran', 'trace-lot', { lot: code, assemblies: serials(1, 240) })
  for (const item of ['parts-evaluated', 'instruments'])
    await attachText(
      story,
      'sunniva',
      item,
      'certificate',
      `certificates-${item}.txt`,
      `Certificates on file for ${item} of LX-41.\n`,
    )
  await story.on('2026-03-18').approve('evaluation')
  await story.signGate('evaluation')
}

/** Serial numbers as on the assemblies' labels. */
export const serials = (from: number, to: number): string[] =>
  Array.from({ length: to - from + 1 }, (_, index) => `LX41-${String(from + index).padStart(4, '0')}`)

const receive = (
  story: Story,
  code: string,
  kind: string,
  part: string,
  supplier: string,
  quantity: number,
  supplierResult: string,
) =>
  story.do('sunniva', 'receive-lot', {
    code,
    kind,
    part,
    supplier,
    dateCode: '2608',
    quantity,
    receivedOn: '2026-03-09',
    temperatureC: 22,
    relativeHumidityPct: 42,
    packing: 'sealed, with desiccant',
    supplierResult,
  })

/** Wetting times as the tester's file gives them, one row a place. */
async function rotaryDip(
  story: Story,
  instruments: Readonly<Record<string, string>>,
  lot: string,
  specimens: number,
  start: number,
): Promise<void> {
  const scatter = scatterFrom(start)
  const rows: Row[] = Array.from({ length: specimens }, (_, index) =>
    (['track', 'hole'] as const).map((place) => ({
      specimen: String(index + 1),
      place,
      outcome: 'wetted',
      wettingTimeS: rounded(Math.max(0.5, (place === 'track' ? 0.95 : 1.15) + 0.12 * scatter()), 2),
    })),
  ).flat()
  await story.do('sunniva', 'test-lot', {
    lot,
    method: 'rotary-dip',
    testedOn: '2026-03-11',
    testedBy: 'Sunniva Brandt',
    instrument: instruments['RD-02'],
    conditions: { alloy: 'Sn60Pb40', flux: 'rosin-non-activated', bathTemperatureC: 235, ageing: 'none' },
    readings: readingsOf(rows),
    file: await storeText(`${lot}-rotary-dip.csv`, csvOf(rows)),
  })
}

async function plating(story: Story, instruments: Readonly<Record<string, string>>): Promise<void> {
  for (const [deposit, place, mean, sd, start] of [
    ['tin-lead', 'track', 9, 0.8, 21],
    ['copper', 'hole', 30, 1.2, 22],
  ] as const) {
    const scatter = scatterFrom(start)
    const rows: Row[] = Array.from({ length: 20 }, (_, index) => ({
      specimen: String(index + 1),
      place,
      thicknessUm: rounded(mean + sd * scatter(), 1),
    }))
    await story.do('sunniva', 'test-lot', {
      lot: 'B-2609',
      method: 'plating-thickness',
      testedOn: '2026-03-11',
      testedBy: 'Sunniva Brandt',
      instrument: instruments['XF-01'],
      conditions: { deposit, technique: place === 'hole' ? 'microsection' : 'x-ray', uncertaintyUm: 0.3 },
      readings: readingsOf(rows),
      file: await storeText(`B-2609-${deposit}.csv`, csvOf(rows)),
    })
  }
}

async function dipAndLook(
  story: Story,
  instruments: Readonly<Record<string, string>>,
  lot: string,
  start: number,
): Promise<void> {
  const scatter = scatterFrom(start)
  const rows: Row[] = Array.from({ length: 50 }, (_, index) => ({
    specimen: String(index + 1),
    coveragePct: rounded(Math.min(100, 99 + 0.4 * scatter()), 1),
    nonWettingPct: 0.3,
    dewettingPct: 0,
  }))
  await story.do('sunniva', 'test-lot', {
    lot,
    method: 'dip-and-look',
    testedOn: '2026-03-11',
    testedBy: 'Sunniva Brandt',
    instrument: instruments['TH-05'],
    conditions: {
      alloy: 'Sn60Pb40',
      flux: 'rosin-non-activated',
      bathTemperatureC: 245,
      ageing: 'steam-8h',
      dwellS: 5,
      magnification: 10,
    },
    readings: readingsOf(rows),
    file: await storeText(`${lot}-dip-and-look.csv`, csvOf(rows)),
  })
}
