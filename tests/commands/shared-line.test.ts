import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { InputOf } from '@/lib/commands/all-commands'
import { judgedProgramme } from '@/lib/programme/judged'
import { readMachineLog } from '@/lib/queries/works/machine-log'
import { readMachineRecord, readMachineRecords } from '@/lib/queries/works/machine-records'
import { specifiedCharting } from '@/shared/charts/log-chart'
import { fluxDensityTarget, fluxDensityTolerance } from '@/shared/plan/parameters/control-flux'
import { openWorld, programmeInput, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

/*
 * One line, on which two programmes run on days of their own; a third states another line. What is read on the
 * line's fluxer is entered once.
 */

let db: FreshDatabase
let world: World
let codes: { monday: string; tuesday: string; elsewhere: string }
beforeAll(async () => {
  db = await freshDatabase()
  world = await openWorld()
  codes = { monday: world.code, tuesday: `${world.code}-B`, elsewhere: `${world.code}-C` }
  await world.must('production', 'open-line', { code: 'Line 1', name: 'Wave line' })
  await world.must('production', 'open-line', { code: 'Line 2', name: 'The other line' })
  await world.must('production', 'open-machine', { line: 'Line 1', code: 'Fluxer 1', kind: 'fluxer' })
  await world.must('production', 'open-log', {
    machine: 'Fluxer 1',
    code: 'FLUX-1',
    characteristic: 'flux-density',
    instrument: null,
  })
  for (const code of [codes.tuesday, codes.elsewhere]) await openBeside(code)
  await runOn(codes.monday, 'Line 1', '2026-03-02')
  await runOn(codes.tuesday, 'Line 1', '2026-03-03')
  await runOn(codes.elsewhere, 'Line 2', '2026-03-02')
})
afterAll(() => db.drop())

async function openBeside(code: string): Promise<void> {
  await world.must('lead', 'open-programme', programmeInput(code))
  const { email } = await db.client.person.findUniqueOrThrow({ where: { id: world.person.production } })
  await world.must('lead', 'invite-member', { programme: code, email, department: 'production' })
}

async function runOn(programme: string, line: string, doneOn: string): Promise<void> {
  for (const [parameter, value] of [
    [fluxDensityTarget.key, 0.81],
    [fluxDensityTolerance.key, 0.01],
    ['soldering-process', 'wave'],
    ['flux-control-method', 'density'],
    ['flux-reference-temperature', 25],
    ['flux-density-coefficient', 0.00085],
    ['flux-solids', 18],
    ['thinner-density', 0.785],
    ['flux-tank-volume', 20],
  ] as const)
    await world.must('production', 'revise-parameter', {
      programme,
      parameter,
      value,
      seen: 0,
      reason: 'A test',
    })
  await world.must('production', 'state-line', { programme, line })
  await world.must('production', 'add-record', {
    programme,
    kind: 'soldering-run',
    rows: [{ doneOn, worker: 'A', skill: 'machine-soldering', assemblies: 5, line }],
  })
}

const read = (at: string, densityGPerMl: number) =>
  world.must('production', 'add-readings', {
    machine: 'Fluxer 1',
    log: 'FLUX-1',
    readings: {
      count: 1,
      columns: { at: [Date.parse(at)], densityGPerMl: [densityGPerMl], temperatureC: [25] },
    },
    file: null,
    mapping: null,
  })

const logged = async (code: string) => {
  const judged = await judgedProgramme(code)
  const { count = 0, columns = {} } =
    judged?.state.facts.records.logs.get('flux-density')?.[0]?.readings ?? {}
  return {
    count,
    values: columns['densityGPerMl'] ?? [],
    found: judged?.judgement.findings.get('flux-density'),
  }
}

describe('a reading of a shared machine', () => {
  test('turns the finding of the programme that ran that day, and of no other', async () => {
    await read('2026-03-02T07:00:00Z', 0.811)
    await read('2026-03-03T07:00:00Z', 0.809)
    const [monday, tuesday] = [await judgedProgramme(codes.monday), await judgedProgramme(codes.tuesday)]
    expect(monday?.judgement.findings.get('flux-density')).not.toMatchObject({ verdict: 'fails' })
    await read('2026-03-03T13:00:00Z', 0.85)
    expect((await logged(codes.tuesday)).found).toMatchObject({ verdict: 'fails' })
    expect((await logged(codes.monday)).found).toEqual(monday?.judgement.findings.get('flux-density'))
    expect((await logged(codes.elsewhere)).count).toBe(0)
    expect(tuesday?.judgement.findings.get('flux-density')).not.toMatchObject({ verdict: 'fails' })
  })

  test('counts for the day of a run only, or is the newest before where the day has none', async () => {
    expect((await logged(codes.monday)).values).toEqual([0.811])
    expect((await logged(codes.tuesday)).values).toEqual([0.809, 0.85])
    await world.must('production', 'add-record', {
      programme: codes.monday,
      kind: 'soldering-run',
      rows: [
        { doneOn: '2026-03-05', worker: 'A', skill: 'machine-soldering', assemblies: 5, line: 'Fluxer 1' },
      ],
    })
    expect((await logged(codes.monday)).values).toEqual([0.811, 0.85])
  })

  test('leaves the judgement of a programme on another line as it was kept', async () => {
    const before = await judgedProgramme(codes.elsewhere)
    await read('2026-03-06T07:00:00Z', 0.81)
    expect(await judgedProgramme(codes.elsewhere)).toBe(before)
    expect(await judgedProgramme(codes.monday)).not.toBe(undefined)
  })
})

describe('what was found of a signal', () => {
  test('is answered once, at the machine, and read by every programme there', async () => {
    await world.must('production', 'add-record', {
      works: { kind: 'machine', code: 'Fluxer 1' },
      kind: 'signal-answer',
      rows: [
        {
          log: 'FLUX-1',
          chartRule: 'outside-window',
          readingAt: '2026-03-03T13:00:00Z',
          answer: 'cause-removed',
          cause: 'The tank was topped up from the wrong drum.',
          action: 'Emptied and filled anew.',
          by: 'A',
          on: '2026-03-03',
        },
      ],
    })
    for (const code of [codes.monday, codes.tuesday]) {
      const answers = (await judgedProgramme(code))?.state.facts.records.byKind.get('signal-answer')
      expect(answers).toMatchObject([{ log: 'FLUX-1', cause: 'The tank was topped up from the wrong drum.' }])
    }
    const elsewhere = (await judgedProgramme(codes.elsewhere))?.state.facts.records.byKind.get(
      'signal-answer',
    )
    expect(elsewhere ?? []).toEqual([])
  })

  test('is not recorded in a programme any more', async () => {
    const refused = await world.as('production', 'add-record', {
      programme: codes.monday,
      kind: 'signal-answer',
      rows: [],
    })
    expect(refused).toMatchObject({ ok: false })
  })
})

describe('a lasting change of a machine', () => {
  const reset: InputOf<'add-record'> = {
    works: { kind: 'machine', code: 'Fluxer 1' },
    kind: 'chart-reset',
    rows: [{ log: 'FLUX-1', startsOn: '2026-03-03', name: 'New nozzle' }],
  }
  const resetsOf = async (code: string) =>
    (await judgedProgramme(code))?.state.facts.records.byKind.get('chart-reset') ?? []
  const phasesOf = async (code: string) => {
    const { facts } = (await judgedProgramme(code))!.state
    return specifiedCharting(facts.records.logs.get('flux-density')![0]!, facts).choice.phases
  }

  test('starts the charts of its log afresh in every programme there, once it is recorded', async () => {
    expect(await world.as('design', 'add-record', reset)).toMatchObject({ ok: false })
    const view = (await readMachineLog('Fluxer 1', 'FLUX-1'))!
    await world.must('production', 'add-record', reset)
    for (const code of [codes.monday, codes.tuesday])
      expect(await phasesOf(code)).toEqual([{ startsOn: '2026-03-03', name: 'New nozzle' }])
    expect(await resetsOf(codes.elsewhere)).toEqual([])
    const [recorded] = await readMachineRecords(view.machine.id, 'FLUX-1').then((all) =>
      all.filter(({ kind }) => kind === 'chart-reset'),
    )
    expect(recorded).toMatchObject({
      values: { startsOn: '2026-03-03' },
      history: { recordedIn: { kind: 'machine', code: 'Fluxer 1' }, withdrawn: null, corrections: [] },
    })
  })

  test('is corrected and withdrawn at the machine', async () => {
    const works = { kind: 'machine', code: 'Fluxer 1' } as const
    const record = (await resetsOf(codes.monday))[0]!.id
    await world.must('production', 'correct-record', {
      works,
      record,
      seen: 0,
      values: { log: 'FLUX-1', startsOn: '2026-03-04', name: 'New nozzle' },
      reason: 'A day late.',
    })
    expect(await phasesOf(codes.monday)).toEqual([{ startsOn: '2026-03-04', name: 'New nozzle' }])
    expect(await readMachineRecord('Fluxer 1', record)).toMatchObject({
      values: { startsOn: '2026-03-04' },
      history: { corrections: [{ reason: 'A day late.' }] },
    })
    await world.must('production', 'withdraw-record', { works, record, reason: 'The old one was put back.' })
    expect(await phasesOf(codes.monday)).toEqual([])
    expect(await readMachineRecord('Fluxer 2', record)).toBeUndefined()
  })
})

test('a shared log, and what was answered to its signal, can be spoken about in a programme that reads it', async () => {
  const { id } = await db.client.record.findFirstOrThrow({ where: { kind: 'signal-answer' } })
  const about = (kind: 'log' | 'record', key: string, programme: string) =>
    world.as('production', 'open-nonconformity', {
      programme,
      title: 'Flux too heavy',
      found: 'The density lies above the window.',
      foundOn: '2026-03-03',
      owner: 'production',
      place: { joint: '', part: '', lot: '', assembly: '', line: '' },
      source: { kind, key },
    })
  expect(await about('log', 'FLUX-1', codes.monday)).toMatchObject({ ok: true })
  expect(await about('record', `signal-answer/${id}`, codes.monday)).toMatchObject({ ok: true })
  expect(await about('log', 'FLUX-1', codes.elsewhere)).toMatchObject({ ok: false })
})

test('a line that is left goes on counting for the days on which the programme ran there', async () => {
  const before = (await logged(codes.tuesday)).values
  await world.must('production', 'leave-line', { programme: codes.tuesday, line: 'Line 1', reason: 'Moved.' })
  expect((await logged(codes.tuesday)).values).toEqual(before)
})
