import { afterAll, beforeAll, expect, test } from 'vitest'
import { readWorksHome } from '@/lib/queries/works/works-home'
import { openWorld, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'
import { statementsOf } from '@/tests/setup/statements-of'

/* The home of the works is read once until somebody records something; what is due follows the clock all the same. */

let db: FreshDatabase
let world: World
beforeAll(async () => {
  db = await freshDatabase()
  world = await openWorld()
  await world.must('production', 'open-line', { code: 'Line 1', name: 'Wave line' })
  await world.must('production', 'open-machine', { line: 'Line 1', code: 'Fluxer 1', kind: 'fluxer' })
  await world.must('production', 'open-log', {
    machine: 'Fluxer 1',
    code: 'FLUX-1',
    characteristic: 'flux-density',
    instrument: null,
    everyH: 4,
  })
})
afterAll(() => db.drop())

const read = (at: string) =>
  world.must('production', 'add-readings', {
    machine: 'Fluxer 1',
    log: 'FLUX-1',
    readings: {
      count: 1,
      columns: { at: [Date.parse(at)], densityGPerMl: [0.81], temperatureC: [25] },
    },
    file: null,
    mapping: null,
  })

const fluxLog = async (now: string) =>
  (await readWorksHome(new Date(now))).lines[0]?.machineStates[0]?.states[0]

test('a reading is on it as soon as it is recorded', async () => {
  expect((await fluxLog('2026-03-02T08:00Z'))?.newest).toBeNull()
  await read('2026-03-02T07:00Z')
  expect((await fluxLog('2026-03-02T08:00Z'))?.newest?.at.toISOString()).toBe('2026-03-02T07:00:00.000Z')
  await read('2026-03-02T07:30Z')
  expect((await fluxLog('2026-03-02T08:00Z'))?.newest?.at.toISOString()).toBe('2026-03-02T07:30:00.000Z')
})

test('as long as nothing is recorded it asks for the ends of the trails alone', async () => {
  await readWorksHome(new Date('2026-03-02T08:00Z'))
  expect(await statementsOf(() => readWorksHome(new Date('2026-03-02T09:00Z')))).toBe(1)
})

test('a reading becomes overdue though nothing is recorded', async () => {
  expect((await fluxLog('2026-03-02T11:29Z'))?.due?.isOverdue).toBe(false)
  expect((await fluxLog('2026-03-02T11:31Z'))?.due?.isOverdue).toBe(true)
})

test('another day is read again', async () => {
  await readWorksHome(new Date('2026-03-02T08:00Z'))
  expect(await statementsOf(() => readWorksHome(new Date('2026-03-03T08:00Z')))).toBeGreaterThan(1)
})
