import { storeTextFor } from '@/seed/attach-file'
import { logsAt } from '@/seed/level-transmitter/logs'
import { ASSEMBLIES_A_DAY, DAYS } from '@/seed/level-transmitter/days'
import { serials } from '@/seed/level-transmitter/serials'
import { csvOf, readingsOf } from '@/seed/readings'
import { LINE } from '@/seed/works'
import type { Story } from '@/seed/story'
import { addDays } from '@/shared/quantity/calendar'
import { isLevel } from '@/shared/logs/level-characteristics'
import { logChart } from '@/shared/charts/log-chart'
import type { JsonValue } from '@/shared/trail/canonical-json'

/** What production and quality settle for the process before the first run. */
export const PROCESS = {
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

/** The check of the leads that are bent here, but for its day. */
export const LEADS_FORMED = {
  worker: 'Goran Eide',
  part: 'R1–R40',
  leadDiameterMm: 0.6,
  insideRadiusMm: 1.3,
  straightMm: 1.6,
  marked: false,
  tool: 'bending gauge 0.6',
}

/** How quality wants the process charted. */
const CHARTS: Readonly<Record<string, JsonValue>> = {
  'process-charts': [
    { characteristic: 'bath-temperature', chart: 'mean-range', subgroup: 2, grouping: 'each-day' },
    {
      characteristic: 'wave-preheat',
      chart: 'individuals',
      baselineFrom: '2026-03-23',
      baselineTo: '2026-03-27',
    },
  ],
}

/** The bath is analysed every other week, also before this board came to it. */
const ANALYSES = [
  '2026-01-09',
  '2026-01-23',
  '2026-02-06',
  '2026-02-20',
  '2026-03-06',
  '2026-03-20',
  '2026-04-02',
]

/** The process is held where the specification needs it. */
export async function control(story: Story, instruments: Readonly<Record<string, string>>): Promise<void> {
  story.on('2026-03-19')
  await story.specify('petra', PROCESS, 'Agreed at the process review of 19 March.')
  await story.specify('ines', { 'chip-capacitors-in-wave': false }, 'There are none on the board.')
  await story.specify('quill', CHARTS, 'The bath is read twice a shift; preheat held by its first week.')
  await trainPeople(story)
  story.on('2026-04-03')
  await story.do('petra', 'state-line', { line: LINE })
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
  await story.act('quill', 'add-record', {
    works: { kind: 'people', code: 'people' },
    kind: 'training',
    rows,
  })
}

async function runs(story: Story): Promise<void> {
  const rows = DAYS.map((doneOn, index) => ({
    doneOn,
    worker: 'Goran Eide',
    skill: 'machine-soldering',
    assemblies: ASSEMBLIES_A_DAY,
    serials: spanOf(index * ASSEMBLIES_A_DAY + 1, (index + 1) * ASSEMBLIES_A_DAY),
    lots: 'B-2609, T-118, R-540, C-221, U-902, J-640',
    line: 'Line 1',
  }))
  const hand = DAYS.map((doneOn) => ({
    doneOn,
    worker: 'Goran Eide',
    skill: 'hand-soldering',
    assemblies: ASSEMBLIES_A_DAY,
    lots: 'T-118',
    line: 'Bench 3',
  }))
  await story.do('goran', 'add-record', { kind: 'soldering-run', rows: [...rows, ...hand] })
  await story.do('goran', 'add-record', {
    kind: 'lead-forming',
    rows: [{ checkedOn: '2026-03-23', ...LEADS_FORMED }],
  })
}

const spanOf = (first: number, last: number): string =>
  `${serials(first, first)[0]} to ${serials(last, last)[0]}`

async function keepLogs(story: Story, instruments: Readonly<Record<string, string>>): Promise<void> {
  const instants = DAYS.flatMap((day) => ['06:30', '13:30'].map((time) => Date.parse(`${day}T${time}:00Z`)))
  const analyses = ANALYSES.map((day) => Date.parse(`${day}T09:00:00Z`))
  const store = Array.from({ length: 47 }, (_, day) => Date.parse(`${addDays('2026-02-16', day)}T07:00:00Z`))
  for (const { code, characteristic, machine, instrument, rows } of logsAt({ instants, analyses, store })) {
    await story.act('goran', 'open-log', {
      machine,
      code,
      characteristic,
      instrument: instrument && (instruments[instrument] ?? null),
    })
    const written = rows.map((row) => ({ ...row, at: new Date(Number(row['at'])).toISOString() }))
    await story.act('goran', 'add-readings', {
      machine,
      log: code,
      readings: readingsOf(rows),
      file: await storeTextFor(await story.machineReader('goran', machine), `${code}.csv`, csvOf(written)),
      mapping: null,
    })
  }
}

/** Every signal that must be answered gets its cause and what was done. */
async function answerSignals(story: Story): Promise<void> {
  const { state } = await story.read()
  const level = [...state.facts.records.logs.values()]
    .flat()
    .filter(({ characteristic }) => isLevel(characteristic))
  for (const log of level) {
    const signals = logChart(log, state.facts).signals.filter(({ asked }) => asked)
    if (signals.length === 0) continue
    await story.act('petra', 'add-record', {
      works: { kind: 'machine', code: log.machine },
      kind: 'signal-answer',
      rows: signals.map(({ chartRule, readingAt }) => ({
        log: log.code,
        chartRule,
        readingAt,
        answer: 'cause-removed',
        cause: 'Reading taken before the machine had settled after the start of the shift.',
        action: 'Readings are taken 30 minutes after the start from now on; repeated, and inside.',
        by: 'Petra Vance',
        on: '2026-04-03',
      })),
    })
  }
}
