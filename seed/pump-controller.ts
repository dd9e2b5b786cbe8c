import { attachText } from '@/seed/attach-file'
import { LEVEL_TRANSMITTER } from '@/seed/boards/level-transmitter'
import type { PersonIds } from '@/seed/people'
import { SHARED_LOTS } from '@/seed/level-transmitter/lots'
import { rounded, scatterFrom } from '@/seed/readings'
import { atSupplier, testInStore } from '@/seed/store'
import { Story } from '@/seed/story'
import { LINE } from '@/seed/works'
import type { JsonValue } from '@/shared/trail/canonical-json'

const BOARDS = 'Calloway Boards'

/** PX-12: its specification gate is open; a lot of boards wets too slowly, and a question waits for production. */
export async function tellPumpController(
  people: PersonIds,
  instruments: Readonly<Record<string, string>>,
): Promise<void> {
  const story = new Story(people, 'PX-12', '2026-09-01')
  await story.act('tomas', 'open-programme', {
    code: story.code,
    title: 'Pump controller, relay board',
    department: 'design',
    productClass: '3',
    alloyFamily: 'tin-lead',
    serviceYears: 15,
    environment: 'GF',
    annualVolume: 900,
  })
  for (const [email, department] of [
    ['ines@demo.invalid', 'design'],
    ['petra@demo.invalid', 'production'],
    ['quill@demo.invalid', 'quality'],
    ['sunniva@demo.invalid', 'quality'],
  ] as const) {
    await story.do('tomas', 'invite-member', { email, department })
  }
  await story
    .on('2026-09-08')
    .specify(
      'tomas',
      specified(),
      'Taken over from the level transmitter, which uses the same hole and finish practice.',
    )
  await attachText(
    story,
    'tomas',
    'holes-and-lands',
    'drawing',
    'PX-12-drill-chart.txt',
    'PX-12 revision A, drill chart as LX-41 revision C.\n',
  )
  await story.on('2026-09-15').approve('specification')
  await story.signGate('specification')
  await story.do('petra', 'state-line', { line: LINE })
  await slowLot(story, instruments, {
    code: 'P-298',
    dateCode: '2602',
    receivedOn: '2026-10-12',
    testedOn: '2026-10-13',
    start: 78,
  })
  await story.on('2026-10-15').act('quill', 'dispose-lot', {
    ...atSupplier(BOARDS),
    lot: 'P-298',
    verdict: 'reject',
    reason: 'Wets too slowly; sent back with the readings.',
  })
  await slowLot(story, instruments, {
    code: 'P-311',
    dateCode: '2604',
    receivedOn: '2026-11-05',
    testedOn: '2026-11-06',
    start: 77,
  })
  story.on('2026-11-09')
  for (const lot of SHARED_LOTS)
    await story.act('goran', 'allocate-lot', {
      ...{ supplier: 'Calder Passives', lot, to: story.code },
      quantity: 20,
    })
  await story.on('2026-11-10').do('quill', 'ask-action', {
    item: 'board-solderability',
    from: 'quality',
    to: 'production',
    kind: 'feasibility',
    question: 'Can lot P-311 be levelled again by the supplier, and how long would that take?',
    dueOn: '2026-11-20',
  })
}

/** The same practice on a board of its own name; who plans the parts names them anew. */
function specified(): Record<string, JsonValue> {
  const values = JSON.parse(JSON.stringify(LEVEL_TRANSMITTER).replaceAll('LX-41', 'PX-12')) as Record<
    string,
    JsonValue
  >
  return { ...values, 'survival-target': 98.5 }
}

/** One delivery of slow boards; its readings scatter from `start`. */
interface SlowLot {
  readonly code: string
  readonly dateCode: string
  readonly receivedOn: string
  readonly testedOn: string
  readonly start: number
}

/** Boards whose tin-lead wets in two to three seconds: old stock, as it turned out. */
async function slowLot(
  story: Story,
  instruments: Readonly<Record<string, string>>,
  { code, dateCode, receivedOn, testedOn, start }: SlowLot,
): Promise<void> {
  await story.on(receivedOn).act('sunniva', 'receive-lot', {
    supplier: BOARDS,
    code,
    kind: 'bare board',
    part: 'bare board PX-12',
    dateCode,
    quantity: 120,
    receivedOn,
    temperatureC: 23,
    relativeHumidityPct: 55,
    packing: 'shrink film, no desiccant',
    supplierResult: 'Rotary dip: 1.6 s, tested in January',
  })
  await story.act('goran', 'allocate-lot', {
    ...{ supplier: BOARDS, lot: code, to: story.code },
    quantity: 120,
  })
  const scatter = scatterFrom(start)
  const rows = Array.from({ length: 20 }, (_, index) =>
    (['track', 'hole'] as const).map((place) => ({
      specimen: String(index + 1),
      place,
      outcome: 'wetted',
      wettingTimeS: rounded(Math.max(1, (place === 'track' ? 1.9 : 2.2) + 0.25 * scatter()), 2),
    })),
  ).flat()
  await testInStore(
    story.on(testedOn),
    { supplier: BOARDS, lot: code },
    {
      method: 'rotary-dip',
      testedOn,
      instrument: 'RD-02',
      conditions: { alloy: 'Sn60Pb40', flux: 'rosin-non-activated', bathTemperatureC: 235, ageing: 'none' },
      rows,
    },
    instruments,
  )
}
