import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { mayStayEmpty, STANDARD_PLAN } from '@/shared/catalogue/standard-plan'
import type { Parameter } from '@/shared/plan/parameter'
import { conductors } from '@/shared/plan/parameters/conductors'
import { boardFinishMin, boardFinishMax, leadFinishes } from '@/shared/plan/parameters/finishes'
import { solderExposures } from '@/shared/plan/parameters/laminate'
import { leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import { spacings } from '@/shared/plan/parameters/spacings'
import { boardStorageMonths, storageTemperature } from '@/shared/plan/parameters/storage'
import type { Limit } from '@/shared/plan/requirement'
import { allowedDefectsPerMillion, allowedFailureRateFit } from '@/shared/physics/joint-budget'
import { growthBand } from '@/shared/physics/intermetallic'
import { radialClearance } from '@/shared/physics/lead-clearance'
import { leadEnvelope } from '@/shared/physics/lead-envelope'
import type { Facts } from '@/shared/rules/facts'
import { VERDICTS, type Finding, type Remedy } from '@/shared/rules/finding'
import { judgeAll } from '@/shared/rules/judge-all'
import { judge, readableOf, type AnyRule } from '@/shared/rules/rule'
import { annularRing } from '@/shared/rules/specification/annular-ring'
import { bridgingRisk } from '@/shared/rules/specification/bridging-risk'
import { conductorCurrent } from '@/shared/rules/specification/conductor-current'
import { goldFraction } from '@/shared/rules/specification/gold-fraction'
import { leadClearance } from '@/shared/rules/specification/lead-clearance'
import { solderExposuresRule } from '@/shared/rules/specification/solder-exposures'
import { storageLife } from '@/shared/rules/specification/storage-life'
import { voltageSpacing } from '@/shared/rules/specification/voltage-spacing'
import { isCellRemedy, withCell } from '../rules/cell-remedy'
import { factsWith, requirement, set, withValue } from '../rules/facts-builder'
import { leadFinish } from '../rules/specification/finish-rows'
import { leadHole } from '../rules/specification/lead-hole-rows'
import { soundBoard } from '../rules/specification/sound-board'
import { spacing } from '../rules/specification/spacing-rows'
import { anyNumber, asHeld, anyValue } from './any-value'

const stage = STANDARD_PLAN.filter((item) => item.stage === 'specification')
const rules: readonly AnyRule[] = stage.flatMap((item) => item.rules)
const parameters: readonly Parameter[] = stage.flatMap((item) => item.parameters)
const sound = factsWith({ values: soundBoard() })

const badness = ({ verdict }: Finding): number => VERDICTS.indexOf(verdict)
const noBetter = (rule: AnyRule, worse: Facts, better: Facts): void =>
  expect(badness(judge(rule, worse)), rule.id).toBeGreaterThanOrEqual(badness(judge(rule, better)))

/** Any specification the door lets in; what may stay empty sometimes does. */
const factsOfAnyValues = fc
  .tuple(
    ...parameters.map((parameter) =>
      mayStayEmpty(parameter) ? fc.option(anyValue(parameter), { nil: undefined }) : anyValue(parameter),
    ),
  )
  .map((values): Facts => {
    const entries = parameters.map(({ key }, index) => [key, values[index]] as const)
    return { ...sound, values: new Map(entries.filter(([, value]) => value !== undefined)) }
  })

test('a sound board meets every rule of the stage whose matter it raises', () => {
  const found = rules
    .map((rule) => judge(rule, sound))
    .filter(({ verdict }) => verdict !== 'meets' && verdict !== 'not applicable')
  expect(found.map(({ rule, verdict, found: message }) => `${rule}: ${verdict}: ${message}`)).toEqual([])
})

/** Raised by a parts list alone: a board without one has nothing for them to judge. */
const OF_A_PARTS_LIST = ['parts-list-counted', 'parts-described', 'parts-agree', 'parts-heat']

test('without a specification no rule is taken as met', () => {
  for (const rule of rules) {
    const unraised = OF_A_PARTS_LIST.includes(rule.id)
    expect(judge(rule, factsWith()).verdict, rule.id).toBe(unraised ? 'not applicable' : 'undetermined')
  }
})

/** Real numbers, whole sentences, and a word on what is missing where nothing could be judged. */
const isWellFormed = (finding: Finding): boolean =>
  VERDICTS.includes(finding.verdict) &&
  !/NaN|not a number|undefined|\[object/.test(JSON.stringify({ ...finding, verdict: '' })) &&
  (finding.verdict !== 'undetermined' || (finding.missing?.length ?? 0) > 0)

test('whatever the door lets in, every rule answers with a verdict and with real numbers', () => {
  fc.assert(
    fc.property(factsOfAnyValues, (facts) => {
      const faulty = rules.map((rule) => judge(rule, facts)).filter((finding) => !isWellFormed(finding))
      expect(faulty).toEqual([])
    }),
    { numRuns: 150 },
  )
})

describe('limits', () => {
  const read = (rule: AnyRule): Limit[] =>
    Object.values(rule.reads)
      .map(readableOf)
      .filter((readable): readable is Limit => readable.source === 'limit')
  const judged = rules.filter((rule) => rule.id !== 'document-conflicts')
  const pairs = judged.flatMap((rule) => read(rule).map((limit) => ({ rule, limit })))
  const scaled = (limit: Limit, factor: number, looser: boolean): number =>
    (limit.direction === 'at most') === looser
      ? limit.byDefault.value * factor
      : limit.byDefault.value / factor

  test('a stricter limit never improves a verdict', () => {
    fc.assert(
      fc.property(fc.constantFrom(...pairs), factsOfAnyValues, anyNumber(1, 20), (pair, facts, factor) => {
        const stricter = {
          ...facts,
          requirements: [requirement(pair.limit, scaled(pair.limit, factor, false))],
        }
        // Limits that leave no window between them are not judged, which opens no gate either.
        fc.pre(!judge(pair.rule, stricter).found.startsWith('The window is empty'))
        noBetter(pair.rule, stricter, facts)
      }),
      { numRuns: 400 },
    )
  })

  test('a looser limit never turns meets into fails', () => {
    fc.assert(
      fc.property(fc.constantFrom(...pairs), anyNumber(1, 20), ({ rule, limit }, factor) => {
        const value = scaled(limit, factor, true)
        const relaxed = { ...sound, requirements: [requirement(limit, value, { relaxes: true })] }
        expect(judge(rule, relaxed).verdict, `${rule.id}, ${limit.key}`).not.toBe('fails')
      }),
      { numRuns: 400 },
    )
  })
})

describe('remedies', () => {
  const applied = (facts: Facts, remedy: Remedy): Facts | undefined => {
    if (isCellRemedy(remedy)) return withCell(facts, remedy)
    if (remedy.parameter === undefined || remedy.value === undefined) return undefined
    return withValue(facts, [remedy.parameter, remedy.value])
  }

  const damage = fc
    .constantFrom(...parameters)
    .chain((parameter) => anyValue(parameter).map((value) => [parameter.key, value] as const))
  const faults = ({ parts }: Finding): number =>
    parts?.filter((part) => part.verdict !== 'meets' && part.verdict !== 'marginal').length ?? 1

  test('a remedy that names a value sets one that the parameter accepts', () => {
    fc.assert(
      fc.property(factsOfAnyValues, (facts) => {
        for (const rule of rules) {
          const { remedy } = judge(rule, facts)
          const key = remedy && (isCellRemedy(remedy) ? remedy.cell.parameter : remedy.parameter)
          if (key === undefined) continue
          expect(
            parameters.map((each) => each.key),
            rule.id,
          ).toContain(key)
        }
      }),
      { numRuns: 100 },
    )
  })

  /** Rows of holes hang together: a hole that mends one rule may ask another for a larger land. */
  const apart = parameters.filter(({ key }) => key !== leadHoles.key)
  test('beside the table of holes, its value is one that the door lets in, and with it the rule meets', () => {
    const one = fc
      .constantFrom(...apart)
      .chain((parameter) => anyValue(parameter).map((value) => [parameter.key, value] as const))
    fc.assert(
      fc.property(one, (damaged) => {
        const facts = withValue(sound, damaged)
        for (const rule of rules) {
          const finding = judge(rule, facts)
          const outside = finding.parts?.filter(({ verdict }) => verdict !== 'meets').length ?? 1
          if (finding.verdict === 'meets' || finding.verdict === 'undetermined' || outside > 1) continue
          const mended = finding.remedy && applied(facts, finding.remedy)
          if (!mended || !finding.remedy) continue
          const key = finding.remedy.cell?.parameter ?? finding.remedy.parameter
          const parsed = parameters
            .find((each) => each.key === key)
            ?.schema.safeParse(mended.values.get(key!))
          expect(parsed?.success, `${rule.id}: ${finding.remedy.message}`).toBe(true)
          expect(judge(rule, mended).verdict, `${rule.id}: ${finding.remedy.message}`).toBe('meets')
        }
      }),
      { numRuns: 1500 },
    )
  })

  test('applied to one damaged value of a sound board, it mends the rule', () => {
    fc.assert(
      fc.property(damage, (damaged) => {
        const facts = withValue(sound, damaged)
        for (const rule of rules) {
          const finding = judge(rule, facts)
          if (finding.verdict !== 'fails' || faults(finding) > 1) continue
          const mended = finding.remedy && applied(facts, finding.remedy)
          if (mended) expect(judge(rule, mended).verdict, `${rule.id}: ${finding.found}`).not.toBe('fails')
        }
      }),
      { numRuns: 1000 },
    )
  })
})

describe('holes', () => {
  const row = fc.record({
    leadMm: anyNumber(0.3, 1.5),
    leadToleranceMm: anyNumber(0, 0.06),
    holeToleranceMm: anyNumber(0, 0.08),
    holeMm: anyNumber(0.3, 2.5),
    plated: fc.boolean(),
    holeGiven: fc.constantFrom('finished', 'drilled'),
    leadShape: fc.constantFrom('round', 'square'),
  })
  const withHoles = (...rows: LeadHole[]): Facts => withValue(sound, set(leadHoles, rows))

  test('root-sum-square lies within worst case, and both widen with any tolerance', () => {
    fc.assert(
      fc.property(row, anyNumber(1, 3), (over, factor) => {
        const hole = {
          minMm: 0,
          maxMm: 0,
          drillMm: 0,
          nominalMm: over.holeMm,
          toleranceMm: over.holeToleranceMm,
        }
        const at = (scale: number) =>
          radialClearance(
            {
              ...hole,
              minMm: over.holeMm - scale * over.holeToleranceMm,
              maxMm: over.holeMm + scale * over.holeToleranceMm,
              toleranceMm: scale * over.holeToleranceMm,
            },
            leadEnvelope({ shape: over.leadShape, widthMm: over.leadMm, toleranceMm: over.leadToleranceMm }),
          )
        const { worstCase, rootSumSquare } = at(1)
        expect(rootSumSquare.minMm).toBeGreaterThanOrEqual(worstCase.minMm - 1e-12)
        expect(rootSumSquare.maxMm).toBeLessThanOrEqual(worstCase.maxMm + 1e-12)
        expect(at(factor).worstCase.minMm).toBeLessThanOrEqual(worstCase.minMm + 1e-12)
      }),
    )
  })

  test('one more row never improves the finding', () => {
    fc.assert(
      fc.property(row, row, (one, other) => {
        for (const rule of [leadClearance, annularRing]) {
          noBetter(
            rule,
            withHoles(leadHole(one), leadHole({ component: 'X', ...other })),
            withHoles(leadHole(one)),
          )
        }
      }),
    )
  })

  test('the hole that is proposed never fails, and meets where the tolerances leave room for the guard band', () => {
    fc.assert(
      fc.property(row, (over) => {
        const facts = withHoles(leadHole(over))
        const { remedy, verdict } = judge(leadClearance, facts)
        if (verdict === 'meets' || !isCellRemedy(remedy)) return
        const after = judge(leadClearance, withCell(facts, remedy)).verdict
        expect(after).not.toBe('fails')
        const spread = leadEnvelope({
          shape: over.leadShape,
          widthMm: over.leadMm,
          toleranceMm: over.leadToleranceMm,
        })
        // Window 0.30 less guards 0.06, less all tolerances, less one drill step of 0.05.
        if (0.24 - 2 * over.holeToleranceMm - (spread.maxMm - spread.minMm) > 0.051)
          expect(after).toBe('meets')
      }),
    )
  })

  test('a larger land never worsens the ring, and the land of the remedy meets', () => {
    fc.assert(
      fc.property(row, anyNumber(0.5, 4), anyNumber(0, 2), (over, landMm, more) => {
        const small = withHoles(leadHole({ ...over, landMm }))
        noBetter(annularRing, small, withHoles(leadHole({ ...over, landMm: landMm + more })))
        const { remedy } = judge(annularRing, small)
        if (isCellRemedy(remedy)) expect(judge(annularRing, withCell(small, remedy)).verdict).toBe('meets')
      }),
    )
  })
})

describe('conductors and spacings', () => {
  const track = fc.record({
    net: fc.constant('N'),
    layer: fc.constantFrom('external' as const, 'internal' as const),
    widthMm: anyNumber(0.1, 10),
    copperUm: anyNumber(12, 210),
    currentA: anyNumber(0, 20),
    lengthMm: fc.constant(50),
    dropMostMv: fc.constant(undefined),
  })

  test('a wider conductor or a smaller current is never worse, and the width of the remedy meets', () => {
    fc.assert(
      fc.property(track, anyNumber(1, 4), (row, factor) => {
        const facts = withValue(sound, set(conductors, [row]))
        noBetter(
          conductorCurrent,
          facts,
          withValue(sound, set(conductors, [{ ...row, widthMm: row.widthMm * factor }])),
        )
        noBetter(
          conductorCurrent,
          facts,
          withValue(sound, set(conductors, [{ ...row, currentA: asHeld(row.currentA / factor) }])),
        )
        const { remedy } = judge(conductorCurrent, facts)
        if (isCellRemedy(remedy))
          expect(judge(conductorCurrent, withCell(facts, remedy)).verdict).toBe('meets')
      }),
    )
  })

  test('a wider gap or a lower voltage is never worse, and the gap of the remedy meets', () => {
    const row = fc.record({
      peakV: anyNumber(0, 2000),
      gapMm: anyNumber(0.05, 20),
      category: fc.constantFrom('B1', 'B2', 'B3', 'B4', 'A5', 'A6', 'A7'),
      solderSide: fc.constantFrom('bare', 'masked', 'away'),
      parallelMm: fc.option(anyNumber(0, 200), { nil: undefined }),
    })
    fc.assert(
      fc.property(row, anyNumber(1, 4.9), (over, factor) => {
        const at = (more: object): Facts => withValue(sound, set(spacings, [spacing({ ...over, ...more })]))
        for (const rule of [voltageSpacing, bridgingRisk]) {
          noBetter(rule, at({}), at({ gapMm: over.gapMm * factor }))
          const { remedy } = judge(rule, at({}))
          if (isCellRemedy(remedy))
            expect(judge(rule, withCell(at({}), remedy)).verdict, rule.id).toBe('meets')
        }
        noBetter(voltageSpacing, at({}), at({ peakV: asHeld(over.peakV / factor) }))
      }),
    )
  })
})

describe('finishes and storage', () => {
  test('more gold is never better', () => {
    const gold = (um: number): Facts =>
      withValue(
        sound,
        set(leadFinishes, [
          leadFinish({ coating: 'gold', coatingUm: um, coatingMostUm: undefined }),
          leadFinish({ component: 'T1' }),
        ]),
      )
    fc.assert(
      fc.property(anyNumber(0.01, 20), anyNumber(1, 5), (um, factor) => {
        noBetter(goldFraction, gold(um * factor), gold(um))
      }),
    )
  })

  test('growth constants of the band stay in order at any store temperature', () => {
    fc.assert(
      fc.property(anyNumber(-20, 85), (temperatureC) => {
        const { slowest, fitted, fastest } = growthBand(temperatureC)
        expect(slowest).toBeLessThanOrEqual(fitted)
        expect(fitted).toBeLessThanOrEqual(fastest)
      }),
    )
  })

  test('longer, warmer or thinner is never better', () => {
    const stored = (um: number, months: number, temperatureC: number): Facts =>
      [
        set(boardFinishMin, um),
        set(boardFinishMax, 100),
        set(boardStorageMonths, months),
        set(storageTemperature, temperatureC),
      ].reduce(withValue, sound)
    fc.assert(
      fc.property(
        anyNumber(1, 15),
        anyNumber(0, 60),
        anyNumber(-10, 50),
        anyNumber(1, 3),
        (um, months, temperatureC, factor) => {
          const base = stored(um, months, temperatureC)
          noBetter(storageLife, stored(um, months * factor, temperatureC), base)
          noBetter(storageLife, stored(um, months, asHeld(temperatureC + 10 * (factor - 1))), base)
          noBetter(storageLife, base, stored(um * factor, months, temperatureC))
        },
      ),
    )
  })
})

test('one more exposure of the laminate is never better', () => {
  const exposure = fc.record({
    step: fc.constant('Step'),
    kind: fc.constantFrom('wave' as const, 'rework' as const, 'levelling' as const),
    temperatureC: anyNumber(180, 300),
    seconds: anyNumber(0.5, 30),
    times: fc.integer({ min: 1, max: 5 }),
  })
  fc.assert(
    fc.property(exposure, exposure, (one, other) => {
      noBetter(
        solderExposuresRule,
        withValue(sound, set(solderExposures, [one, other])),
        withValue(sound, set(solderExposures, [one])),
      )
    }),
  )
})

test('more joints leave each of them less', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 10_000 }), fc.integer({ min: 1, max: 10_000 }), (joints, more) => {
      const target = { serviceYears: 20, survival: 0.99 }
      expect(allowedFailureRateFit({ ...target, joints: joints + more })).toBeLessThan(
        allowedFailureRateFit({ ...target, joints }),
      )
      expect(allowedDefectsPerMillion({ joints: joints + more, defectFreeBoards: 0.99 })).toBeLessThan(
        allowedDefectsPerMillion({ joints, defectFreeBoards: 0.99 }),
      )
    }),
  )
})

test('a changed value is judged again only by the rules that read it', () => {
  const before = judgeAll(rules, sound)
  const after = judgeAll(rules, withValue(sound, set(storageTemperature, 30)), before)
  const changed = rules.filter((rule) => after.findings.get(rule.id) !== before.findings.get(rule.id))
  expect(changed.map((rule) => rule.id)).toEqual(['storage-life'])
})
