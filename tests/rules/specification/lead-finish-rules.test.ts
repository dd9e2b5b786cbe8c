import { describe, expect, test } from 'vitest'
import type { AlloyKey } from '@/shared/materials/alloys'
import type { BoardFinishKey } from '@/shared/materials/board-finishes'
import {
  boardFinish,
  boardFinishMin,
  boardFinishMax,
  boardNickel,
  leadFinishes,
  type LeadFinish,
} from '@/shared/plan/parameters/finishes'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import { brassBarrier } from '@/shared/rules/specification/brass-barrier'
import { goldToSolder } from '@/shared/rules/specification/gold-to-solder'
import { leadFinishThickness } from '@/shared/rules/specification/lead-finish-thickness'
import { mixedMetals } from '@/shared/rules/specification/mixed-metals'
import { afterCellRemedy } from '../cell-remedy'
import { afterRemedy, factsWith, findingOf, set, type SetValue } from '../facts-builder'
import { leadFinish } from './finish-rows'

const leads = (...rows: LeadFinish[]) => ({ values: [set(leadFinishes, rows)] })

describe('thickness of coatings on leads', () => {
  // Common practice, no published source: 5 to 10 µm.
  test.each([
    [5, 10, 'meets'],
    [5, undefined, 'meets'],
    [4, 10, 'fails'],
    [5, 12, 'fails'],
    [15, undefined, 'fails'],
  ] as const)('%s to %s µm %s', (coatingUm, coatingMostUm, verdict) => {
    expect(findingOf(leadFinishThickness, leads(leadFinish({ coatingUm, coatingMostUm }))).verdict).toBe(
      verdict,
    )
  })
  test.each([
    [4, 10],
    [5, 12],
    [15, undefined],
  ] as const)('the remedy for %s to %s µm meets', (coatingUm, coatingMostUm) => {
    const facts = factsWith(leads(leadFinish(), leadFinish({ component: 'T1', coatingUm, coatingMostUm })))
    expect(afterCellRemedy(leadFinishThickness, facts).verdict).toBe('meets')
  })
  // MIL-PRF-38535K, Table A-III: palladium 0.51 to 2.13 µm. Silver: common practice, no published source.
  test.each([
    ['nickel-palladium-gold', 0.51, 2.13, 'meets'],
    ['nickel-palladium-gold', 0.5, 2.13, 'fails'],
    ['nickel-palladium-gold', 0.6, 2.2, 'fails'],
    ['silver', 3, 8, 'meets'],
    ['silver', 2, 8, 'fails'],
    ['silver', 3, 9, 'fails'],
  ] as const)('%s of %s to %s µm %s', (coating, coatingUm, coatingMostUm, verdict) => {
    const row = leadFinish({ coating, coatingUm, coatingMostUm })
    expect(findingOf(leadFinishThickness, leads(row)).verdict).toBe(verdict)
  })
  test('gold is judged by itself', () => {
    expect(
      findingOf(leadFinishThickness, leads(leadFinish({ coating: 'gold', coatingUm: 0.1 }))).verdict,
    ).toBe('not applicable')
  })
})

describe('barrier on brass', () => {
  const brass = (over: Partial<LeadFinish>) => leadFinish({ base: 'brass', ...over })
  // Common practice: at least 3 µm of copper or nickel; ASTM B545 asks 2.5 µm.
  test.each([
    [brass({ barrier: 'copper', barrierUm: 3 }), 'meets'],
    [brass({ barrier: 'nickel', barrierUm: 2.5 }), 'fails'],
    [brass({ barrier: 'none' }), 'fails'],
    [brass({ barrier: 'copper' }), 'undetermined'],
    [leadFinish(), 'not applicable'],
  ] as const)('%o', (row, verdict) => {
    expect(findingOf(brassBarrier, leads(row)).verdict).toBe(verdict)
  })
  test('the thicker barrier of the remedy meets', () => {
    const facts = factsWith(leads(brass({ barrier: 'copper', barrierUm: 1 })))
    expect(afterCellRemedy(brassBarrier, facts).verdict).toBe('meets')
  })
})

describe('gold where solder goes', () => {
  const board = (finish: BoardFinishKey, gold: number, ...more: SetValue[]) => [
    set(boardFinish, finish),
    set(boardFinishMin, gold),
    ...more,
  ]
  const judged = (values: SetValue[], ...rows: LeadFinish[]) =>
    findingOf(goldToSolder, {
      values: [...values, set(leadFinishes, rows.length > 0 ? rows : [leadFinish()])],
    })
  test('thick gold is refused as a coating to solder to', () => {
    expect(judged(board('electrolytic-gold', 1.3, set(boardNickel, 5))).verdict).toBe('fails')
  })
  // IPC-4552 (2002), Table 3-1: nickel 3 to 6 µm under the gold (secondary copy).
  test.each([
    [2.9, 'fails'],
    [3, 'meets'],
    [5, 'meets'],
    [6, 'meets'],
    [7, 'fails'],
  ] as const)('a flash over %s µm of nickel %s', (nickelUm, verdict) => {
    expect(judged(board('enig', 0.08, set(boardNickel, nickelUm))).verdict).toBe(verdict)
  })
  test('nickel that nobody specified under a flash is not taken as there, nor as missing', () => {
    expect(judged(board('enig', 0.08))).toMatchObject({
      verdict: 'undetermined',
      missing: [expect.stringContaining('nickel') as string],
    })
  })
  test('gold of a lead without a most shows nothing while its least would pass', () => {
    const open = { coating: 'gold', coatingUm: 0.1, coatingMostUm: undefined, barrier: 'nickel' } as const
    expect(judged(board('tin-plated', 5), leadFinish({ ...open, barrierUm: 4 })).verdict).toBe('undetermined')
  })
  test('the nickel of the remedy meets', () => {
    const values = [...board('enig', 0.08, set(boardNickel, 2)), set(leadFinishes, [leadFinish()])]
    expect(findingOf(goldToSolder, { values }).verdict).toBe('fails')
    expect(afterRemedy(goldToSolder, factsWith({ values })).verdict).toBe('meets')
  })
  test('the most gold the order allows is what counts', () => {
    expect(judged(board('enig', 0.05, set(boardFinishMax, 0.5), set(boardNickel, 5))).verdict).toBe('fails')
  })
  test.each([
    [leadFinish({ coating: 'gold', coatingUm: 1.3, coatingMostUm: undefined }), 'fails'],
    [leadFinish({ coating: 'gold', coatingUm: 1.3, coatingMostUm: undefined, goldRemoved: true }), 'meets'],
    [
      leadFinish({
        coating: 'gold',
        coatingUm: 0.1,
        coatingMostUm: 0.2,
        barrier: 'tin-nickel',
        barrierUm: 5,
      }),
      'meets',
    ],
    [
      leadFinish({ coating: 'gold', coatingUm: 0.1, coatingMostUm: 0.2, barrier: 'copper', barrierUm: 8 }),
      'fails',
    ],
  ] as const)('lead %o', (row, verdict) => {
    expect(judged(board('tin-plated', 5), row).verdict).toBe(verdict)
  })
})

describe('leaded and lead-free together', () => {
  const judged = (
    family: 'tin-lead' | 'lead-free',
    alloy: AlloyKey,
    finish: BoardFinishKey,
    row: LeadFinish = leadFinish({ coating: 'tin-matte' }),
  ) =>
    findingOf(mixedMetals, {
      values: [
        set(alloyFamily, family),
        set(solderAlloy, alloy),
        set(boardFinish, finish),
        set(leadFinishes, [row]),
      ],
    })
  test('tin-lead solders tin', () => {
    expect(judged('tin-lead', 'sn60pb40', 'tin-lead-plated').verdict).toBe('meets')
  })
  test('lead in a lead-free joint fails, from the board as from a lead', () => {
    expect(judged('lead-free', 'sac305', 'hot-air-tin-lead').verdict).toBe('fails')
    expect(judged('lead-free', 'sac305', 'enig', leadFinish({ coating: 'tin-lead' })).verdict).toBe('fails')
  })
  test('bismuth never meets lead, either way round', () => {
    const bismuthLead = leadFinish({ coating: 'tin-bismuth' })
    expect(judged('tin-lead', 'sn60pb40', 'tin-plated', bismuthLead).verdict).toBe('fails')
    const finding = judged('lead-free', 'sn42bi58', 'hot-air-tin-lead')
    expect(finding.verdict).toBe('fails')
    expect(finding.parts?.[1]?.found).toContain('96 °C')
    expect(judged('lead-free', 'sac305', 'enig', bismuthLead).verdict).toBe('meets')
  })
  test('an alloy of the other family fails', () => {
    expect(judged('lead-free', 'sn60pb40', 'enig').verdict).toBe('fails')
  })
  test('lead at the bench brings its caution', () => {
    expect(judged('tin-lead', 'sn60pb40', 'tin-plated').cautions?.[0]).toContain('hands washed')
    expect(judged('lead-free', 'sac305', 'enig').cautions).toBeUndefined()
  })
})
