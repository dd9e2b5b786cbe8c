import { describe, expect, test } from 'vitest'
import { boardFinishMax, boardFinishMin } from '@/shared/plan/parameters/finishes'
import { boardBuild } from '@/shared/plan/parameters/laminate'
import { barrelCopper, barrelPlating, leadHoles } from '@/shared/plan/parameters/lead-holes'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import { alloyFamily, productClass, serviceYears } from '@/shared/plan/parameters/programme'
import { holeCopper } from '@/shared/rules/specification/hole-copper'
import { afterRemedy, factsWith, findingOf, set, type SetValue } from '../facts-builder'
import { leadHole } from './lead-hole-rows'

const barrel = (
  wall: number,
  finish: number,
  {
    family = 'tin-lead',
    build = 'subtractive',
    plated = true,
    grade = '3',
    more = [],
  }: {
    family?: 'tin-lead' | 'lead-free'
    build?: 'subtractive' | 'additive'
    plated?: boolean
    grade?: '1' | '2' | '3'
    more?: readonly SetValue[]
  } = {},
) => ({
  values: [
    set(leadHoles, [leadHole({ plated })]),
    set(barrelPlating, wall),
    set(boardFinishMin, finish),
    set(alloyFamily, family),
    set(serviceYears, 20),
    set(boardBuild, build),
    set(productClass, grade),
    ...more,
  ],
})

describe('copper of the barrels', () => {
  // IPC-6012 class 3 and MIL-P-55110: 25 µm (from memory).
  test.each([
    [30, 5, 'meets'],
    // The wall is copper and finish together: what the finish takes is not copper.
    [29, 5, 'fails'],
    [25, 0, 'meets'],
    [25, 8, 'fails'],
    [25.3, 0.3, 'meets'],
    [24, 0, 'fails'],
  ] as const)('%s µm with %s µm of finish %s', (wall, finish, verdict) => {
    expect(findingOf(holeCopper, barrel(wall, finish)).verdict).toBe(verdict)
  })
  // By hand: 30 µm of metal of which solder levelled on may take 20 leave 10; ordered as such, 25 are 25.
  test('what the finish may take of the wall at most is not copper, unless the copper is ordered as such', () => {
    const levelled = (...more: SetValue[]) =>
      findingOf(holeCopper, barrel(30, 5, { more: [set(boardFinishMax, 20), ...more] }))
    expect(levelled()).toMatchObject({ verdict: 'fails', margin: { found: 10, limit: 25 } })
    expect(levelled(set(barrelCopper, 25))).toMatchObject({ verdict: 'meets', margin: { found: 25 } })
    expect(levelled(set(barrelCopper, 24)).verdict).toBe('fails')
    expect(levelled(set(barrelCopper, 26)).missing).toEqual([
      'metal on the wall that holds the copper and the finish ordered',
    ])
    const open = factsWith(barrel(30, 5, { more: [set(boardFinishMax, 20)] }))
    expect(afterRemedy(holeCopper, open).verdict).toBe('meets')
  })
  // Coombs & Holden: up to 12 µm lost in lead-free soldering.
  test('lead-free asks 12 µm more to be clear of the limit', () => {
    expect(findingOf(holeCopper, barrel(30, 0, { family: 'lead-free' })).verdict).toBe('marginal')
    expect(findingOf(holeCopper, barrel(37, 0, { family: 'lead-free' })).verdict).toBe('meets')
    expect(findingOf(holeCopper, barrel(25, 0, { family: 'lead-free' })).verdict).toBe('marginal')
    const tinLead = findingOf(holeCopper, barrel(25, 0))
    expect(tinLead.remedy).toBeUndefined()
    const losses = (finding: typeof tinLead) => finding.sources.filter(({ cite }) => cite.includes('12 µm'))
    expect(losses(tinLead)).toHaveLength(0)
    expect(losses(findingOf(holeCopper, barrel(25, 0, { family: 'lead-free' })))).toHaveLength(1)
  })
  // By hand: 30 µm of metal less the 20 µm that the finish may take leave 10; class 3 asks 25 + 20 = 45 µm of metal.
  test('the numbers of the wall are shown as they are subtracted', () => {
    const levelled = findingOf(holeCopper, barrel(30, 5, { more: [set(boardFinishMax, 20)] }))
    expect(levelled.measured).toEqual({
      wall: { value: 30, unit: 'µm' },
      finish: { value: 20, unit: 'µm' },
      orderedAsSuch: false,
      class: '3',
    })
    expect(levelled.working).toMatchObject([{ numbers: '30 µm − 20 µm', result: '10 µm' }])
    expect(levelled.remedy).toMatchObject({ parameter: barrelPlating.key, value: 45 })
  })
  // By hand: the 12 µm that lead-free solder takes on top of 25 are 37 of copper; with the 5 of finish that must be there, 42 of metal.
  test('copper ordered as such is raised by itself, with room for the least of the finish', () => {
    const ordered = findingOf(
      holeCopper,
      barrel(45, 5, { family: 'lead-free', more: [set(boardFinishMax, 20), set(barrelCopper, 24)] }),
    )
    expect(ordered).toMatchObject({ verdict: 'fails', measured: { orderedAsSuch: true } })
    expect(ordered.working[0]).not.toHaveProperty('numbers')
    expect(ordered.remedy?.message).toContain('37 µm of copper on the wall, and 42 µm of metal in all')
    expect(ordered.remedy?.parameter).toBeUndefined()
  })
  // IPC-6012, external conductor thickness after plating: 20 µm plated of classes 1 and 2 (secondary copy: NCAB Group).
  test.each([
    ['1', 20, 'meets'],
    ['2', 20, 'meets'],
    ['2', 19, 'fails'],
    ['3', 20, 'fails'],
  ] as const)('class %s with %s µm of copper %s', (grade, wall, verdict) => {
    expect(findingOf(holeCopper, barrel(wall, 0, { grade })).verdict).toBe(verdict)
  })
  // Sn42Bi58 melts at 138 °C: soldered some 60 K cooler, it takes next to no copper (common practice).
  test('tin-bismuth asks no copper to spare', () => {
    const bismuth = barrel(25, 0, { family: 'lead-free', more: [set(solderAlloy, 'sn42bi58')] })
    expect(findingOf(holeCopper, bismuth).verdict).toBe('meets')
  })
  test.each(['tin-lead', 'lead-free'] as const)('the metal of the remedy meets (%s)', (family) => {
    expect(afterRemedy(holeCopper, factsWith(barrel(20, 5, { family }))).verdict).toBe('meets')
  })
  test('copper built up without current is close to the limit for a long service', () => {
    const finding = findingOf(holeCopper, barrel(30, 5, { build: 'additive' }))
    expect(finding.verdict).toBe('marginal')
    expect(finding.remedy?.message).toContain('plated by current')
    expect(finding.measured).toMatchObject({ build: 'additive', service: { value: 20, unit: 'years' } })
  })
  // Ten years and more (common practice, no published source).
  test.each([
    [9.9, 'meets'],
    [10, 'marginal'],
  ] as const)('copper built up without current for %s years %s', (years, verdict) => {
    const additive = barrel(30, 5, { build: 'additive', more: [set(serviceYears, years)] })
    expect(findingOf(holeCopper, additive).verdict).toBe(verdict)
  })
  test('copper built up without current and too thin is ordered thicker first', () => {
    for (const family of ['tin-lead', 'lead-free'] as const) {
      const thin = findingOf(holeCopper, barrel(20, 5, { build: 'additive', family }))
      expect(thin.remedy?.parameter).toBe(barrelPlating.key)
    }
    const near = findingOf(holeCopper, barrel(35, 5, { build: 'additive', family: 'lead-free' }))
    expect(near.remedy).toMatchObject({ parameter: barrelPlating.key, value: 42 })
  })
  test('one plated hole among others has a barrel', () => {
    const mixed = barrel(24, 0, {
      more: [set(leadHoles, [leadHole({ plated: false }), leadHole({ component: 'T1' })])],
    })
    expect(findingOf(holeCopper, mixed).verdict).toBe('fails')
  })
  test('without plated holes there is no barrel', () => {
    expect(findingOf(holeCopper, barrel(0, 0, { plated: false })).verdict).toBe('not applicable')
  })
})
