import { describe, expect, test } from 'vitest'
import { moistureSensitiveParts } from '@/shared/plan/parameters/control-handling'
import { partsList } from '@/shared/plan/parameters/parts-list'
import type { MoistureLevel } from '@/shared/materials/moisture-sensitivity'
import type { RecordOf } from '@/shared/records/record-kinds'
import { partsMoisture } from '@/shared/rules/control/parts-moisture'
import { findingOf, set, type SetValue } from '../facts-builder'
import { listedPart, listRow } from '../specification/part-rows'

const exposure = (level: MoistureLevel): RecordOf<'moisture-exposure'> => ({
  id: 'e',
  openedOn: '2026-02-02',
  part: 'U-A',
  level,
  hoursOpen: 10,
  hottestC: 25,
  dampestPct: 50,
  baked: 'no',
  bake: undefined,
  labelHours: undefined,
})
const judged = (
  moistureLevel: MoistureLevel | undefined,
  values: readonly SetValue[] = [],
  recorded: readonly MoistureLevel[] = [],
) =>
  findingOf(partsMoisture, {
    values: [set(partsList, [listRow('U1', 'U-A')]), ...values],
    parts: [listedPart('U-A', { moistureLevel })],
    records: { 'moisture-exposure': recorded.map(exposure) },
  }).verdict

describe('moisture levels of the parts list', () => {
  // J-STD-020 (from memory): level 1 has no limit on an ordinary floor; from level 2 on a part is handled by its level.
  test.each([
    [undefined, undefined, 'not applicable'],
    ['1', undefined, 'not applicable'],
    ['3', undefined, 'undetermined'],
    ['3', false, 'fails'],
    ['3', true, 'meets'],
  ] as const)('level %s, sensitive parts specified %s: %s', (level, sensitive, verdict) => {
    const values = sensitive === undefined ? [] : [set(moistureSensitiveParts, sensitive)]
    expect(judged(level, values)).toBe(verdict)
  })
  test.each([
    ['3', 'meets'],
    ['2', 'fails'],
    ['4', 'fails'],
  ] as const)('an exposure of a level 3 part counted by level %s: %s', (recorded, verdict) => {
    expect(judged('3', [set(moistureSensitiveParts, true)], [recorded])).toBe(verdict)
  })
  test('without a parts list is not applicable', () => {
    expect(findingOf(partsMoisture).verdict).toBe('not applicable')
  })
})
