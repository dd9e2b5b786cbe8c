import { faceOf } from '@/shared/commands/all-faces'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { ExportCell, ExportTable } from '@/lib/exports/tables/export-table'
import {
  PROGRAMME_TABLE_NAMES,
  programmeTable,
  type ProgrammeTable,
} from '@/lib/exports/tables/programme-tables'
import { trailsResponse } from '@/lib/exports/tables/trail-table'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { actorFrom } from '@/lib/queries/programme-reader'
import { judgedProgramme } from '@/lib/programme/judged'
import { readWorkbook } from '@/lib/spreadsheets/read-workbook'
import { INSTALLATION_TRAIL } from '@/lib/trail/append-entry'
import { judgeProgramme } from '@/shared/gate/judgement'
import { isDate } from '@/shared/quantity/is-date'
import { noticeDigest, openWorld, type World } from '@/tests/commands/world'
import { demoState } from '@/tests/rules/demo/demo-state'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

let db: FreshDatabase
let world: World
let view: ProgrammeView

const REASON = 'For the test of tables.'

beforeAll(async () => {
  db = await freshDatabase()
  world = await openWorld()
  const programme = world.code
  await world.must('lead', 'open-option-study', {
    programme,
    item: 'programme-frame',
    title: 'How long it serves',
    alternatives: ['Short', 'Long'].map((name, index) => ({
      name,
      note: '',
      values: { 'service-years': 11 + index },
      costs: [{ kind: 'tooling' as const, per: 'once' as const, amount: '100 to 200' }],
      limits: [],
    })),
  })
  await world.must('quality', 'propose-lesson', {
    programme,
    title: 'Count from the second hour',
    learnt: 'The first readings of a shift are not yet the process.',
    source: { kind: 'item', key: 'programme-frame' },
    change: {
      kind: 'item',
      item: {
        stage: 'control',
        title: 'Start of the shift',
        asks: 'From when on do readings count?',
        owner: 'production',
        approvers: ['production', 'quality'],
        evidence: '',
      },
    },
  })
  await world.must('design', 'add-comment', {
    programme,
    about: { kind: 'parameter', key: 'service-years' },
    text: 'Is this agreed?',
    mentions: [world.person.quality],
  })
  const { notice } = (
    await world.must('design', 'open-change-notice', { programme, title: 'Magnify less', reason: REASON })
  ).result
  await world.must('design', 'propose-change', {
    programme,
    notice,
    change: {
      kind: 'requirement',
      limit: 'magnification-most',
      authority: 'company',
      document: 'Our rule',
      clause: '',
      value: 6,
      relaxes: false,
    },
    reason: REASON,
  })
  await world.must('production', 'answer-change-notice', {
    programme,
    notice,
    department: 'production',
    answer: 'agree',
    reason: '',
    digest: await noticeDigest(programme, notice),
  })
  await world.must('design', 'open-nonconformity', {
    programme,
    title: 'Balls of solder',
    found: 'Solder balls beside the connector.',
    foundOn: '2026-01-10',
    owner: 'production',
    place: { joint: 'T1-3', part: '', lot: '', assembly: 'SN-1', line: 'Line 1' },
    source: { kind: 'item', key: 'programme-frame' },
  })
  await world.must('design', 'open-review', {
    programme,
    title: 'First review',
    heldOn: '2026-01-09',
    chair: world.person.lead,
    members: [world.person.quality],
    guests: [],
  })
  const judged = await judgedProgramme(programme)
  if (!judged) throw new Error('The programme of the test is not there.')
  const reader = { personId: world.person.design, name: 'Test', auditor: false, administrator: false }
  view = { ...judged, code: programme, actor: actorFrom(judged, reader) }
})
afterAll(() => db.drop())

/** The demo’s finished programme: what needs no database is looked for there. */
const state = demoState('lx-41')
const judgement = judgeProgramme(state)
const finished = () => ({ ...view, state, judgement, code: 'LX-41' })

const { lots } = state.facts.records
const tested = lots.find(({ tests }) => tests.length > 0)!.tests[0]!
const log = [...state.facts.records.logs.values()].flat()[0]!

type Rows = readonly Readonly<Record<string, ExportCell>>[]
interface Wanted {
  readonly in: 'world' | 'demo'
  readonly of?: string
  readonly rows: number
  readonly has?: Rows[number]
}

/** Every table by its name: how many rows it has, and something of one of them. */
const WANTED: Readonly<Record<ProgrammeTable, Wanted>> = {
  specification: {
    in: 'demo',
    rows: state.items
      .flatMap(({ definition }) => definition.parameters)
      .filter(({ shape }) => shape.kind === 'field').length,
  },
  parameter: {
    in: 'demo',
    of: 'process-costs',
    rows: 3,
    has: { Process: 'Wave soldering', 'Per board': 3.1 },
  },
  findings: { in: 'demo', rows: state.items.flatMap(({ definition }) => definition.rules).length },
  actions: { in: 'demo', rows: state.actions.length },
  costs: {
    in: 'demo',
    rows: state.actions.flatMap(({ answer }) => answer?.amounts ?? []).length,
  },
  concessions: { in: 'demo', rows: state.concessions.length },
  nonconformities: { in: 'world', rows: 1, has: { Title: 'Balls of solder', 'Found on': '2026-01-10' } },
  reviews: { in: 'world', rows: 1, has: { Title: 'First review', Held: '2026-01-09', Chair: 'Test lead' } },
  comments: {
    in: 'world',
    rows: 1,
    has: { Text: 'Is this agreed?', Mentions: 'Test quality', By: 'Test design', About: 'parameter' },
  },
  members: { in: 'world', rows: 7 },
  lessons: {
    in: 'world',
    rows: 1,
    has: { Title: 'Count from the second hour', Status: 'proposed', 'Proposed by': 'Test quality' },
  },
  alternatives: {
    in: 'world',
    rows: 2,
    has: { Question: 'How long it serves', Alternative: 'Long', 'Adopted by': undefined },
  },
  'alternative-costs': {
    in: 'world',
    rows: 2,
    has: { Alternative: 'Long', What: 'Tooling', 'At least': 100, 'At most': 200 },
  },
  'change-notices': { in: 'world', rows: 1, has: { Title: 'Magnify less', Reason: REASON } },
  'change-answers': { in: 'world', rows: 1, has: { Department: 'production', Agrees: 'yes' } },
  evidence: { in: 'demo', rows: state.evidence.length, has: { File: state.evidence[0]?.fileName } },
  approvals: { in: 'demo', rows: state.approvals.length, has: { Department: 'quality', Holds: 'yes' } },
  'gate-signatures': {
    in: 'demo',
    rows: state.gateSignatures.length,
    has: { Gate: 'assessment', Department: 'quality', Holds: 'yes' },
  },
  lots: { in: 'demo', rows: lots.length },
  'lot-tests': { in: 'demo', rows: lots.flatMap(({ tests }) => tests).length },
  'test-readings': { in: 'demo', of: tested.id, rows: tested.readings.count },
  logs: { in: 'demo', rows: [...state.facts.records.logs.values()].flat().length },
  'log-readings': { in: 'demo', of: log.code, rows: log.readings.count },
  records: {
    in: 'demo',
    of: 'soldering-run',
    rows: state.facts.records.byKind.get('soldering-run')?.length ?? 0,
  },
  inspections: { in: 'demo', rows: state.facts.records.inspections.length },
  defects: { in: 'demo', rows: state.facts.records.inspections.flatMap(({ defects }) => defects).length },
  // The demo’s story makes 240 boards.
  assemblies: { in: 'demo', rows: 240 },
}

const isRight = (kind: ExportTable['columns'][number]['kind'], cell: ExportCell): boolean => {
  if (cell === undefined || cell === null || cell === '') return true
  switch (kind) {
    case 'number':
      return Number.isFinite(cell)
    case 'date':
      return typeof cell === 'string' && isDate(cell)
    case 'instant':
      return Number.isFinite(new Date(cell).getTime())
    case 'text':
      return typeof cell === 'string' || typeof cell === 'number'
  }
}

describe.each(PROGRAMME_TABLE_NAMES)('the table %s', (name) => {
  test('has its rows, and in each cell what its column says', async () => {
    const { in: where, of = '', rows, has } = WANTED[name]
    const table = await programmeTable(where === 'demo' ? finished() : view, name, of)
    const found = [...(table?.rows() ?? [])]
    expect([table?.count, found.length]).toEqual([rows, rows])
    const headings = table?.columns.map(({ heading }) => heading) ?? []
    expect(new Set(headings).size).toBe(headings.length)
    for (const cells of found) {
      expect(cells).toHaveLength(headings.length)
      cells.forEach((cell, at) =>
        expect(isRight(table!.columns[at]!.kind, cell), `${headings[at]}: ${cell}`).toBe(true),
      )
    }
    if (!has) return
    const named = found.map((cells) =>
      Object.fromEntries(headings.map((heading, at) => [heading, cells[at]])),
    )
    expect(named).toContainEqual(expect.objectContaining(has))
  })
})

test('a table of a name that is none is not there', async () => {
  expect(await programmeTable(view, 'constructor', '')).toBeUndefined()
  expect(await programmeTable(view, 'records', 'constructor')).toBeUndefined()
})

test('trails leave as one workbook, each row with its trail', async () => {
  const trails = [
    { id: view.state.programme.id, code: world.code },
    { id: INSTALLATION_TRAIL, code: INSTALLATION_TRAIL },
  ]
  const answer = await trailsResponse(trails, 'trails', 'xlsx')
  expect(answer.headers.get('content-disposition')).toContain('trails.xlsx')
  const [heading, first, ...others] = await readWorkbook(Buffer.from(await answer.arrayBuffer()))
  expect(heading?.slice(0, 2)).toEqual(['Trail', 'Entry'])
  expect([first?.[0], first?.[1], first?.[4]]).toEqual([world.code, 1, faceOf('open-programme').done])
  expect(others.filter((row) => row[0] === world.code)).toHaveLength(view.head.seq - 1)
  const csv = await (await trailsResponse(trails, 'trails', null)).text()
  expect(csv.split('\r\n')[0]).toBe('trail,entry,at,by,done,recorded,hash')
})
