import { describe, expect, test } from 'vitest'
import { reworkWaiting } from '@/shared/inspection/rework-waiting'
import type { Inspection } from '@/shared/records/inspection'
import type { RecordOf } from '@/shared/records/record-kinds'

/* Which joint waits for what is this project's own decision, with no source outside it. */

const seen = (id: string, inspectedOn: string, defects: Inspection['defects']): Inspection => ({
  id,
  assembly: 'SN-7',
  inspectedOn,
  inspector: 'Quill',
  magnification: 4,
  jointsSeen: 300,
  defects,
  note: '',
})
const mended = (id: string, doneOn: string, joint = 'T1-3'): RecordOf<'rework'> => ({
  id,
  doneOn,
  worker: 'Petra',
  assembly: 'SN-7',
  joint,
  defect: 'bridge',
  heats: 1,
  minutes: 5,
  material: undefined,
})
const again = (
  id: string,
  inspectedOn: string,
  outcome: RecordOf<'re-inspection'>['outcome'],
): RecordOf<'re-inspection'> => ({
  id,
  inspectedOn,
  inspector: 'Quill',
  assembly: 'sn-7',
  joint: 't1-3',
  outcome,
  magnification: 4,
  note: undefined,
})
const BRIDGE = { kind: 'bridge' as const, joint: 'T1-3', xMm: 14, yMm: 48, note: 'to T1-4' }

describe('a joint from the bench to the rework desk and back', () => {
  test('found: it waits for rework, with kind, place and note', () => {
    const { forRework, forInspection } = reworkWaiting([seen('1', '2026-02-01', [BRIDGE])], [], [])
    expect(forRework).toMatchObject([
      { assembly: 'SN-7', joint: 'T1-3', kinds: ['bridge'], xMm: 14, note: 'to T1-4', inspection: '1' },
    ])
    expect(forInspection).toEqual([])
  })

  test('that an electrical test found waits like any other, until it is reworked and seen sound', () => {
    const failed: RecordOf<'electrical-test'> = {
      id: '1',
      testedOn: '2026-02-01',
      assembly: 'SN-7',
      tested: 1,
      passedFirst: 0,
      jointFailures: 1,
      defect: 'cold joint',
      joint: 'T1-3',
      cause: undefined,
    }
    const { forRework } = reworkWaiting([], [], [], [failed])
    expect(forRework).toMatchObject([{ joint: 'T1-3', kinds: ['cold joint'], foundBy: 'electrical test' }])
    expect(reworkWaiting([], [mended('2', '2026-02-02')], [], [failed]).forInspection).toHaveLength(1)
    expect(
      reworkWaiting([], [mended('2', '2026-02-02')], [again('3', '2026-02-03', 'sound')], [failed]),
    ).toEqual({ forRework: [], forInspection: [] })
    expect(reworkWaiting([], [], [], [{ ...failed, joint: undefined }]).forRework).toEqual([])
  })

  test('two kinds on one joint are one joint', () => {
    const { forRework } = reworkWaiting(
      [seen('1', '2026-02-01', [BRIDGE, { kind: 'icicle', joint: 'T1-3' }])],
      [],
      [],
    )
    expect(forRework).toHaveLength(1)
    expect(forRework[0]?.kinds).toEqual(['bridge', 'icicle'])
  })

  test('reworked: it waits for re-inspection', () => {
    const { forRework, forInspection } = reworkWaiting(
      [seen('1', '2026-02-01', [BRIDGE])],
      [mended('2', '2026-02-01')],
      [],
    )
    expect(forRework).toEqual([])
    expect(forInspection).toMatchObject([{ joint: 'T1-3', reworked: { by: 'Petra', on: '2026-02-01' } }])
  })

  test('sound: it waits for nothing, however its name was typed', () => {
    expect(
      reworkWaiting(
        [seen('1', '2026-02-01', [BRIDGE])],
        [mended('2', '2026-02-01')],
        [again('3', '2026-02-02', 'sound')],
      ),
    ).toEqual({ forRework: [], forInspection: [] })
  })

  test('still at fault: it waits for rework again, with what is at fault now', () => {
    const { forRework, forInspection } = reworkWaiting(
      [seen('1', '2026-02-01', [BRIDGE])],
      [mended('2', '2026-02-01')],
      [again('3', '2026-02-02', 'lifted land')],
    )
    expect(forInspection).toEqual([])
    expect(forRework).toMatchObject([{ joint: 't1-3', kinds: ['lifted land'], foundOn: '2026-02-02' }])
  })

  test('a look at the whole assembly afterwards ends no waiting: it does not say which joints it saw', () => {
    const { forInspection } = reworkWaiting(
      [seen('1', '2026-02-01', [BRIDGE]), seen('3', '2026-02-03', [])],
      [mended('2', '2026-02-01')],
      [],
    )
    expect(forInspection).toHaveLength(1)
  })

  test('of one day, what was recorded first came first', () => {
    const { forRework } = reworkWaiting([seen('5', '2026-02-01', [BRIDGE])], [mended('2', '2026-02-01')], [])
    expect(forRework).toHaveLength(1)
  })

  test('rework for a change of design waits for nothing', () => {
    expect(reworkWaiting([], [mended('2', '2026-02-01', 'R9-1')], [])).toEqual({
      forRework: [],
      forInspection: [],
    })
  })
})
