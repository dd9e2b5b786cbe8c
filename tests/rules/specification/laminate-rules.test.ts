import { describe, expect, test } from 'vitest'
import type { BoardFinishKey } from '@/shared/materials/board-finishes'
import { LAMINATES, type LaminateKey } from '@/shared/materials/laminates'
import { floatShareUsed, throughExpansionPct } from '@/shared/physics/solder-exposure'
import { boardFinish } from '@/shared/plan/parameters/finishes'
import { surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import {
  bowAndTwist,
  glassTransition,
  laminate,
  serviceTemperature,
  solderExposures,
  type SolderExposure,
} from '@/shared/plan/parameters/laminate'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { bowAndTwistRule } from '@/shared/rules/specification/bow-and-twist'
import { glassTransitionRule } from '@/shared/rules/specification/glass-transition'
import { solderExposuresRule } from '@/shared/rules/specification/solder-exposures'
import { afterRemedy, factsWith, findingOf, set } from '../facts-builder'

const wave = (over: Partial<SolderExposure> = {}): SolderExposure => ({
  step: 'Wave',
  kind: 'wave',
  temperatureC: 250,
  seconds: 4,
  times: 2,
  ...over,
})

describe('solder exposures', () => {
  const judged = (
    grade: LaminateKey,
    rows: readonly SolderExposure[],
    finish: BoardFinishKey = 'tin-lead-plated',
    family: 'tin-lead' | 'lead-free' = 'tin-lead',
  ) =>
    findingOf(solderExposuresRule, {
      values: [
        set(laminate, grade),
        set(solderExposures, rows),
        set(boardFinish, finish),
        set(alloyFamily, family),
      ],
    })

  // FR-4 floats 120 s at 260 °C and at least 10 s at 288 °C (IPC-4101/21 and JIS-style data): by hand.
  test('two waves of 4 s use 8/120 of FR-4', () => {
    expect(floatShareUsed(LAMINATES['fr-4'].solderFloat, [wave()])).toBeCloseTo(8 / 120, 12)
    expect(judged('fr-4', [wave()]).margin?.found).toBeCloseTo(6.6667, 3)
    expect(judged('fr-4', [wave()]).verdict).toBe('meets')
  })
  test('above 260 °C the shorter float at 288 °C counts', () => {
    expect(floatShareUsed(LAMINATES['fr-4'].solderFloat, [wave({ temperatureC: 270 })])).toBeCloseTo(0.8, 12)
    expect(judged('fr-4', [wave({ temperatureC: 270, seconds: 5.1 })]).verdict).toBe('fails')
  })
  test('paper phenolic bears 10 s in all', () => {
    expect(judged('fr-2', [wave()]).verdict).toBe('meets')
    expect(judged('fr-2', [wave(), wave({ step: 'Rework', kind: 'rework', times: 1 })]).verdict).toBe('fails')
  })
  test('hotter than any float known fails', () => {
    expect(judged('fr-2', [wave({ temperatureC: 270 })]).verdict).toBe('fails')
  })
  test('levelling of the finish is counted when it is not listed', () => {
    const finding = judged('fr-2', [wave()], 'hot-air-tin-lead')
    expect(finding.verdict).toBe('fails')
    expect(finding.notes?.[0]).toContain('no levelling is listed')
    const listed = judged('fr-4', [wave(), wave({ step: 'HAL', kind: 'levelling' })], 'hot-air-tin-lead')
    expect(listed.margin?.found).toBeCloseTo((16 / 120) * 100, 6)
  })
  test('an ordinary grade under lead-free heat is marginal', () => {
    expect(judged('fr-4', [wave()], 'enig', 'lead-free').verdict).toBe('marginal')
    expect(judged('fr-4-mid', [wave()], 'enig', 'lead-free').verdict).toBe('meets')
  })
  // 60 ppm/K from 20 to 135 °C and 300 ppm/K from there to 260 °C: 0.69 + 3.75 = 4.44 %; typical data of the
  // grade print 4.3 % from 50 to 260 °C, which the same rates give as 0.51 + 3.75 = 4.26 %.
  test('the growth in thickness agrees with the printed 4.3 %', () => {
    const rates = { below: 60, above: 300 }
    expect(throughExpansionPct(rates, 135, 260)).toBeCloseTo(4.44, 6)
    expect(throughExpansionPct(rates, 135, 260) - throughExpansionPct(rates, 135, 50)).toBeCloseTo(4.26, 6)
  })
})

describe('glass transition', () => {
  const at = (grade: LaminateKey, service: number, certified?: number) => ({
    values: [
      set(laminate, grade),
      set(serviceTemperature, service),
      ...(certified === undefined ? [] : [set(glassTransition, certified)]),
    ],
  })
  test.each([
    ['fr-4', 85, undefined, 'meets'],
    ['fr-4', 108, undefined, 'marginal'],
    ['fr-4', 111, undefined, 'fails'],
    ['fr-4', 100, 118, 'fails'],
    ['fr-4', 100, 121, 'marginal'],
    ['polyimide', 150, undefined, 'meets'],
  ] as const)('%s at %s °C, certified %s: %s', (grade, service, certified, verdict) => {
    expect(findingOf(glassTransitionRule, at(grade, service, certified)).verdict).toBe(verdict)
  })
  test.each([
    ['fr-4', undefined],
    ['fr-4', 118],
  ] as const)('the service temperature of the remedy meets (%s, %s)', (grade, certified) => {
    expect(afterRemedy(glassTransitionRule, factsWith(at(grade, 140, certified))).verdict).toBe('meets')
  })
})

describe('bow and twist', () => {
  const allowed = (percent: number, surfaceMount?: number) => ({
    values: [
      set(bowAndTwist, percent),
      ...(surfaceMount === undefined ? [] : [set(surfaceMountJoints, surfaceMount)]),
    ],
  })
  // IPC-6012B, 3.4.3: 0.75 % with surface mount, 1.5 % otherwise.
  test.each([
    [1.5, 0, 'meets'],
    [1.6, 0, 'fails'],
    // Until somebody says that there are none, the stricter of the two holds.
    [0.75, undefined, 'meets'],
    [0.8, undefined, 'fails'],
    [0.75, 100, 'meets'],
    [1, 100, 'fails'],
    [1, 0, 'meets'],
  ] as const)('%s %% with %s surface-mount joints %s', (percent, joints, verdict) => {
    expect(findingOf(bowAndTwistRule, allowed(percent, joints)).verdict).toBe(verdict)
  })
  test('the remedy meets', () => {
    expect(afterRemedy(bowAndTwistRule, factsWith(allowed(2, 100))).verdict).toBe('meets')
  })
  // 160 mm at 0.75 and 1.5 %: 1.20 and 2.40 mm (computed).
  test('says what it is in millimetres', () => {
    expect(findingOf(bowAndTwistRule, allowed(0.75)).working[0]?.result).toBe('1.2 mm')
  })
})
