import { describe, expect, test } from 'vitest'
import { demonstrationConfidenceMin, inspectorKappaMin } from '@/shared/plan/limits/assessment-proof'
import {
  agreementStudyAsked,
  fieldRecordAsked,
  lifeCyclesNeeded,
  lifeTestAsked,
  microsectionsAsked,
} from '@/shared/plan/parameters/assessment-proof'
import { survivalTarget, surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { serviceYears } from '@/shared/plan/parameters/programme'
import { useCycles } from '@/shared/plan/parameters/thermal-fatigue'
import type { RecordOf } from '@/shared/records/record-kinds'
import { fieldReturnsAgainstBudget } from '@/shared/rules/assessment/field-returns'
import { inspectorAgreement } from '@/shared/rules/assessment/inspector-agreement'
import { microsectionsSound } from '@/shared/rules/assessment/microsections-sound'
import { reliabilityDemonstrated } from '@/shared/rules/assessment/reliability-demonstrated'
import { findingOf, requirement, set, type FactsInput } from '../facts-builder'
import { holes } from '../record-builder'

describe('agreement of inspectors', () => {
  /** Calls of two inspectors from a table: [both sound, first only sound, second only sound, both defective]. */
  const study = ([both, first, second, neither]: readonly [number, number, number, number]) => {
    const pairs = [
      ...Array<[string, string]>(both).fill(['sound', 'sound']),
      ...Array<[string, string]>(first).fill(['sound', 'bridge']),
      ...Array<[string, string]>(second).fill(['void', 'sound']),
      ...Array<[string, string]>(neither).fill(['bridge', 'icicle']),
    ]
    return pairs.flatMap((calls, index) =>
      calls.map((call, who) => ({
        id: `${index}-${who}`,
        calledOn: '2026-02-10',
        study: 'S-1',
        inspector: who === 0 ? 'C. Hale' : 'D. Moor',
        joint: `J${index}`,
        round: 1,
        call,
      })),
    )
  }
  const judged = (rows: readonly { readonly id: string }[], over: FactsInput = {}) =>
    findingOf(inspectorAgreement, { records: { 'inspector-call': rows }, ...over })

  // Published example of Cohen's kappa: 20, 5, 10, 15 of 50: kappa 0.4. Of 15 in 50 called differently the exact 95 %
  // bounds (scipy 1.17) give 1 − 2·0.4237 = 0.15253 at least, 1 − 2·0.1949 = 0.61023 at most.
  test('20, 5, 10 and 15 of 50 give the published 0.4, at most 0.61', () => {
    const finding = judged(study([20, 5, 10, 15]))
    expect(finding.parts?.[0]?.measured?.['kappa']).toMatchObject({ unit: '1' })
    expect((finding.parts?.[0]?.measured?.['kappa'] as { value: number }).value).toBeCloseTo(0.4, 10)
    expect(finding.verdict).toBe('fails')
    expect(finding.margin?.found).toBeCloseTo(0.6102302, 6)
    const asked = (min: number) =>
      judged(study([20, 5, 10, 15]), {
        requirements: [requirement(inspectorKappaMin, min, { relaxes: true })],
      })
    expect(asked(0.3).verdict).toBe('undetermined')
    expect(asked(0.15).verdict).toBe('meets')
    expect(asked(0.15).margin?.found).toBeCloseTo(0.1525341, 6)
  })
  // All alike, two thirds sound: chance agreement 5/9, so at 95 % kappa ≥ 1 − (1 − 0.05^(1/n))·9/4, by hand:
  // −0.42 for 3 joints, 0.786 for 30; 26 are the fewest for 0.75.
  test('full agreement on 30 joints meets, on 3 shows nothing and asks for 23 more, over good ones alone it shows nothing', () => {
    expect(judged(study([20, 0, 0, 10])).verdict).toBe('meets')
    expect(judged(study([20, 0, 0, 10])).margin?.found).toBeCloseTo(0.7861738, 6)
    const three = judged(study([2, 0, 0, 1]))
    expect(three.verdict).toBe('undetermined')
    expect(three.found).toMatch(/23 more joints called alike/)
    expect(judged(study([30, 0, 0, 0])).verdict).toBe('undetermined')
  })
  test('calls are held against what is known', () => {
    const rows = study([20, 0, 0, 10]).map((row) => ({ ...row, reference: 'sound' }))
    expect(judged(rows).verdict).not.toBe('meets')
  })
  test('none asked, none made: nothing in the way; asked and not made: undetermined; one alone: undetermined', () => {
    expect(judged([]).verdict).toBe('not applicable')
    expect(judged([], { values: [set(agreementStudyAsked, true)] }).verdict).toBe('undetermined')
    const alone = study([20, 0, 0, 10]).filter(({ inspector }) => inspector === 'C. Hale')
    expect(judged(alone).verdict).toBe('undetermined')
  })
})

describe('microsections', () => {
  const section = (over: Partial<RecordOf<'microsection'>> = {}): RecordOf<'microsection'> => ({
    id: 'm1',
    cutOn: '2026-02-10',
    assembly: 'A-1',
    joint: 'J1',
    by: 'C. Hale',
    fillPct: 95,
    contactAngleDeg: 30,
    voidPct: 5,
    intermetallicUm: 2,
    cracked: false,
    ...over,
  })
  const judged = (rows: RecordOf<'microsection'>[], asked?: number) =>
    findingOf(microsectionsSound, {
      values: asked === undefined ? [] : [set(microsectionsAsked, asked)],
      records: { microsection: rows },
    })
  // IPC-A-610 (from memory): 75 % fill in classes 2 and 3, contact angle 90° at most.
  test.each([
    [{}, 'meets'],
    [{ fillPct: 75 }, 'marginal'],
    [{ fillPct: 74.9 }, 'fails'],
    [{ contactAngleDeg: 90 }, 'marginal'],
    [{ contactAngleDeg: 91 }, 'fails'],
    [{ voidPct: 25.1 }, 'fails'],
    [{ cracked: true }, 'fails'],
    // Layers of one to five micrometres are common practice.
    [{ intermetallicUm: 5 }, 'marginal'],
    [{ intermetallicUm: 5.1 }, 'fails'],
    [{ intermetallicUm: 0.4 }, 'fails'],
    [{ intermetallicUm: undefined }, 'undetermined'],
    [{ voidPct: undefined, contactAngleDeg: undefined }, 'undetermined'],
    [{ voidPct: undefined, fillPct: 70 }, 'fails'],
  ] as const)('%o: %s', (over, verdict) => expect(judged([section(over)]).verdict).toBe(verdict))
  test('fewer than asked are undetermined, none asked and none made is no obstacle', () => {
    expect(judged([section()], 2).verdict).toBe('undetermined')
    expect(judged([], 2).verdict).toBe('undetermined')
    expect(judged([]).verdict).toBe('not applicable')
  })
})

describe('life test', () => {
  const specimen = (index: number, over: Partial<RecordOf<'life-test'>> = {}): RecordOf<'life-test'> => ({
    id: `l${index}`,
    endedOn: '2026-02-10',
    test: 'cycling 1',
    specimen: `S${index}`,
    joints: 1,
    cycles: 1000,
    failed: false,
    acceleration: 1,
    model: undefined,
    ...over,
  })
  const run = (count: number, failed = 0, over: Partial<RecordOf<'life-test'>> = {}) =>
    Array.from({ length: count }, (_, index) => specimen(index, { failed: index < failed, ...over }))
  const values = [
    set(surfaceMountJoints, 0),
    set(leadHoles, [holes(1)]),
    set(survivalTarget, 90),
    set(serviceYears, 10),
    set(lifeCyclesNeeded, 1000),
  ]
  const judged = (rows: RecordOf<'life-test'>[], over: FactsInput = {}) =>
    findingOf(reliabilityDemonstrated, { values, records: { 'life-test': rows }, ...over })

  // Success run, R = 0.9 at 90 %: 22 units without a failure (tabulated in many places); 21 do not do.
  test('22 lives without a failure show 90 % at 90 %; 21 ask for one more', () => {
    expect(judged(run(22)).verdict).toBe('marginal')
    const short = judged(run(21))
    expect(short.verdict).toBe('undetermined')
    // −ln 0.1/−ln 0.9 = 21.854 lives (by hand).
    expect(short.missing).toEqual(['1 more joints run through a whole life without a failure'])
    expect(judged([...run(21), specimen(99)]).verdict).toBe('marginal')
  })
  // By hand at the shape 4: a run of 0.95 lives counts 0.8145, one of 0.967 lives 0.8744; 0.854 are wanted.
  test('a run short of a life counts by the greatest shape presumed', () => {
    expect(judged([...run(21), specimen(99, { cycles: 950 })]).verdict).toBe('undetermined')
    expect(judged([...run(21), specimen(99, { cycles: 967 })]).verdict).toBe('marginal')
  })
  // By hand at the shape 2: 0.854 lives want the square of 0.924 and more; 6 runs of 2 lives count 24.
  test('a run of two lives counts four, by the least shape presumed', () => {
    expect(judged(run(5, 0, { cycles: 2000 })).verdict).toBe('undetermined')
    expect(judged(run(6, 0, { cycles: 2000 })).verdict).toMatch(/meets|marginal/)
  })
  test('3000 specimens of 1000 joints through 1.1 % of a life show nothing', () => {
    const short = judged(run(3000, 0, { joints: 1000, cycles: 11 }))
    expect(short.verdict).toBe('undetermined')
    expect(short.found).toMatch(/0 of them through a whole life/)
    // 3·10⁶ · 0.011⁴ = 0.0439 by hand; 22 − 0.04 are wanting.
    expect(short.missing).toEqual(['22 more joints run through a whole life without a failure'])
  })
  // NIST/SEMATECH e-Handbook 8.3.1.1: factor 3.89 for one failure at 90 %: 3.8897/0.10536 = 36.92 lives.
  test('with one failure 37 lives are needed', () => {
    expect(judged(run(37, 1)).verdict).toBe('marginal')
    const short = judged(run(36, 1))
    expect(short.verdict).toBe('undetermined')
    expect(short.missing?.[0]).toMatch(/^1 more/)
  })
  test('many failures contradict the target', () => {
    expect(judged(run(20, 10)).verdict).toBe('fails')
  })
  test('ten joints a board need ten times as much; acceleration counts, and by no named model nothing is added', () => {
    const ten = values.map((value) => (value[0] === leadHoles.key ? set(leadHoles, [holes(10)]) : value))
    expect(judged(run(22), { values: ten }).verdict).toBe('undetermined')
    const model = 'Norris–Landzberg'
    expect(judged(run(22, 0, { acceleration: 10, model }), { values: ten }).verdict).toBe('meets')
    const claimed = judged(run(22, 0, { acceleration: 10 }), { values: ten })
    expect(claimed.verdict).toBe('undetermined')
    expect(claimed.missing?.[0]).toMatch(/model behind the acceleration/)
  })
  // Failures as often early as late, at 1, 2, 4 … cycles: a shape well below 1 (infant failures), not the wear-out presumed.
  test('failures that do not wear out are not judged as if they did', () => {
    const early = Array.from({ length: 10 }, (_, index) =>
      specimen(index, { failed: true, cycles: 2 ** index }),
    )
    const finding = judged([...early, ...run(2000).map((row) => ({ ...row, id: `x${row.id}` }))])
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toMatch(/not the 2 to 4 presumed/)
  })
  test('the cycles of a life follow from the cycles a year where they are not stated', () => {
    const cycles = { cycle: 'day', swingK: 20, hottestC: 45, perYear: 100, dwellMin: 240 }
    const yearly = [...values.slice(0, 4), set(useCycles, [cycles])]
    expect(judged(run(22), { values: yearly }).verdict).toBe('marginal')
    expect(judged(run(22), { values: values.slice(0, 4) }).verdict).toBe('undetermined')
  })
  test('none asked, none made is no obstacle; asked and not made is undetermined', () => {
    expect(judged([]).verdict).toBe('not applicable')
    expect(judged([], { values: [...values, set(lifeTestAsked, true)] }).verdict).toBe('undetermined')
  })
  test('more confidence needs more', () => {
    const requirements = [requirement(demonstrationConfidenceMin, 95)]
    expect(judged(run(28), { requirements }).verdict).toBe('undetermined')
    // Success run, R = 0.9 at 95 %: 29 units.
    expect(judged(run(29), { requirements }).verdict).toBe('marginal')
  })
})

describe('field returns', () => {
  const values = [
    set(surfaceMountJoints, 0),
    set(leadHoles, [holes(500)]),
    set(survivalTarget, 99),
    set(serviceYears, 20),
  ]
  const served = (boards: number) => ({
    id: 'x1',
    from: '2026-01-01',
    to: '2026-12-31',
    boards,
    hoursEach: 8760,
    source: 'ship list',
  })
  const back = (count: number, cause = 'solder-joint') =>
    Array.from({ length: count }, (_, index) => ({
      id: `b${index}`,
      returnedOn: '2026-09-01',
      assembly: `A-${index}`,
      cause,
      jointsFailed: 1,
    }))
  const judged = (boards: number, returns: ReturnType<typeof back>, asked?: boolean) =>
    findingOf(fieldReturnsAgainstBudget, {
      values: asked === undefined ? values : [...values, set(fieldRecordAsked, asked)],
      records: { 'field-exposure': boards > 0 ? [served(boards)] : [], 'field-return': returns },
    })

  // −ln 0.99 over 20 years of 8760 h: 57.365 FIT a board (by hand).
  test('99 % over 20 years allow 57.4 FIT a board', () => {
    expect(judged(1000, []).margin?.limit).toBeCloseTo(57.365, 2)
  })
  test('before service it stands in no gate’s way; few hours without a return show nothing', () => {
    expect(judged(0, []).verdict).toBe('not applicable')
    const finding = judged(10, [])
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toMatch(/Neither shown nor contradicted/)
  })
  // No failure at 90 %: 2.302585/57.3649·10⁹ = 40 139 265 board-hours (by hand); 87 600 are served.
  test('it says how many more board-hours would show the rate', () =>
    expect(judged(10, []).missing?.[0]).toMatch(/^40\u202f051\u202f6/))
  test('where quality decides that service is watched only, too few hours are no obstacle, but returns above the rate are', () => {
    const watched = (boards: number, returns: ReturnType<typeof back>) => judged(boards, returns, false)
    expect(watched(10, []).verdict).toBe('not applicable')
    expect(watched(10, []).found).toMatch(/by decision service is watched/)
    expect(watched(1000, back(1)).verdict).toBe('undetermined')
    expect(watched(1000, back(10)).verdict).toBe('fails')
  })
  test('returns without hours in service to hold them against are no pass', () => {
    const finding = judged(0, back(1))
    expect(finding.verdict).toBe('undetermined')
    expect(finding.missing).toEqual(['boards in service, and their hours'])
  })
  // No failure at 90 %: 2.3026/57.365·10⁹ = 4.014·10⁷ board-hours, 4583 board-years (by hand).
  test('4583 board-years without a return show the budget', () => {
    expect(judged(4583, []).found).toMatch(/shown to hold/)
    expect(judged(4581, []).found).toMatch(/Neither shown/)
  })
  test('one return in 1000 board-years is above the rate but not proof; ten are', () => {
    expect(judged(1000, back(1)).verdict).toBe('undetermined')
    expect(judged(1000, back(10)).verdict).toBe('fails')
    expect(judged(5000, back(10, 'component')).verdict).toBe('meets')
  })
  // Ten at 90 %: χ²(0.1; 20)/2 = 12.443/2 = 6.2215 at least, χ²(0.9; 22)/2 = 30.813/2 = 15.407 at most (tables), over 8.76·10⁶ h.
  test('what is contradicted shows its bounds, and what to do', () => {
    const finding = judged(1000, back(10))
    const bound = (name: string) => (finding.measured?.[name] as { value: number }).value
    expect(bound('rateAtLeast')).toBeCloseTo(710.2, 0)
    expect(bound('rateAtMost')).toBeCloseTo(1758.7, 0)
    expect(finding.measured).toMatchObject({
      failed: { value: 10, unit: 'boards' },
      boardHours: { value: 8_760_000, unit: 'h' },
      confidence: { value: 90, unit: '%' },
    })
    expect(finding.measured).not.toHaveProperty('notAnalysed')
    expect(finding.margin?.found).toBeCloseTo(710.2, 0)
    expect(finding.remedy?.message).toMatch(/^Section the joints that failed/)
    // 10 / 8 760 000 · 10⁹ by hand.
    expect(finding.working).toMatchObject([{ result: '1142 FIT' }])
    expect(judged(1000, back(2, 'open')).measured).toMatchObject({
      failed: { value: 0 },
      notAnalysed: { value: 2, unit: 'boards' },
    })
  })
  test('what is shown wants nothing more; what is only watched has no place on a bar', () => {
    const shown = judged(4583, [])
    expect(shown.missing).toBeUndefined()
    expect(shown.remedy).toBeUndefined()
    const watched = judged(10, [], false)
    expect(watched.margin).toBeUndefined()
    expect(watched.missing).toBeUndefined()
    expect(judged(4583, [], false).margin?.limit).toBeCloseTo(57.365, 2)
    expect(judged(1000, back(10), false).margin?.limit).toBeCloseTo(57.365, 2)
  })
  test.each([0, 100])('a confidence of %s % can be shown by no service', (confidence) => {
    const finding = findingOf(fieldReturnsAgainstBudget, {
      values,
      requirements: [requirement(demonstrationConfidenceMin, confidence, { relaxes: true })],
      records: { 'field-exposure': [served(5000)], 'field-return': [] },
    })
    expect(finding.verdict).toBe('undetermined')
    expect(finding.missing).toEqual(['a confidence below 100 %'])
  })
  // One failure at 90 %: χ²(0.9; 4)/2 = 3.8897 (tables) over 57.365 FIT: 6.7807·10⁷ board-hours, 7741 board-years.
  test('a return that nobody has analysed may be a joint: it counts until it is', () => {
    expect(judged(5000, []).verdict).toBe('meets')
    const open = judged(5000, back(1, 'open'))
    expect(open.verdict).toBe('undetermined')
    expect(open.remedy?.message).toMatch(/^Analyse what came back and is still open \(1\)/)
    expect(judged(7742, back(1, 'open')).verdict).toBe('meets')
    expect(judged(7739, back(1, 'open')).verdict).toBe('undetermined')
    // Nor is it held against the boards: ten of them contradict nothing.
    expect(judged(1000, back(10, 'open')).verdict).toBe('undetermined')
    expect(judged(10, back(1, 'open'), false).verdict).toBe('undetermined')
  })
})
