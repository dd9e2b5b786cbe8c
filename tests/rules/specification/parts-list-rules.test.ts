import { describe, expect, test } from 'vitest'
import { leadFinishes } from '@/shared/plan/parameters/finishes'
import { solderExposures } from '@/shared/plan/parameters/laminate'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { partsList } from '@/shared/plan/parameters/parts-list'
import type { Finding } from '@/shared/rules/finding'
import { partsAgree } from '@/shared/rules/specification/parts-agree'
import { partsDescribed } from '@/shared/rules/specification/parts-described'
import { partsHeat } from '@/shared/rules/specification/parts-heat'
import { partsListCounted } from '@/shared/rules/specification/parts-list-counted'
import { findingOf, set } from '../facts-builder'
import { leadHole } from './lead-hole-rows'
import { listedPart, listRow } from './part-rows'

const list = (...rows: ReturnType<typeof listRow>[]) => set(partsList, rows)

test.each([partsListCounted, partsDescribed, partsAgree, partsHeat])(
  'without a parts list, $id is not applicable',
  (rule) => {
    expect(findingOf(rule).verdict).toBe('not applicable')
  },
)

describe('the count of a parts list', () => {
  // Common practice, no published source: "R1–R40" are forty places, "U8, U9" two; a list has a piece for each.
  test.each([
    ['R1–R40', 40, 'meets'],
    ['R1-R40', 39, 'fails'],
    ['U8, U9', 2, 'meets'],
    ['R1..R3; R7', 4, 'meets'],
    ['R1-C4', 4, 'undetermined'],
    ['R4-R1', 4, 'undetermined'],
    [undefined, 7, 'not applicable'],
  ] as const)('%s for %i pieces: %s', (references, quantity, verdict) => {
    const finding = findingOf(partsListCounted, { values: [list(listRow(references, 'A', { quantity }))] })
    expect(finding.verdict).toBe(verdict)
  })
  test('its remedy is the number of references', () => {
    const finding = findingOf(partsListCounted, { values: [list(listRow('R1-R5', 'A', { quantity: 4 }))] })
    expect(finding.remedy?.cell).toEqual({ parameter: 'parts-list', row: 0, column: 'quantity', value: 5 })
  })
  test('a reference in two rows fails in the second, which names the first', () => {
    const { parts = [] } = findingOf(partsListCounted, {
      values: [list(listRow('R1-R3', 'A', { quantity: 3 }), listRow('r2', 'B'))],
    })
    expect(parts.map(({ verdict }) => verdict)).toEqual(['meets', 'fails'])
    expect(parts[1]?.found).toContain('row 1, A')
    expect(parts[1]?.measured).toEqual({ twice: ['R2'] })
  })
})

describe('what stands of each part at the works', () => {
  // ISO 9001:2015, 8.4.3 (from memory): what is bought is described adequately before it is ordered.
  test.each([
    [undefined, 'undetermined'],
    [{}, 'meets'],
    [{ approved: false }, 'undetermined'],
    [{ withdrawn: true }, 'fails'],
  ] as const)('%o: %s', (over, verdict) => {
    const finding = findingOf(partsDescribed, {
      values: [list(listRow('R1', 'A'))],
      parts: over ? [listedPart('A', {}, over)] : [],
    })
    expect(finding.verdict).toBe(verdict)
    expect(finding.parts).toHaveLength(1)
  })
})

describe('tables beside the parts', () => {
  const resistor = listedPart('A', { leadShape: 'round', leadMm: 0.6, coating: 'tin-matte', coatingUm: 8 })
  const rows = [list(listRow('R1-R5', 'A', { quantity: 5 }))]
  const failing = ({ parts = [] }: Finding) =>
    parts.filter(({ verdict }) => verdict === 'fails').map(({ about, measured }) => ({ about, measured }))

  // Common practice, no published source: five pieces of two leads are ten joints.
  test('that say the same meet', () => {
    const finding = findingOf(partsAgree, {
      values: [...rows, set(leadHoles, [leadHole({ component: 'R1–R5', joints: 10, leadMm: 0.6 })])],
      parts: [resistor],
    })
    expect(finding.verdict).toBe('meets')
  })
  test('another lead diameter is a finding with both values', () => {
    const finding = findingOf(partsAgree, {
      values: [...rows, set(leadHoles, [leadHole({ component: 'R1–R5', joints: 10, leadMm: 0.65 })])],
      parts: [resistor],
    })
    expect(failing(finding)).toEqual([
      {
        about: { table: 'hole table', component: 'R1–R5', part: 'A', column: 'leadMm' },
        measured: { typed: { value: 0.65, unit: 'mm' }, ofPart: { value: 0.6, unit: 'mm' } },
      },
    ])
  })
  test('another coating, and other joints, are findings of their own', () => {
    const finding = findingOf(partsAgree, {
      values: [
        ...rows,
        set(leadHoles, [leadHole({ component: 'R1-R3', joints: 8, leadMm: 0.6 })]),
        set(leadFinishes, [
          { component: 'A', base: 'copper', barrier: 'none', coating: 'gold', coatingUm: 8 } as never,
        ]),
      ],
      parts: [resistor],
    })
    expect(failing(finding).map(({ measured }) => measured)).toEqual([
      { typed: 'gold', ofPart: 'tin-matte' },
      { typed: { value: 8, unit: 'joints' }, ofParts: { value: 6, unit: 'joints' } },
    ])
  })
  test('a component whose rows are two is counted over both', () => {
    const finding = findingOf(partsAgree, {
      values: [
        list(listRow('J1', 'J')),
        set(leadHoles, [
          leadHole({ component: 'J1', joints: 38 }),
          leadHole({ component: 'J1', joints: 2, holeMm: 1.4 }),
        ]),
      ],
      parts: [listedPart('J', { kind: 'connector', leads: 40 })],
    })
    expect(finding.parts?.find(({ subject }) => subject === 'J1, joints')?.verdict).toBe('meets')
  })
  test('what the list does not know is not compared', () => {
    const finding = findingOf(partsAgree, {
      values: [...rows, set(leadHoles, [leadHole({ component: 'R1–R6', leadMm: 0.65 })])],
      parts: [resistor],
    })
    expect(finding.verdict).toBe('not applicable')
  })
  // Common practice, no published source: a leaded part has a hole for each lead, a part for the surface has none.
  test.each([
    ['R1-R3', ['R4', 'R5']],
    ['R1-R5', undefined],
    ['A', undefined],
  ] as const)('holes of %s leave %o of R1–R5 without one', (component, missing) => {
    const finding = findingOf(partsAgree, {
      values: [...rows, set(leadHoles, [leadHole({ component, joints: 10, leadMm: 0.6 })])],
      parts: [listedPart('A', { leadShape: 'round', leadMm: 0.6 })],
    })
    const told = finding.parts?.find(({ measured }) => measured && 'missing' in measured)
    expect(told && { verdict: told.verdict, measured: told.measured }).toEqual(
      missing && { verdict: 'undetermined', measured: { missing } },
    )
  })
  test('a part without a lead for a hole, and a board without a hole table, are not asked', () => {
    const asked = (part: object, holes: readonly ReturnType<typeof set>[]) =>
      findingOf(partsAgree, { values: [...rows, ...holes], parts: [listedPart('A', part)] }).parts ?? []
    expect(asked({}, [set(leadHoles, [leadHole({ component: 'J1' })])])).toEqual([])
    expect(asked({ leadShape: 'round', leadMm: 0.6 }, [])).toEqual([])
  })
  test('hand in one table and machine in the other fails', () => {
    const finding = findingOf(partsAgree, {
      values: [
        ...rows,
        set(leadHoles, [leadHole({ component: 'R1-R5', joints: 10, leadMm: 0.6, soldered: 'hand' })]),
      ],
      parts: [resistor],
    })
    expect(failing(finding)).toHaveLength(1)
  })
})

describe('heat that the parts bear', () => {
  const exposure = (
    kind: 'wave' | 'hand' | 'rework' | 'levelling',
    temperatureC: number,
    seconds: number,
  ) => ({
    step: kind,
    kind,
    temperatureC,
    seconds,
    times: 1,
  })
  const heat = (
    exposures: ReturnType<typeof exposure>[],
    soldered: 'machine' | 'hand' = 'machine',
    values = {},
  ) =>
    findingOf(partsHeat, {
      values: [list(listRow('C1', 'C', { soldered })), set(solderExposures, exposures)],
      parts: [listedPart('C', { heatMaxC: 260, heatMaxS: 10, ...values })],
    })

  // IEC 60068-2-20, test Tb, method 1A (from memory): a component is dipped at 260 °C for 10 s and still works.
  test.each([
    [[exposure('wave', 250, 3)], 'machine', 'meets'],
    [[exposure('wave', 260, 10)], 'machine', 'meets'],
    [[exposure('wave', 262, 3)], 'machine', 'fails'],
    [[exposure('wave', 250, 11)], 'machine', 'fails'],
    // The iron is for the parts soldered by hand, rework for all; the board alone is levelled.
    [[exposure('wave', 250, 3), exposure('hand', 350, 4)], 'machine', 'meets'],
    [[exposure('wave', 250, 3), exposure('hand', 350, 4)], 'hand', 'fails'],
    [[exposure('wave', 250, 3), exposure('rework', 350, 4)], 'machine', 'fails'],
    [[exposure('wave', 250, 3), exposure('levelling', 300, 5)], 'machine', 'meets'],
    [[exposure('hand', 250, 3)], 'machine', 'undetermined'],
  ] as const)('%o, soldered by %s: %s', (exposures, soldered, verdict) => {
    expect(heat([...exposures], soldered).verdict).toBe(verdict)
  })
  test('a part that says no heat is undetermined', () => {
    expect(heat([exposure('wave', 250, 3)], 'machine', { heatMaxC: undefined }).verdict).toBe('undetermined')
  })
  test('the worst soldering is told with its margin', () => {
    expect(heat([exposure('wave', 250, 3), exposure('rework', 265, 2)])).toMatchObject({
      margin: { found: 265, limit: 260, unit: '°C' },
      parts: [{ measured: { step: 'rework' } }],
    })
  })
  test('what is not soldered onto the board is not judged', () => {
    const finding = findingOf(partsHeat, {
      values: [list(listRow(undefined, 'S', { soldered: undefined }))],
      parts: [listedPart('S', { kind: 'solder' })],
    })
    expect(finding.verdict).toBe('not applicable')
  })
})
