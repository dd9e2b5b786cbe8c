import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { placeAddress } from '@/app/place-address'
import { COMMAND_NAMES, FACES, type CommandName, type RecordOf } from '@/shared/commands/all-faces'
import { BESIDE_THE_DOOR } from '@/shared/commands/beside-the-door'
import { wallTimeOf } from '@/shared/quantity/works-clock'
import { entryLabel, entryTold } from '@/shared/commands/entry-told'
import type { AnyEntryFace } from '@/shared/commands/face'
import { anyAccepted } from '@/tests/laws/any-accepted'

const told = <N extends CommandName>(command: N, record: RecordOf<N>) =>
  entryTold({ command, payload: JSON.stringify(record) })

describe('what was set is told with its unit, and what it was before', () => {
  test('of a single value', () => {
    const record = { parameter: 'board-thickness', revision: 2, value: 2.4, before: 1.6, reason: 'Stiffer.' }
    expect(told('revise-parameter', record)).toEqual({
      subject: 'Board thickness, revision 2',
      what: '1.6 mm → 2.4 mm',
      words: 'Stiffer.',
      leads: { kind: 'parameter', parameter: 'board-thickness' },
    })
  })
  test('of a choice, in the words it is chosen by; of a first value, alone', () => {
    const record = { parameter: 'alloy-family', revision: 1, value: 'tin-lead', before: null, reason: 'R' }
    expect(told('revise-parameter', record)?.what).toBe('Tin-lead')
  })
  test('of a table, cell by cell while few differ', () => {
    const row = { step: 'Wave', kind: 'wave', temperatureC: 250, seconds: 3, times: 1 }
    const record = {
      parameter: 'solder-exposures',
      revision: 2,
      value: [{ ...row, temperatureC: 255 }],
      before: [row],
      reason: 'R',
    }
    expect(told('revise-parameter', record)?.what).toMatch(/^row 1 \(Wave\), .+: 250 °C → 255 °C$/)
  })
  test('of a limit, with its direction', () => {
    const record = {
      limit: 'ionic-residue-most',
      authority: 'customer',
      document: 'Order 7',
      clause: '4.2',
      value: 1,
      looserThanDefault: false,
      reason: 'R',
    }
    expect(told('state-requirement', record)?.what).toBe('at most 1 µg/cm², by Order 7, 4.2 (customer)')
  })
  test('of a lot, what was decided before', () => {
    const record = { lot: 'B-1', part: 'board', verdict: 'reject', before: 'accept', reason: 'R' }
    expect(told('dispose-lot', record)).toMatchObject({ subject: 'lot B-1, board', what: 'accept → reject' })
  })
})

describe('an entry that this version cannot tell', () => {
  test('of a command it does not know goes by its name, and is left as it stands', () => {
    expect(entryLabel('melt-down')).toBe('melt-down')
    expect(entryTold({ command: 'melt-down', payload: '{"item":"x"}' })).toBeUndefined()
    expect(entryTold({ command: 'toString', payload: '{}' })).toBeUndefined()
  })
  test.each([
    ['in a form it does not know', '{"action":"three"}'],
    ['that is no object', '7'],
    ['that was cut off', '{"action":3,"it'],
  ])('%s is left as it stands', (_what, payload) => {
    expect(entryLabel('accept-answer')).toBe('Accepted an answer')
    expect(entryTold({ command: 'accept-answer', payload })).toBeUndefined()
  })
})

describe('an entry of an earlier version is told', () => {
  test('of a programme opened before there were lessons', () => {
    const payload =
      '{"code":"LX-7","department":"design","lead":"A","programmeId":"p","title":"Board","values":{"service-years":20}}'
    expect(entryTold({ command: 'open-programme', payload })).toMatchObject({
      subject: 'LX-7, Board',
      what: expect.stringContaining('20 years'),
    })
  })
  test('with its instants in UTC, or as whoever shows it tells them', () => {
    const record = {
      log: 'L-1',
      characteristic: 'flux-density',
      first: '2026-07-01T22:30:00.000Z',
      last: '2026-07-01T23:30:00.000Z',
      readings: 2,
    }
    expect(told('add-readings', record)?.what).toBe(
      '2 readings, 2026-07-01 22:30 UTC to 2026-07-01 23:30 UTC',
    )
    const entry = { command: 'add-readings', payload: JSON.stringify(record) }
    // Europe/Berlin is two hours ahead of UTC in summer (IANA time zone database, rule EU): half past midnight.
    const berlin = (instant: string) => wallTimeOf(Date.parse(instant), 'Europe/Berlin')
    expect(entryTold(entry, berlin)?.what).toBe('2 readings, 2026-07-02T00:30:00 to 2026-07-02T01:30:00')
  })
  test('of a parameter that is no longer specified, by its key', () => {
    const record = { parameter: 'pot-colour', revision: 1, value: ['red'], before: null, reason: 'R' }
    expect(told('revise-parameter', record)).toMatchObject({
      subject: 'pot-colour, revision 1',
      what: '1 row',
    })
  })
})

describe('law: whatever a command may have recorded is told in a sentence, and leads to an address', () => {
  const faces: readonly (readonly [string, AnyEntryFace])[] = [
    ...Object.entries(FACES),
    ...Object.entries(BESIDE_THE_DOOR),
  ]
  test.each(faces)('%s', (command, face) => {
    fc.assert(
      fc.property(anyAccepted(face.record), (record) => {
        const said = entryTold({ command, payload: JSON.stringify(record) })
        expect(said).toBeDefined()
        expect(typeof said?.subject).toBe('string')
        expect(
          [said?.what, said?.words].every((text) => text === undefined || typeof text === 'string'),
        ).toBe(true)
        expect(said && placeAddress('LX-41', said.leads)).toMatch(/^\//)
      }),
      { numRuns: 60 },
    )
  })
  test('is said of every command', () => expect(faces.length).toBeGreaterThan(COMMAND_NAMES.length))
})
