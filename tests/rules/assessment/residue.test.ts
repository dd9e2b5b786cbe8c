import { describe, expect, test } from 'vitest'
import { insulationResistanceMin, ionicResidueMax } from '@/shared/plan/limits/assessment-residue'
import { cleanlinessEdition, insulationTest } from '@/shared/plan/parameters/assessment-residue'
import { fluxResidue, insulationNeeded } from '@/shared/plan/parameters/solder'
import type { RecordOf } from '@/shared/records/record-kinds'
import { insulationResistanceRule } from '@/shared/rules/assessment/insulation-resistance'
import { ionicCleanlinessRule, residueOf } from '@/shared/rules/assessment/ionic-cleanliness'
import { findingOf, requirement, set, type FactsInput } from '../facts-builder'
import { INSTRUMENT } from '../log-builder'

/** 100 × 100 mm: both faces are 200 cm². 0.5 µg/ml in 624 ml are 312 µg: 1.56 µg/cm² by hand. */
const extract = (over: Partial<RecordOf<'ionic-cleanliness'>> = {}): RecordOf<'ionic-cleanliness'> => ({
  id: 'c1',
  testedOn: '2026-02-10',
  assembly: 'A-1',
  method: 'manual',
  concentrationUgPerMl: 0.5,
  solventMl: 624,
  lengthMm: 100,
  widthMm: 100,
  componentAllowancePct: 0,
  minutes: 10,
  solventC: 25,
  instrument: undefined,
  ...over,
})
const onThree = ['A-1', 'A-2', 'A-3']
const judged = (tests: RecordOf<'ionic-cleanliness'>[], over: FactsInput = {}) =>
  findingOf(ionicCleanlinessRule, {
    records: {
      'ionic-cleanliness': tests.flatMap((test) => onThree.map((assembly) => ({ ...test, assembly }))),
    },
    ...over,
  })

describe('ionic residue', () => {
  test('both faces count, the allowance lowers, the instrument’s factor divides', () => {
    expect(residueOf(extract())).toBeCloseTo(1.56, 10)
    expect(residueOf(extract({ componentAllowancePct: 50 }))).toBeCloseTo(1.04, 10)
    // Factor 2.01 (MIL-P-28809A, from memory): 1.56 / 2.01 = 0.77612.
    expect(residueOf(extract({ method: 'factor-2-01' }))).toBeCloseTo(0.77612, 5)
  })
  // J-STD-001 to 2018 and MIL-P-28809: 1.56 µg/cm² = 10.06 µg/in²; NASA-STD-8739.3: 1.55 (both from memory).
  test('1.56 is just inside one edition and outside the other, which is the one taken when none is chosen', () => {
    const values = [set(cleanlinessEdition, 'j-std-001')]
    const inside = judged([extract()], { values })
    // So near to the limit only a known instrument tells inside from outside.
    expect(inside.verdict).toBe('undetermined')
    const known = {
      id: 'i1',
      tag: 'X-1',
      measures: 'extract',
      calibratedOn: '2025-10-01',
      dueOn: '2026-10-01',
      certificate: 'C',
      outOfUse: false,
    }
    const named = judged([extract({ instrument: 'X-1' })], { values, instruments: [known] })
    expect(named.verdict).toBe('marginal')
    expect(inside.limit).toMatch(/10\.06 µg\/in²/)
    expect(judged([extract()]).verdict).toBe('fails')
    expect(judged([extract({ solventMl: 500 })]).verdict).toBe('meets')
    expect(judged([extract({ solventMl: 624.1 })], { values }).verdict).toBe('fails')
  })
  test('the edition without a figure wants one’s own, and then judges by it', () => {
    const values = [set(cleanlinessEdition, 'own-evidence')]
    expect(judged([extract({ solventMl: 300 })], { values }).verdict).toBe('undetermined')
    const requirements = [requirement(ionicResidueMax, 0.7, { clause: 'default' })]
    expect(judged([extract({ solventMl: 300 })], { values, requirements }).verdict).toBe('fails')
    expect(judged([extract({ solventMl: 200 })], { values, requirements }).verdict).toBe('meets')
  })
  // Three assemblies at least: common practice, no published source.
  test('one clean extract is not a clean production; one dirty one is a dirty one', () => {
    const on = (...assemblies: readonly string[]) =>
      findingOf(ionicCleanlinessRule, {
        records: { 'ionic-cleanliness': assemblies.map((assembly) => extract({ assembly, solventMl: 300 })) },
      })
    expect(on('A-1').verdict).toBe('undetermined')
    expect(on('A-1').missing).toEqual(['Assemblies: 1 of 3 were extracted.'])
    expect(on('A-1', 'A-1', 'A-1').verdict).toBe('undetermined')
    expect(on('A-1', 'A-2', 'A-3').verdict).toBe('meets')
    const dirty = { records: { 'ionic-cleanliness': [extract()] } }
    expect(findingOf(ionicCleanlinessRule, dirty).verdict).toBe('fails')
  })
  // By hand: a tenth of 1.55 is kept free, so from 1.395 on; 580 ml make 1.45.
  test('within a tenth of the limit only a known instrument tells', () => {
    expect(judged([extract({ solventMl: 580 })]).verdict).toBe('undetermined')
    expect(judged([extract({ solventMl: 550 })]).verdict).toBe('meets')
    const known = { ...INSTRUMENT, tag: 'X-1' }
    const near = judged([extract({ solventMl: 580, instrument: 'X-1' })], { instruments: [known] })
    expect(near.verdict).toBe('marginal')
    expect(near.remedy?.message).toContain('Clean longer')
    expect(judged([extract({ solventMl: 550 })]).remedy).toBeUndefined()
  })
  // By hand: 2 · 100 · 100 / 100 · 1.5 = 300 cm²; 0.5 · 624 / 300 = 1.04 µg/cm².
  test('the working shows the area washed and the residue', () => {
    expect(judged([extract({ componentAllowancePct: 50 })]).working.slice(0, 2)).toMatchObject([
      { numbers: '2 · 100 · 100 / 100 · (1 + 50 %)', result: '300 cm²' },
      { numbers: '0.5 · 624 / 300 / 1', result: '1.04 µg/cm²' },
    ])
  })
  test('one assembly written in two ways is one, and those still wanted are counted', () => {
    const rows = ['A-1', ' a-1 '].map((assembly) => ({ ...extract({ solventMl: 300 }), assembly }))
    const { parts, remedy } = findingOf(ionicCleanlinessRule, { records: { 'ionic-cleanliness': rows } })
    expect(parts?.[2]?.measured).toEqual({
      extracted: { value: 1, unit: 'boards' },
      needed: { value: 3, unit: 'boards' },
    })
    expect(remedy?.message).toContain('Extract 2 more')
    expect(parts?.[0]?.about).toEqual({ assembly: 'A-1', testedOn: '2026-02-10' })
  })
  test('it says that an extract predicts nothing', () => {
    expect(judged([extract()]).cautions?.join(' ')).toMatch(/does not predict reliability/)
  })
  test('an instrument overdue, or not on file, proves nothing; but a failure stands', () => {
    const named = { instrument: 'X-9', solventMl: 300 }
    expect(judged([extract(named)]).verdict).toBe('undetermined')
    const overdue = {
      id: 'i9',
      tag: 'X-9',
      measures: 'extract',
      calibratedOn: '2025-01-01',
      dueOn: '2026-01-01',
      certificate: 'C',
      outOfUse: false,
    }
    expect(judged([extract(named)], { instruments: [overdue] }).verdict).toBe('undetermined')
    expect(judged([extract(named)], { instruments: [{ ...overdue, dueOn: '2027-01-01' }] }).verdict).toBe(
      'meets',
    )
    expect(judged([extract({ ...named, solventMl: 900 })], { instruments: [overdue] }).verdict).toBe('fails')
  })
  test('asked where residue is removed or nothing is said of it; not where it stays', () => {
    expect(judged([]).verdict).toBe('undetermined')
    expect(judged([], { values: [set(fluxResidue, 'removed')] }).verdict).toBe('undetermined')
    expect(judged([], { values: [set(fluxResidue, 'stays')] }).verdict).toBe('not applicable')
    expect(judged([extract()], { values: [set(fluxResidue, 'stays')] }).verdict).toBe('fails')
  })
})

describe('insulation resistance', () => {
  type Reading = RecordOf<'insulation-resistance'>
  const reading = (hours: number, resistanceMOhm: number, over: Partial<Reading> = {}): Reading => ({
    id: `s-${hours}-${over.pattern ?? 'K1-A'}`,
    testedOn: '2026-02-10',
    pattern: 'K1-A',
    condition: 'j-std-004a',
    hours,
    resistanceMOhm,
    instrument: undefined,
    everyMin: undefined,
    look: hours >= 168 ? 'clean' : undefined,
    ...over,
  })
  /** Three patterns read at 24, 96 and 168 h; two of them sound throughout. */
  const three = (...own: readonly Reading[]): Reading[] => [
    ...own,
    ...['K1-B', 'K1-C'].flatMap((pattern) => [24, 96, 168].map((hours) => reading(hours, 900, { pattern }))),
  ]
  const judgedAt = (rows: readonly Reading[], over: FactsInput = {}) =>
    findingOf(insulationResistanceRule, {
      values: [set(insulationTest, 'j-std-004a')],
      records: { 'insulation-resistance': rows },
      ...over,
    })
  const whole = (atFirst: number, after: number) => [
    reading(24, atFirst),
    reading(96, after),
    reading(168, after),
  ]

  // J-STD-004A: readings at 24, 96 and 168 h, those at 96 and 168 h count, at least 100 MΩ (limit from memory).
  test('a low first reading does not count; one at 96 h does', () => {
    expect(judgedAt(three(...whole(50, 900))).verdict).toBe('meets')
    expect(judgedAt(three(reading(24, 500), reading(96, 99), reading(168, 800))).verdict).toBe('fails')
    const near = (instrument?: string) =>
      three(reading(24, 500), reading(96, 100, { instrument }), reading(168, 800))
    // So near to the limit only a known instrument tells inside from outside.
    expect(judgedAt(near()).verdict).toBe('undetermined')
    const meter = { ...INSTRUMENT, tag: 'M-1' }
    expect(judgedAt(near('M-1'), { instruments: [meter] }).verdict).toBe('marginal')
  })
  test('a reading by an instrument out of calibration, or not on file, proves nothing; a failure stands', () => {
    const by = (instrument: string, after = 900) =>
      three(reading(24, 900), reading(96, after, { instrument }), reading(168, 900))
    const out = { ...INSTRUMENT, tag: 'M-1', dueOn: '2026-02-01' }
    const finding = judgedAt(by('M-1'), { instruments: [out] })
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain('M-1 was due on 2026-02-01')
    expect(judgedAt(by('M-2'), { instruments: [out] }).verdict).toBe('undetermined')
    expect(judgedAt(by('M-1', 99), { instruments: [out] }).verdict).toBe('fails')
  })
  test('a test cut short shows nothing yet, a low reading shows enough', () => {
    expect(judgedAt(three(reading(24, 900), reading(96, 900))).verdict).toBe('undetermined')
    expect(judgedAt(three(reading(24, 900))).verdict).toBe('undetermined')
    expect(judgedAt(three(reading(96, 20))).verdict).toBe('fails')
  })
  test('a single reading at 168 h shows nothing: the interval between readings is asked', () => {
    const finding = judgedAt(three(reading(168, 2400)))
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toMatch(/no reading from 0 to 168 h/)
  })
  // IPC-TM-650 2.6.3.7 under J-STD-004B: readings every 20 minutes.
  test('where 20 minutes are asked, an instrument that read by itself as often does it', () => {
    const read = (everyMin: number | undefined) =>
      findingOf(insulationResistanceRule, {
        values: [set(insulationTest, 'j-std-004b')],
        records: {
          'insulation-resistance': ['A', 'B', 'C'].map((pattern) =>
            reading(168, 900, { pattern, condition: 'j-std-004b', everyMin }),
          ),
        },
      }).verdict
    expect(read(20)).toBe('meets')
    expect(read(60)).toBe('undetermined')
    expect(read(undefined)).toBe('undetermined')
  })
  // IPC-TM-650 2.6.3.3 (from memory): three coupons.
  test('one pattern is not three', () => {
    const one = judgedAt(whole(500, 900))
    expect(one.verdict).toBe('undetermined')
    expect(one.missing).toEqual(['Patterns: 1 of 3 were read.'])
    expect(judgedAt(whole(500, 20)).verdict).toBe('fails')
  })
  // J-STD-004 (from memory): filaments over a fifth of the spacing at most, no corrosion.
  test.each([
    ['clean', 'meets'],
    ['short-filaments', 'meets'],
    ['long-filaments', 'fails'],
    ['corrosion', 'fails'],
    [undefined, 'undetermined'],
  ] as const)('seen afterwards %s: %s', (look, verdict) => {
    const rows = three(reading(24, 900), reading(96, 900), reading(168, 900, { look }))
    expect(judgedAt(rows).verdict).toBe(verdict)
  })
  test('readings under another condition are not taken', () => {
    const finding = judgedAt([reading(168, 900, { condition: 'j-std-004b' })])
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toMatch(/not interchangeable/)
  })
  test('the circuit’s own need rules where it is higher, and asks for the test by itself', () => {
    const rows = three(...whole(500, 500))
    const values = [set(insulationTest, 'j-std-004a'), set(insulationNeeded, 1000)]
    expect(judgedAt(rows, { values }).verdict).toBe('fails')
    expect(judgedAt([], { values: [set(insulationNeeded, 10)] }).verdict).toBe('undetermined')
    expect(judgedAt([], { values: [] }).verdict).toBe('not applicable')
    expect(
      judgedAt([], { values: [set(insulationTest, 'not-asked'), set(insulationNeeded, 10)] }).verdict,
    ).toBe('not applicable')
    expect(judgedAt(rows, { requirements: [requirement(insulationResistanceMin, 600)] }).verdict).toBe(
      'fails',
    )
  })
  test('a test not asked is told as a decision where the circuit has a need; what was read all the same is judged', () => {
    const values = [set(insulationTest, 'not-asked'), set(insulationNeeded, 10)]
    expect(judgedAt([], { values }).found).toMatch(/by decision, though the circuit needs 10 MΩ/)
    expect(judgedAt([reading(96, 3), reading(168, 3)], { values }).verdict).toBe('fails')
    expect(judgedAt(three(...whole(900, 900)), { values }).verdict).toBe('meets')
  })
})
