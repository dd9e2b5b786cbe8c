import { storeText } from '@/seed/attach-file'
import { serials } from '@/seed/level-transmitter/evaluation'
import { csvOf, readingsOf, rounded, scatterFrom } from '@/seed/readings'
import type { DemoPerson } from '@/seed/people'
import type { Story } from '@/seed/story'
import { CHARACTERISTICS, type CharacteristicKey } from '@/shared/records/characteristics'
import { chartLog } from '@/shared/rules/control/log-signals'

type Row = Record<string, number | string | null>

/** What production and quality settle for the process before the first run. */
const PROCESS = {
  'flux-control-method': 'density',
  'flux-solids': 18,
  'flux-density-target': 0.812,
  'flux-density-tolerance': 0.01,
  'flux-reference-temperature': 25,
  'flux-density-coefficient': 0.00085,
  'thinner-density': 0.785,
  'flux-tank-volume': 20,
  'bath-temperature-target': 250,
  'bath-mass': 300,
  'new-solder-copper': 0.02,
  'tip-temperature-target': 310,
}

/** The two weeks of March in which the first 240 assemblies were soldered. */
const DAYS = [
  '2026-03-23',
  '2026-03-24',
  '2026-03-25',
  '2026-03-26',
  '2026-03-27',
  '2026-03-30',
  '2026-03-31',
  '2026-04-01',
  '2026-04-02',
  '2026-04-03',
]

/** The process is held where the specification needs it. */
export async function control(story: Story, instruments: Readonly<Record<string, string>>): Promise<void> {
  story.on('2026-03-19')
  await story.specify('petra', PROCESS, 'Agreed at the process review of 19 March.')
  await story.specify('ines', { 'chip-capacitors-in-wave': false }, 'There are none on the board.')
  await trainPeople(story)
  story.on('2026-04-03')
  await keepLogs(story, instruments)
  await runs(story)
  await answerSignals(story)
  await story.on('2026-04-07').approve('control')
  await story.signGate('control')
}

async function trainPeople(story: Story): Promise<void> {
  const skills: readonly (readonly [string, string])[] = [
    ['Goran Eide', 'machine-soldering'],
    ['Goran Eide', 'hand-soldering'],
    ['Goran Eide', 'rework'],
    ['Goran Eide', 'component-preparation'],
    ['Sunniva Brandt', 'inspection'],
    ['Sunniva Brandt', 'solderability-testing'],
  ]
  const rows = skills.map(([worker, skill], index) => ({
    worker,
    skill,
    passedOn: '2026-01-20',
    expiresOn: '2027-12-31',
    certificate: `TR-26-${String(index + 1).padStart(2, '0')}`,
  }))
  await story.do('quill', 'add-record', { kind: 'training', rows })
}

async function runs(story: Story): Promise<void> {
  const rows = DAYS.map((doneOn, index) => ({
    doneOn,
    worker: 'Goran Eide',
    skill: 'machine-soldering',
    assemblies: 24,
    serials: `${serials(index * 24 + 1, index * 24 + 1)[0]} to ${serials(index * 24 + 24, index * 24 + 24)[0]}`,
    lots: 'B-2609, T-118, R-540, C-221, U-902, J-640',
    line: 'Line 1',
  }))
  const hand = DAYS.map((doneOn) => ({
    doneOn,
    worker: 'Goran Eide',
    skill: 'hand-soldering',
    assemblies: 24,
    lots: 'T-118',
    line: 'Bench 3',
  }))
  await story.do('goran', 'add-record', { kind: 'soldering-run', rows: [...rows, ...hand] })
  await story.do('goran', 'add-record', {
    kind: 'lead-forming',
    rows: [
      {
        checkedOn: '2026-03-23',
        worker: 'Goran Eide',
        part: 'R1–R40',
        leadDiameterMm: 0.6,
        insideRadiusMm: 1.3,
        straightMm: 1.6,
        marked: false,
        tool: 'bending gauge 0.6',
      },
    ],
  })
}

async function keepLogs(story: Story, instruments: Readonly<Record<string, string>>): Promise<void> {
  const each = <T>(make: (at: number, index: number) => T): T[] =>
    DAYS.flatMap((day, index) =>
      ['06:30', '13:30'].map((time, half) => make(Date.parse(`${day}T${time}:00Z`), index * 2 + half)),
    )
  const [density, bath, dwell, depth, preheat] = [41, 42, 43, 44, 45].map(scatterFrom) as [
    () => number,
    () => number,
    () => number,
    () => number,
    () => number,
  ]
  await log(
    story,
    'FLUX-1',
    'flux-density',
    'Foam fluxer',
    instruments['HY-03'],
    each((at, index) => {
      const temperatureC = rounded(22 + (index % 4), 1)
      return {
        at,
        densityGPerMl: rounded(0.812 - 0.00085 * (temperatureC - 25) + 0.0012 * density(), 4),
        temperatureC,
      }
    }),
  )
  await log(
    story,
    'BATH-1',
    'bath-temperature',
    'Wave 1',
    instruments['TC-09'],
    each((at) => ({ at, bathC: rounded(250 + 0.7 * bath(), 1) })),
  )
  await log(
    story,
    'WAVE-1',
    'wave-contact',
    'Wave 1',
    instruments['TC-09'],
    each((at) => ({ at, contactLengthMm: rounded(52 + 0.4 * dwell(), 1), conveyorSpeedMPerMin: 1.05 })),
  )
  await log(
    story,
    'GEOM-1',
    'wave-geometry',
    'Wave 1',
    null,
    each((at) => ({ at, immersionMm: rounded(0.93 + 0.02 * depth(), 2), angleDeg: 6 })),
  )
  await log(
    story,
    'HEAT-1',
    'wave-preheat',
    'Wave 1',
    instruments['TC-09'],
    each((at) => ({ at, uppersideC: rounded(106 + 0.8 * preheat(), 1), steepestRiseKPerS: 1.6, bathC: 250 })),
  )
  await log(story, 'POT-1', 'bath-composition', 'Wave 1', instruments['SP-04'], [
    {
      at: Date.parse('2026-03-20T09:00:00Z'),
      tinPct: 63,
      copperPct: 0.11,
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
    },
    {
      at: Date.parse('2026-04-02T09:00:00Z'),
      tinPct: 62.9,
      copperPct: 0.12,
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
    },
  ])
  const tip = scatterFrom(46)
  await log(
    story,
    'TIP-1',
    'tip-temperature',
    'Bench 3',
    instruments['TC-09'],
    each((at) => ({
      at,
      iron: 'IR-3',
      bit: 'chisel 2.4',
      setC: 310,
      measuredC: rounded(310 + 1.2 * tip(), 1),
    })),
  )
  await log(
    story,
    'GND-1',
    'tip-ground',
    'Bench 3',
    instruments['TC-09'],
    each((at) => ({ at, iron: 'IR-3', resistanceOhm: 1.1, leakageMv: 0.4, tip: 'hot' })),
  )
}

/** Opens a log and imports its readings as from the file the machine wrote. */
async function log(
  story: Story,
  code: string,
  characteristic: string,
  machine: string,
  instrument: string | null | undefined,
  rows: readonly Row[],
  who: DemoPerson = 'goran',
): Promise<void> {
  await story.do(who, 'open-log', {
    code,
    characteristic,
    line: 'Line 1',
    machine,
    instrument: instrument ?? null,
  })
  const file = await storeText(
    `${code}.csv`,
    csvOf(rows.map((row) => ({ ...row, at: new Date(Number(row['at'])).toISOString() }))),
  )
  await story.do(who, 'add-readings', { log: code, readings: readingsOf(rows), file, mapping: null })
}

/** Every signal that the charts sounded gets its cause and what was done. */
async function answerSignals(story: Story): Promise<void> {
  const { state } = await story.read()
  const signals = [...state.facts.records.logs.values()].flat().flatMap((log) => {
    const { chart, readings } = chartLog(log, CHARACTERISTICS[log.characteristic as CharacteristicKey])
    return (chart?.signals ?? []).flatMap(({ ruleId, soundedAt }) => {
      const reading = readings[soundedAt]
      return reading
        ? [
            {
              log: log.code,
              chartRule: ruleId,
              readingAt: new Date(reading.at).toISOString().replace('.000Z', 'Z'),
            },
          ]
        : []
    })
  })
  if (signals.length === 0) return
  await story.do('petra', 'add-record', {
    kind: 'signal-answer',
    rows: signals.map((signal) => ({
      ...signal,
      answer: 'cause-removed',
      cause: 'Reading taken before the machine had settled after the start of the shift.',
      action: 'Readings are taken 30 minutes after the start from now on; repeated, and inside.',
      by: 'Petra Vance',
      on: '2026-04-03',
    })),
  })
}
