import { describe, expect, test } from 'vitest'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import {
  leadBendEdition,
  leadsFormedHere,
  moistureSensitiveParts,
} from '@/shared/plan/parameters/control-handling'
import type { RecordOf } from '@/shared/records/record-kinds'
import { leadFormingRule } from '@/shared/rules/control/lead-forming'
import { moistureFloorLifeRule } from '@/shared/rules/control/moisture-floor-life'
import { findingOf, set } from '../facts-builder'
import { holes } from '../record-builder'

describe('lead forming', () => {
  const check = (over: Partial<RecordOf<'lead-forming'>> = {}): RecordOf<'lead-forming'> => ({
    id: 'f1',
    checkedOn: '2026-02-03',
    worker: 'A. Ward',
    part: 'R1',
    leadDiameterMm: 0.6,
    insideRadiusMm: 1.4,
    straightMm: 2,
    marked: false,
    tool: undefined,
    ...over,
  })
  const judged = (row: RecordOf<'lead-forming'>, values: Parameters<typeof findingOf>[1] = {}) =>
    findingOf(leadFormingRule, { records: { 'lead-forming': [row] }, ...values }).verdict

  // TM 9-254, page 4-42: radius of two diameters, 1/16 inch (1.5875 mm) clear: 1.2 mm and 1.5875 mm for 0.6 mm.
  test('the strictest of the editions: two diameters, 1/16 inch', () => {
    expect(judged(check())).toBe('meets')
    expect(judged(check({ insideRadiusMm: 1.2 }))).toBe('marginal')
    expect(judged(check({ insideRadiusMm: 1.19 }))).toBe('fails')
    expect(judged(check({ straightMm: 1.58 }))).toBe('fails')
  })
  // J-STD-001 / IPC-A-610: one diameter below 0.8 mm; 0.8 mm straight at least.
  test('the edition by size asks one diameter of a thin lead', () => {
    const values = { values: [set(leadBendEdition, 'ipc-by-size')] }
    expect(judged(check({ insideRadiusMm: 0.7, straightMm: 0.9 }), values)).toBe('meets')
    expect(judged(check({ insideRadiusMm: 0.59 }), values)).toBe('fails')
  })
  test('a marked lead fails whatever its bend', () => {
    expect(judged(check({ marked: true }))).toBe('fails')
  })
  test('where leads are bent here a check is asked for; where none are, nothing is', () => {
    const asked = (...values: ReturnType<typeof set>[]) => findingOf(leadFormingRule, { values }).verdict
    const leads = set(leadHoles, [{ ...holes(12), onGrid: false }])
    expect(asked()).toBe('undetermined')
    expect(asked(leads)).toBe('undetermined')
    expect(asked(leads, set(leadsFormedHere, false))).toBe('not applicable')
    expect(asked(leads, set(leadsFormedHere, true))).toBe('undetermined')
  })
  // IPC-A-610 and J-STD-001, lead bend table: "from 0.8 to 1.2 mm" one and a half diameters.
  test('a lead of exactly 0.8 mm bends over 1.2 mm', () => {
    const values = { values: [set(leadBendEdition, 'ipc-by-size')] }
    const lead = { leadDiameterMm: 0.8, straightMm: 1 }
    expect(judged(check({ ...lead, insideRadiusMm: 1.19 }), values)).toBe('fails')
    expect(judged(check({ ...lead, insideRadiusMm: 1.3 }), values)).toBe('meets')
  })
})

describe('moisture', () => {
  const exposure = (over: Partial<RecordOf<'moisture-exposure'>> = {}): RecordOf<'moisture-exposure'> => ({
    id: 'm1',
    openedOn: '2026-02-03',
    part: 'U1',
    level: '3',
    hoursOpen: 100,
    hottestC: 25,
    dampestPct: 50,
    baked: 'no',
    bake: undefined,
    labelHours: undefined,
    ...over,
  })
  const judged = (over: Partial<RecordOf<'moisture-exposure'>>) =>
    findingOf(moistureFloorLifeRule, { records: { 'moisture-exposure': [exposure(over)] } }).verdict
  // IPC/JEDEC J-STD-033: level 3 168 h, level 4 72 h at 30 °C and 60 % at most; level 6 baked before use.
  test.each([
    [{}, 'meets'],
    [{ hoursOpen: 168 }, 'marginal'],
    [{ hoursOpen: 168.5 }, 'fails'],
    [{ level: '4' }, 'fails'],
    [{ dampestPct: 61 }, 'undetermined'],
    [{ hottestC: 31 }, 'undetermined'],
    [{ hottestC: 31, hoursOpen: 200 }, 'fails'],
    [{ level: '1', hoursOpen: 50_000 }, 'meets'],
    [{ level: '1', dampestPct: 86 }, 'undetermined'],
    [{ level: '6' }, 'fails'],
    [{ level: '6', baked: 'yes' }, 'undetermined'],
    [{ level: '6', baked: 'yes', labelHours: 6, hoursOpen: 4 }, 'meets'],
    [{ level: '6', baked: 'yes', labelHours: 6, hoursOpen: 7 }, 'fails'],
  ] as const)('%o: %s', (over, verdict) => expect(judged(over)).toBe(verdict))
  test('asked once such parts exist; surface-mount joints ask whether they do', () => {
    const asked = (...values: ReturnType<typeof set>[]) =>
      findingOf(moistureFloorLifeRule, { values }).verdict
    expect(asked()).toBe('undetermined')
    expect(asked(set(surfaceMountJoints, 0))).toBe('not applicable')
    expect(asked(set(surfaceMountJoints, 400))).toBe('undetermined')
    expect(asked(set(surfaceMountJoints, 400), set(moistureSensitiveParts, false))).toBe('not applicable')
    expect(asked(set(moistureSensitiveParts, true))).toBe('undetermined')
  })
})
