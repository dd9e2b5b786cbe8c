import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { STANDARD_PLAN } from '@/shared/catalogue/standard-plan'
import type { Parameter } from '@/shared/plan/parameter'
import { conductorMethod } from '@/shared/plan/parameters/conductors'
import { failureRateEdition, surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { fillEdition } from '@/shared/plan/parameters/joint-geometry'
import { spacingEdition } from '@/shared/plan/parameters/spacings'
import { boardFinish, leadFinishes } from '@/shared/plan/parameters/finishes'
import { flux, fluxResidue, solderAlloy } from '@/shared/plan/parameters/solder'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { partsList } from '@/shared/plan/parameters/parts-list'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { steadyService } from '@/shared/plan/parameters/thermal-fatigue'
import type { Facts } from '@/shared/rules/facts'
import { PASSES, type Finding } from '@/shared/rules/finding'
import { judge, readableOf, type AnyRule } from '@/shared/rules/rule'
import { factsWith, set, withValue, type SetValue } from '../rules/facts-builder'
import { leadFinish } from '../rules/specification/finish-rows'
import { leadHole } from '../rules/specification/lead-hole-rows'
import { soundBoard } from '../rules/specification/sound-board'
import { anyValue } from './any-value'
import { CLAIMS } from './without-records'

const stage = STANDARD_PLAN.filter((item) => item.stage === 'specification')
const rules: readonly AnyRule[] = stage.flatMap((item) => item.rules)
const ofThePartsList = ({ reads }: AnyRule): boolean =>
  Object.values(reads).some((read) => readableOf(read).key === partsList.key)
const sound = factsWith({ values: soundBoard() })

/** Boards of every kind: each a sound one but for what makes it another. */
const BOARDS: readonly (readonly [name: string, ...SetValue[]])[] = [
  ['a sound board'],
  ['one with 400 surface-mount joints', set(surfaceMountJoints, 400)],
  ['one with no hole plated', set(leadHoles, [leadHole({ plated: false })])],
  [
    'a lead-free one',
    set(alloyFamily, 'lead-free'),
    set(solderAlloy, 'sac305'),
    set(boardFinish, 'enig'),
    set(leadFinishes, [leadFinish({ coating: 'tin-matte' })]),
  ],
  [
    'one of tin-bismuth',
    set(alloyFamily, 'lead-free'),
    set(solderAlloy, 'sn42bi58'),
    set(boardFinish, 'osp'),
    set(leadFinishes, [leadFinish({ coating: 'silver' })]),
  ],
  ['one whose residue stays', set(flux, 'rol0'), set(fluxResidue, 'stays')],
]
const boards = BOARDS.map(([name, ...values]) => [name, values.reduce(withValue, sound)] as const)

const without = (facts: Facts, keys: readonly string[]): Facts => ({
  ...facts,
  values: new Map([...facts.values].filter(([key]) => !keys.includes(key))),
})
const requiredBy = ({ reads }: AnyRule): string[] =>
  Object.values(reads).flatMap((read) => {
    const readable = readableOf(read)
    return read.source !== 'optional' && readable.source === 'parameter' ? [readable.key] : []
  })

/** What a finding rests on is in its words or its data: a limit, what was found, and where the limit comes from. */
const saysOnWhat = ({ found, working, parts, margin, measured, sources }: Finding): boolean =>
  found.length > 0 &&
  sources.length > 0 &&
  (margin !== undefined || measured !== undefined || working.length > 0 || (parts?.length ?? 0) > 0)

describe('the specification rests on what is stated', () => {
  test.each(rules.map((rule) => [rule.id, rule] as const))('%s does not pass on nothing', (_, rule) => {
    const { verdict } = judge(rule, factsWith())
    // A parts list is kept by choice; without one its rules claim nothing.
    if (ofThePartsList(rule)) expect(verdict).toBe('not applicable')
    else expect(PASSES[verdict]).toBe(false)
  })

  describe.each(boards)('%s', (_, facts) => {
    test.each(rules.map((rule) => [rule.id, rule] as const))(
      '%s meets only with a source to show',
      (_id, rule) => {
        const finding = judge(rule, facts)
        // The register of documents is its own source.
        if (!CLAIMS.includes(finding.verdict) || rule.id === 'document-conflicts') return
        expect(saysOnWhat(finding)).toBe(true)
      },
    )
    test.each(rules.map((rule) => [rule.id, rule] as const))(
      '%s says nothing once anything that it needs is not stated',
      (_id, rule) => {
        for (const key of requiredBy(rule)) {
          const finding = judge(rule, without(facts, [key]))
          expect(finding.verdict, key).toBe('undetermined')
          expect(finding.missing?.length, key).toBeGreaterThan(0)
        }
      },
    )
  })

  /** Which of several editions or ways holds: left open, the one that asks most of those in use. */
  const STRICTEST_WHEN_OPEN = [
    spacingEdition,
    conductorMethod,
    fillEdition,
    failureRateEdition,
    surfaceMountJoints,
  ]
  test.each(
    STRICTEST_WHEN_OPEN.flatMap((parameter) =>
      rules
        .filter(({ reads }) => Object.values(reads).some((read) => readableOf(read).key === parameter.key))
        .map((rule) => [rule.id, parameter.key, rule, parameter as Parameter] as const),
    ),
  )('%s without %s meets only where every value of it would not fail', (_id, _key, rule, parameter) => {
    fc.assert(
      fc.property(fc.constantFrom(...boards), anyValue(parameter), ([, facts], value) => {
        if (judge(rule, without(facts, [parameter.key])).verdict !== 'meets') return
        expect(judge(rule, withValue(facts, [parameter.key, value])).verdict).not.toBe('fails')
      }),
      { numRuns: 60 },
    )
  })

  test('nobody’s silence is a service without temperature cycles, nor a board without leadless parts', () => {
    const silent = without(sound, [steadyService.key, surfaceMountJoints.key])
    const open = rules.filter(({ id }) => ['thermal-fatigue', 'leadless-fatigue'].includes(id))
    expect(open.map((rule) => judge(rule, silent).verdict)).toEqual(['undetermined', 'undetermined'])
  })
})
