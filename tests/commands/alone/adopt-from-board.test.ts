import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest'
import type { InputOf } from '@/lib/commands/all-commands'
import { database } from '@/lib/db/client'
import { verdictOnStored } from '@/lib/trail/verify-stored'
import { entryTold } from '@/shared/commands/entry-told'
import { breaksInWords } from '@/shared/stored/stored-verdict'
import { attachBoardFiles } from '@/tests/commands/attach-board-files'
import { openWorld, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

let db: FreshDatabase
let world: World
let evidence: string
beforeAll(async () => {
  db = await freshDatabase()
})
afterAll(() => db.drop())
beforeEach(async () => {
  world = await openWorld()
  evidence = await attachBoardFiles(world)
})

type Values = InputOf<'adopt-from-board'>['values']
const reason = 'As the board of revision B is drawn.'
const LENGTH = { parameter: 'board-length', value: 160, seen: 0 }
const EDGE = { parameter: 'copper-to-edge', value: 0.4, seen: 0 }
const given = (values: Values, more: Partial<InputOf<'adopt-from-board'>> = {}) => ({
  programme: world.code,
  evidence,
  values,
  reason,
  ...more,
})
const programme = () => database().programme.findUniqueOrThrow({ where: { code: world.code } })
/** Opening a programme states values of its own. */
const TRIED = ['board-length', 'board-width', 'copper-to-edge', 'lead-holes', 'flux-tank-volume']
const revisions = async () =>
  database().revision.findMany({
    where: { programmeId: (await programme()).id, parameter: { in: TRIED } },
    orderBy: { parameter: 'asc' },
    select: { parameter: true, number: true, value: true, reason: true, authorId: true },
  })
const entries = async () =>
  database().trailEntry.findMany({ where: { trailId: (await programme()).id }, orderBy: { seq: 'asc' } })

test('several values are adopted for one reason: a revision and an entry each, and one of their own', async () => {
  const before = (await entries()).length
  expect(await world.as('lead', 'adopt-from-board', given([LENGTH, EDGE]))).toMatchObject({
    ok: true,
    result: { adopted: 2 },
    leads: { kind: 'board', evidence },
  })
  const authorId = world.person.lead
  expect(await revisions()).toEqual([
    { parameter: 'board-length', number: 1, value: 160, reason, authorId },
    { parameter: 'copper-to-edge', number: 1, value: 0.4, reason, authorId },
  ])
  const written = (await entries()).slice(before)
  expect(written.map(({ command }) => command)).toEqual([
    'revise-parameter',
    'revise-parameter',
    'adopt-from-board',
  ])
  expect(entryTold(written[0]!)).toMatchObject({ what: '160 mm', words: reason })
  expect(entryTold(written[2]!)).toMatchObject({
    subject: 'board.zip',
    what: expect.stringMatching(/, revision 1; .+, revision 1$/),
    words: reason,
  })
  expect(JSON.parse(written[2]!.payload)).toMatchObject({
    evidence,
    sha256: expect.stringMatching(/^[0-9a-f]{64}$/),
  })
  expect(breaksInWords(await verdictOnStored((await programme()).id), 10)).toEqual([])
})

test('where one of them cannot be adopted none is, and it is said at each that cannot', async () => {
  await world.must('lead', 'revise-parameter', { programme: world.code, ...LENGTH, reason })
  const before = (await entries()).length
  const refused = await world.as(
    'lead',
    'adopt-from-board',
    given([
      EDGE,
      LENGTH,
      { parameter: 'board-width', value: 'wide', seen: 0 },
      { parameter: 'lead-holes', value: [{ component: 'X1', joints: 3, holeMm: 1.1 }], seen: 0 },
    ]),
  )
  expect(refused).toMatchObject({
    ok: false,
    message: expect.stringMatching(/^Nothing was adopted, for 3 of the 4 cannot be: /),
    fields: {
      'values.board-length': expect.stringMatching(/revised since you opened the page/),
      'values.board-width': expect.stringMatching(/./),
      'values.lead-holes': expect.stringMatching(/./),
    },
  })
  expect(Object.keys(refused.ok ? {} : refused.fields)).toHaveLength(3)
  expect(await entries()).toHaveLength(before)
  expect(await revisions()).toHaveLength(1)
})

test('the value that it has already is no revision', async () => {
  await world.must('lead', 'adopt-from-board', given([LENGTH]))
  expect(await world.as('lead', 'adopt-from-board', given([{ ...LENGTH, seen: 1 }]))).toMatchObject({
    ok: false,
    fields: { 'values.board-length': 'This is the value it has already.' },
  })
  expect(
    await world.as('lead', 'adopt-from-board', given([{ ...LENGTH, value: 170, seen: 1 }])),
  ).toMatchObject({
    ok: true,
  })
  expect(await revisions()).toMatchObject([{ number: 1 }, { number: 2, value: 170 }])
})

test('a person adopts what is theirs to revise, and nothing where one value is not', async () => {
  const others = { parameter: 'flux-tank-volume', value: 20, seen: 0 }
  expect(await world.as('secondDesign', 'adopt-from-board', given([LENGTH, others]))).toMatchObject({
    ok: false,
    message: expect.stringMatching(/belongs to production/),
  })
  expect(await revisions()).toEqual([])
  expect(await world.as('secondDesign', 'adopt-from-board', given([LENGTH]))).toMatchObject({ ok: true })
})

test('nothing ticked, a value twice, a parameter that is none, and evidence that holds no board are refused', async () => {
  const refused = async (input: object) => {
    const outcome = await world.asUnparsed('lead', 'adopt-from-board', input)
    return outcome.ok ? 'taken' : outcome.message
  }
  expect(await refused(given([]))).toMatch(/Tick the values/)
  expect(await refused(given([LENGTH, LENGTH]))).toMatch(/named twice/)
  expect(await refused(given([{ ...LENGTH, parameter: 'constructor' }]))).toMatch(/no such parameter/)
  const { result } = await world.must('design', 'attach-evidence', {
    programme: world.code,
    item: 'programme-frame',
    kind: 'drawing',
    note: '',
    what: { url: 'https://example.invalid/board' },
  })
  expect(await refused(given([LENGTH], { evidence: result.evidence }))).toMatch(/or is a link/)
  await world.must('design', 'withdraw-evidence', {
    programme: world.code,
    evidence,
    reason: 'Another board.',
  })
  expect(await refused(given([LENGTH]))).toMatch(/not attached any more/)
  expect(await revisions()).toEqual([])
})
