import { afterAll, beforeAll, expect, test } from 'vitest'
import { database } from '@/lib/db/client'
import { programmeInput, openWorld, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

let db: FreshDatabase
let world: World
beforeAll(async () => {
  db = await freshDatabase()
  world = await openWorld()
})
afterAll(() => db.drop())

const reason = 'As the customer wants it.'

test('a programme starts with the values, limits and plan of another, and with nothing that was shown or signed there', async () => {
  const programme = world.code
  await world.must('design', 'revise-parameter', {
    programme,
    parameter: 'board-thickness',
    value: 2.4,
    seen: 0,
    reason,
  })
  await world.must('design', 'state-requirement', {
    programme,
    limit: 'magnification-most',
    authority: 'customer',
    document: 'Order 7',
    value: 5,
    reason,
  })
  await world.must('design', 'attach-evidence', {
    programme,
    item: 'laminate',
    kind: 'drawing',
    what: { url: 'https://example.invalid/drawing' },
  })
  await world.must('lead', 'add-item', {
    programme,
    item: {
      stage: 'control',
      title: 'Start of the shift',
      asks: 'From when on do readings count?',
      owner: 'production',
      approvers: ['quality'],
      evidence: '',
    },
  })
  await world.must('design', 'propose-set-aside', { programme, item: 'irons', reason: 'No bright tin.' })
  await world.must('quality', 'decide-set-aside', { programme, item: 'irons', agree: true, comment: '' })

  const opened = { ...programmeInput('TAKEN-1'), department: 'design' as const, from: programme }
  await world.must('secondDesign', 'open-programme', opened)
  const { id } = await database().programme.findUniqueOrThrow({ where: { code: 'TAKEN-1' } })
  const own = { where: { programmeId: id } }
  const thickness = await database().revision.findFirstOrThrow({
    where: { programmeId: id, parameter: 'board-thickness' },
  })
  expect(thickness).toMatchObject({
    value: 2.4,
    number: 1,
    reason: `Taken over from ${programme}, revision 1 there.`,
    authorId: world.person.secondDesign,
  })
  expect(await database().requirement.findMany(own)).toMatchObject([
    { limit: 'magnification-most', value: 5, document: 'Order 7', reason: expect.stringContaining(reason) },
  ])
  const plan = await database().planItem.findMany(own)
  expect(plan.filter(({ added }) => added !== null)).toMatchObject([
    { added: { title: 'Start of the shift' } },
  ])
  expect(plan.find(({ key }) => key === 'irons')?.setAside).toMatchObject({ agreed: null })
  expect(await database().evidence.count({ where: { trailId: id } })).toBe(0)
  expect(await database().approval.count(own)).toBe(0)
})

test('one that may not be read is refused as if there were none', async () => {
  const opened = { ...programmeInput('TAKEN-2'), department: 'design' as const }
  const refused = await world.as('stranger', 'open-programme', { ...opened, from: world.code })
  const unknown = await world.as('stranger', 'open-programme', { ...opened, from: 'NONE-1' })
  expect(refused).toMatchObject({ ok: false, fields: { from: expect.any(String) } })
  const named = (outcome: typeof refused) =>
    outcome.ok ? '' : outcome.message.replace(world.code, 'X').replace('NONE-1', 'X')
  expect(named(refused)).toBe(named(unknown))
})
