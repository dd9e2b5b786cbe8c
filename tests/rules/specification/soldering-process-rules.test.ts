import { describe, expect, test } from 'vitest'
import { processExcessMax } from '@/shared/plan/limits/soldering-process'
import { surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { copperLayers, solderExposures, type SolderExposure } from '@/shared/plan/parameters/laminate'
import { leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import { annualVolume } from '@/shared/plan/parameters/programme'
import { processCosts, solderingProcess, type ProcessCost } from '@/shared/plan/parameters/soldering-process'
import { processEconomy } from '@/shared/rules/specification/process-economy'
import { processSuitsJoints } from '@/shared/rules/specification/process-suits-joints'
import { findingOf, requirement, set } from '../facts-builder'
import { leadHole } from './lead-hole-rows'

type Process = ProcessCost['process']

describe('process for these joints', () => {
  const judged = ({
    process = 'wave' as Process,
    rows = [leadHole({ joints: 300 })] as readonly LeadHole[],
    kind = process as SolderExposure['kind'],
    surfaceMount = 0 as number | 'not specified',
    volume = 1000,
    layers = 2,
  }) =>
    findingOf(processSuitsJoints, {
      values: [
        set(solderingProcess, process),
        set(leadHoles, rows),
        set(solderExposures, [{ step: 'Soldering', kind, temperatureC: 250, seconds: 4, times: 1 }]),
        ...(surfaceMount === 'not specified' ? [] : [set(surfaceMountJoints, surfaceMount)]),
        set(annualVolume, volume),
        set(copperLayers, layers),
      ],
    })
  const byHand = [leadHole({ joints: 300, soldered: 'hand' })]
  test('a wave for machine-soldered through-hole joints meets', () => {
    expect(judged({}).verdict).toBe('meets')
  })
  test('process and hole table must agree', () => {
    expect(judged({ process: 'hand' }).verdict).toBe('fails')
    expect(judged({ rows: byHand }).verdict).toBe('fails')
    expect(judged({ process: 'hand', rows: byHand }).verdict).toBe('meets')
  })
  test('the heat of the process must be among the exposures', () => {
    expect(judged({ kind: 'rework' }).verdict).toBe('fails')
  })
  test.each([
    [1000, 'meets'],
    [1600, 'marginal'],
    [1700, 'fails'],
  ] as const)('300 joints by hand on %i boards per year: %s', (volume, verdict) => {
    expect(judged({ process: 'hand', rows: byHand, volume }).verdict).toBe(verdict)
  })
  test('paste does not fill unplated holes', () => {
    expect(judged({ process: 'reflow', rows: [leadHole({ plated: false })] }).verdict).toBe('fails')
    expect(judged({ process: 'reflow' }).verdict).toBe('meets')
  })
  test('surface-mount parts on the wave, and dips of boards with layers, are close to the limit', () => {
    expect(judged({ surfaceMount: 100 }).verdict).toBe('marginal')
    expect(judged({ process: 'dip', layers: 4 }).verdict).toBe('marginal')
  })
  test('silence about surface-mount parts takes none of these warnings away', () => {
    expect(judged({ surfaceMount: 'not specified' }).verdict).toBe('marginal')
    expect(judged({ process: 'dip', surfaceMount: 'not specified' }).verdict).toBe('marginal')
    expect(judged({ process: 'selective', surfaceMount: 'not specified' }).verdict).toBe('meets')
  })
})

describe('economy of the process', () => {
  const cost = (process: Process, over: Partial<ProcessCost> = {}): ProcessCost => ({
    process,
    fixed: 0,
    perBoard: 0,
    perJoint: 0,
    defectsPerMillion: 0,
    perRework: 8,
    foundPct: 95,
    failingPct: 20,
    perFieldRepair: 800,
    ...over,
  })
  const judged = (process: Process, volume: number, costs?: readonly ProcessCost[]) =>
    findingOf(processEconomy, {
      values: [
        set(solderingProcess, process),
        set(leadHoles, [leadHole({ joints: 500 })]),
        set(annualVolume, volume),
        ...(costs ? [set(processCosts, costs)] : []),
      ],
    })
  // Own example of expected rework: 500 joints, 100 per million, 95 % found, rework 8, field repair 800 at 20 %: 0.78 a board.
  test('counts rework and field repair: 0.78 a board', () => {
    const finding = judged('wave', 1, [cost('wave', { defectsPerMillion: 100 })])
    expect(finding.working[0]?.result).toBe('0.78')
    expect(finding.verdict).toBe('meets')
  })
  test('without costs it is asked only where the programme limits them', () => {
    const values = [
      set(solderingProcess, 'wave'),
      set(leadHoles, [leadHole({ joints: 500 })]),
      set(annualVolume, 100),
    ]
    expect(findingOf(processEconomy, { values }).limit).toBe('Not required in this programme.')
    const asked = findingOf(processEconomy, { values, requirements: [requirement(processExcessMax, 10)] })
    expect(asked).toMatchObject({ verdict: 'undetermined', missing: [processCosts.label] })
  })
  // Tooling 20 000 against a saving of 4 a board: worth it from 5000 boards.
  test('the volume decides, and the remedy names where', () => {
    const costs = [cost('wave', { fixed: 20_000, perJoint: 0.01 }), cost('hand', { perJoint: 0.018 })]
    expect(judged('wave', 10_000, costs).verdict).toBe('meets')
    const few = judged('wave', 2000, costs)
    expect(few.verdict).toBe('marginal')
    expect(few.remedy?.message).toContain('below 5000 boards')
    expect(judged('hand', 5000, costs).found).toContain('9 a board')
  })
  // A board by wave: 20 to 24 of its own. By hand 500 joints at 0.05 = 25, or at 0.045 to 0.06 = 22.5 to 30.
  test('a range that lies below every other is the least', () => {
    const finding = judged('wave', 1, [
      cost('wave', { perBoard: '20..24' }),
      cost('hand', { perJoint: 0.05 }),
    ])
    expect(finding.verdict).toBe('meets')
    expect(finding.found).toBe('wave costs 20 to 24 a board, the least of those considered.')
    expect(finding.margin?.found).toBe(0)
  })
  test('of ranges that overlap none is the least, and both are named', () => {
    const finding = judged('wave', 1, [
      cost('wave', { perBoard: '20..24' }),
      cost('hand', { perJoint: '0.045..0.06' }),
    ])
    expect(finding.found).toBe(
      'wave costs 20 to 24 a board, and which costs least cannot be told: the ranges of wave and hand overlap.',
    )
    // At worst wave costs 24 where hand costs 22.5: a fifteenth more, which is 6.67 %.
    expect(finding.margin?.found).toBeCloseTo(100 / 15, 10)
    expect(finding.measured).toMatchObject({ mayBeCheapest: ['wave', 'hand'] })
    expect(finding.remedy?.message).toContain('Narrow the ranges of wave and hand')
  })
  test('surely dearer: by the least and the most that it can be', () => {
    const finding = judged('hand', 1, [cost('wave', { perBoard: '20..24' }), cost('hand', { perBoard: 30 })])
    // 30 against 24 is 25 % more, against 20 it is 50 %.
    expect(finding.found).toBe('hand costs 30 a board, 25 to 50 % more than wave.')
    expect(finding.verdict).toBe('marginal')
    expect(finding.remedy?.message).toContain('Choose wave, or say')
  })
  // 500 joints at 100 per million are 0.05 defects. 90 to 95 % found at 8, escapes failing at 20 % of 800:
  // 0.05 · (0.90 · 8 + 0.10 · 160) = 1.16 and 0.05 · (0.95 · 8 + 0.05 · 160) = 0.78: the more is found, the less it costs.
  test('the share found counts at both its ends', () => {
    const finding = judged('wave', 1, [cost('wave', { defectsPerMillion: 100, foundPct: '90..95' })])
    expect(finding.working[0]?.result).toBe('0.78 to 1.16')
  })
  test('a figure left empty is not known: nothing is the least, and it is named', () => {
    const rows = [cost('wave'), cost('hand', { defectsPerMillion: 100, perRework: undefined })]
    for (const process of ['wave', 'hand'] as const)
      expect(judged(process, 1, rows)).toMatchObject({
        verdict: 'undetermined',
        missing: ['Per rework of hand'],
        found: 'What a board costs by hand is not known, so nothing is called the least.',
      })
  })
  test('what no defect needs may stay open', () => {
    expect(
      judged('wave', 1, [cost('wave', { perRework: undefined, perFieldRepair: undefined })]).verdict,
    ).toBe('meets')
  })
  test('figures of before are read as they were stored; a range the wrong way round is refused', () => {
    expect(processCosts.schema.safeParse([cost('wave', { fixed: 900 })]).success).toBe(true)
    expect(processCosts.schema.safeParse([cost('wave', { fixed: '20..24' })]).success).toBe(true)
    const wrong = processCosts.schema.safeParse([cost('wave', { fixed: '24..20' })])
    expect(wrong.error?.issues[0]?.message).toContain('A range is written “12 to 15”.')
    const beyond = processCosts.schema.safeParse([cost('wave', { foundPct: '90..120' })])
    expect(beyond.error?.issues[0]?.message).toBe('Found before delivery lies between 0 and 100 %.')
  })
  test('a dearer process is shown but never fails a design', () => {
    expect(judged('wave', 1, [cost('wave', { fixed: 1e6 }), cost('hand', { perJoint: 1 })]).verdict).toBe(
      'marginal',
    )
  })
  test('a process given as costing nothing is no measure for another: there is no percentage of nothing', () => {
    const free = judged('wave', 1, [
      cost('wave', { fixed: 100 }),
      cost('hand', { perRework: 0, perFieldRepair: 0 }),
    ])
    expect(free.verdict).toBe('marginal')
    expect(free.found).toBe('wave costs 100 a board, and hand is given as costing nothing.')
    expect(free.margin).toBeUndefined()
  })
  test('the chosen process without a cost cannot be compared', () => {
    expect(judged('wave', 1, [cost('hand')]).verdict).toBe('undetermined')
  })
  test('without costs nothing is compared', () => {
    expect(judged('wave', 1).verdict).toBe('not applicable')
  })
})
