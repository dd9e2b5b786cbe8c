import { describe, expect, test } from 'vitest'
import { defectRecord } from '@/shared/inspection/defect-record'
import { defectsByComponent } from '@/shared/inspection/defects-by-component'
import { exactly } from '@/shared/cost/amount'
import { qualityCostSummary } from '@/shared/cost/quality-cost-summary'
import { lifeTestFits, type LifeSpecimen } from '@/shared/reliability/life-test-fit'
import { inspection } from '../record-builder'

const specimen = (cycles: number, failed: boolean, over: Partial<LifeSpecimen> = {}): LifeSpecimen => ({
  id: `s-${cycles}-${failed}`,
  endedOn: '2026-02-20',
  test: 'T-1',
  specimen: `S-${cycles}`,
  joints: 1,
  cycles,
  failed,
  acceleration: 1,
  model: undefined,
  ...over,
})

describe('Weibull fit of a life test', () => {
  // NIST/SEMATECH e-Handbook 8.4.1.3 (data of 8.2.2.1): ten failures, ten units taken off at 500 h;
  // printed there: characteristic life 606.5280, shape 1.7208.
  const nist = [
    ...[54, 187, 216, 240, 244, 335, 361, 373, 375, 386].map((hours) => specimen(hours, true)),
    ...Array.from({ length: 10 }, (_, index) => specimen(500, false, { id: `off-${index}` })),
  ]
  test('gives the handbook’s 606.53 and 1.7208', () => {
    const [fit] = lifeTestFits(nist, { shape: 2, confidence: 0.9 })
    expect(fit).toMatchObject({ specimens: 20, failures: 10 })
    expect(fit?.fit?.scale).toBeCloseTo(606.528, 2)
    expect(fit?.fit?.shape).toBeCloseTo(1.7208, 4)
    expect(fit?.onePercentAt?.life).toBeCloseTo(606.528 * (-Math.log(0.99)) ** (1 / 1.7208), 1)
  })
  // Weibayes (formula of the Weibull handbooks from memory, computed): ten units, 1000 h, no failure, shape 2, 90 %: 2083.97 h.
  test('without a failure the bound of the life remains', () => {
    const running = Array.from({ length: 10 }, (_, index) => specimen(1000, false, { id: `r-${index}` }))
    const [fit] = lifeTestFits(running, { shape: 2, confidence: 0.9 })
    expect(fit?.fit).toBeUndefined()
    expect(fit?.scaleBound?.scale).toBeCloseTo(2083.9733, 3)
  })
  test('one failure, or all at one life, is no shape; specimens that did not run are left out', () => {
    expect(
      lifeTestFits([specimen(100, true), specimen(200, false)], { shape: 2, confidence: 0.9 })[0]?.fit,
    ).toBeUndefined()
    expect(
      lifeTestFits([specimen(100, true), specimen(100, true, { id: 'b' })], { shape: 2, confidence: 0.9 })[0]
        ?.fit,
    ).toBeUndefined()
    expect(lifeTestFits([specimen(0, false)], { shape: 2, confidence: 0.9 })).toEqual([])
  })
})

describe('quality costs', () => {
  const cost = (costClass: 'prevention' | 'appraisal', amount: number, decision?: string) => ({
    id: `c-${amount}`,
    spentOn: '2026-01-15',
    costClass,
    amount,
    what: 'training',
    decision,
  })
  const rework = {
    id: 'w',
    doneOn: '2026-02-10',
    worker: 'A',
    assembly: 'A-1',
    joint: 'J1',
    defect: 'bridge' as const,
    heats: 2,
    minutes: 30,
    material: undefined,
  }
  const back = {
    id: 'f',
    returnedOn: '2026-03-01',
    assembly: 'A-9',
    cause: 'solder-joint' as const,
    jointsFailed: 1,
    cost: 400,
    hours: undefined,
    joint: undefined,
    lesson: undefined,
  }

  test('sums by class; rework is priced by the hour, returns by their cost', () => {
    const summary = qualityCostSummary(
      {
        costs: [cost('prevention', 300, 'finish'), cost('appraisal', 200)],
        rework: [rework],
        returns: [back],
      },
      80,
    )
    // 300 + 200 + 0.5 h · 80 + 400 = 940; failure (40 + 400) / 940.
    expect(summary.total).toBe(940)
    expect(summary.byClass.map(({ amount }) => amount)).toEqual([300, 200, 40, 400])
    expect(summary.failureShare).toBeCloseTo(440 / 940, 12)
    expect(summary.byDecision).toEqual([{ kind: 'finish', amount: 300, share: 1, cumulativeShare: 1 }])
    expect(summary.reworkByDefect[0]).toMatchObject({ kind: 'bridge', amount: 40 })
    expect(summary.byMonth).toEqual([
      { month: '2026-01', amount: 500 },
      { month: '2026-02', amount: 40 },
      { month: '2026-03', amount: 400 },
    ])
  })
  test('a decision may have any name, one that every object has from its kind among them', () => {
    const names = ['constructor', '__proto__', 'toString']
    const summary = qualityCostSummary({
      costs: names.map((name, index) => cost('prevention', 100 + index, name)),
      rework: [],
      returns: [],
    })
    expect(summary.byDecision.map(({ kind, amount }) => [kind, amount])).toEqual([
      ['toString', 102],
      ['__proto__', 101],
      ['constructor', 100],
    ])
  })
  test('what has no price leaves the sum unknown; the rest is the least it can be', () => {
    const records = { costs: [cost('prevention', 300)], rework: [rework], returns: [back] }
    expect(qualityCostSummary(records)).toMatchObject({
      sum: 'unknown',
      unpriced: { rework: 1, returns: 0 },
    })
    expect(
      qualityCostSummary({ ...records, returns: [back, { ...back, cost: undefined }] }, 80),
    ).toMatchObject({ sum: 'unknown', total: 740, unpriced: { rework: 0, returns: 1 } })
    expect(qualityCostSummary(records, 80).sum).toEqual(exactly(740))
  })
  test('nothing spent is nothing, not a division by it', () => {
    expect(qualityCostSummary({ costs: [], rework: [], returns: [] })).toMatchObject({
      total: 0,
      failureShare: 0,
    })
  })
})

describe('defects by component', () => {
  const look = (assembly: string, joints: readonly string[]) =>
    inspection(assembly, 100, 0, { defects: joints.map((joint) => ({ kind: 'bridge' as const, joint })) })
  const components = [
    { component: 'T1', joints: 10 },
    { component: 'T10', joints: 40 },
    { component: 'R1', joints: 50 },
  ]
  test('a joint belongs to the component its name begins with, T10 not to T1', () => {
    const record = defectRecord([look('A-1', ['T1-3', 'T10-4', 'T1.9', 'X7-1'])], [], 100)
    const { components: rows, unplaced } = defectsByComponent(record, components)
    expect(rows.map(({ component, defective }) => [component, defective])).toEqual([
      ['T1', 2],
      ['T10', 1],
      ['R1', 0],
    ])
    expect(rows[0]?.perMillion).toBe(200_000)
    expect(unplaced).toBe(1)
  })
  // Exact binomial: all of 5 defects among a tenth of the joints has a chance of 0.1⁵.
  test('five defects on a tenth of the joints are no chance', () => {
    const record = defectRecord([look('A-1', ['T1-1', 'T1-2', 'T1-3', 'T1-4', 'T1-5'])], [], 100)
    const { effect } = defectsByComponent(record, [
      { component: 'T1', joints: 10 },
      { component: 'R1', joints: 90 },
    ])
    expect(effect).toMatchObject({ worst: 'T1', test: 'exact binomial' })
    expect(effect?.pValue).toBeCloseTo(1e-5, 9)
  })
  test('no defect, or one component, shows no effect', () => {
    expect(defectsByComponent(defectRecord([look('A-1', [])], [], 100), components).effect).toBeUndefined()
    expect(
      defectsByComponent(defectRecord([look('A-1', ['T1-1'])], [], 100), components.slice(0, 1)).effect,
    ).toBeUndefined()
  })
})
