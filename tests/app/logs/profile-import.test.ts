import { describe, expect, test } from 'vitest'
import {
  isTimedFromStart,
  logFields,
  withInstants,
} from '@/app/works/machines/[machine]/logs/[log]/import/log-fields'
import { parseReadings } from '@/lib/readings/parse-readings'
import type { Readings } from '@/shared/records/readings'

const fields = logFields('PROF-1', 'thermal-profile')
const START = Date.parse('2026-03-04T10:00:00Z')

async function read(
  text: string,
): Promise<{ readings: Readings; mapping: Readonly<Record<string, string>> }> {
  const parsed = await parseReadings(Buffer.from(text), fields)
  if (!parsed.ok) throw new Error(parsed.errors.map(({ message }) => message).join('\n'))
  return parsed
}

describe('a profile as a recorder writes it', () => {
  test('seconds in the first column, a thermocouple a column, whatever the recorder calls them', async () => {
    const { readings, mapping } = await read(
      'Time (s),TC1,TC2,CH3 (°C)\n0,25,25.5,24\n0.5,26,26,24.5\n1,27,26.5,25\n',
    )
    expect(mapping).toEqual({ elapsedS: 'Time (s)', couple1C: 'TC1', couple2C: 'TC2', couple3C: 'CH3 (°C)' })
    expect(isTimedFromStart(readings)).toBe(true)
    expect(withInstants(readings, START)).toMatchObject({
      readings: {
        count: 3,
        columns: { at: [START, START + 500, START + 1000], couple1C: [25, 26, 27], couple3C: [24, 24.5, 25] },
      },
    })
  })
  test('seconds need a start; without one nothing is made up', async () => {
    const { readings } = await read('seconds;TC1\n0;25\n1;26,5\n')
    expect(withInstants(readings, { message: 'Give the date and the time of day.' })).toMatchObject({
      message: expect.stringContaining('When did the pass begin?'),
    })
  })
  test('instants are taken as they are, and seconds beside them are left out', async () => {
    const { readings } = await read(
      'Timestamp,elapsed s,Thermocouple 1\n2026-03-04T10:00:00Z,0,25\n2026-03-04T10:00:01Z,1,26\n',
    )
    expect(isTimedFromStart(readings)).toBe(false)
    expect(withInstants(readings, Number.NaN)).toEqual({
      readings: { count: 2, columns: { at: [START, START + 1000], couple1C: [25, 26] } },
    })
  })
  test('a row without its seconds is refused, and so is a file without any time', async () => {
    const gap = await read('seconds,TC1\n0,25\n,26\n')
    expect(withInstants(gap.readings, START)).toHaveProperty('message')
    const none = await read('TC1,TC2\n25,26\n')
    expect(withInstants(none.readings, START)).toHaveProperty('message')
  })
  test('other logs ask for the instant as before', () => {
    expect(logFields('FLUX-1', 'flux-density').find(({ kind }) => kind === 'instant')?.required).toBe(true)
  })
})
