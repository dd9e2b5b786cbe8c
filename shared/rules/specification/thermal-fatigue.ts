import { ALLOYS, meltsAsItsFamily } from '@/shared/materials/alloys'
import { testCyclesGuard } from '@/shared/plan/limits/specification-guards'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import {
  cycleTest,
  steadyService,
  useCycles,
  type CycleTest,
  type UseCycle,
} from '@/shared/plan/parameters/thermal-fatigue'
import { alloyFamily, serviceYears } from '@/shared/plan/parameters/programme'
import { formatQuantity } from '@/shared/quantity/format'
import { accelerate, testCyclesFor, fatigueModelsFor } from '@/shared/reliability/thermal-test-cycles'
import { undetermined, verdictOn, type WorkingLine } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { optional, rule } from '@/shared/rules/rule'
import { modelLabel } from '@/shared/reliability/models/model'
import {
  SLOWNESS_DIRECTION,
  type NorrisLandzbergConstants,
} from '@/shared/reliability/models/norris-landzberg'
import { measure } from '@/shared/rules/measure'

export const thermalFatigue = rule({
  id: 'thermal-fatigue',
  title: 'Temperature cycles to be shown by test',
  why: 'Every swing works the solder a little; a cycling test stands for the service only if its cycles, converted, are as many as the service brings.',
  formula:
    'cycles of the test ≥ Σ cycles of service/factor; factor = (ΔT_test/ΔT_use)^n · slowness^m · exp(B · (1/T_use − 1/T_test))',
  stage: 'specification',
  version: 2,
  reads: {
    cycles: optional(useCycles),
    steady: optional(steadyService),
    test: optional(cycleTest),
    alloy: optional(solderAlloy),
    years: serviceYears,
    family: alloyFamily,
    guard: testCyclesGuard,
  },
  judge({ cycles, steady, test: tests, alloy, years, family, guard }) {
    const limit = 'The test’s cycles, converted to service, are at least those of the service life'
    if (cycles === undefined)
      return steady
        ? notApplicable('Service is stated to have no temperature cycles.')
        : undetermined(
            'No temperature cycles in service are specified, nor that it has none.',
            [useCycles.label],
            limit,
          )
    if (alloy !== undefined && !meltsAsItsFamily(ALLOYS[alloy]))
      return undetermined(
        `No constants of acceleration are published for ${ALLOYS[alloy].label}.`,
        [`constants of acceleration of ${ALLOYS[alloy].label}`],
        limit,
      )
    const test = tests?.[0]
    if (!test) {
      return undetermined(
        'Service has temperature cycles, but no test is specified to show the joints’ life.',
        [cycleTest.label],
        limit,
      )
    }
    const models = fatigueModelsFor(family)
    const needs = models.map((model) => ({ model, needed: cyclesNeeded(model, test, cycles, years) }))
    const worst = needs.reduce((max, other) => (other.needed > max.needed ? other : max))
    const margin = {
      found: test.cycles,
      limit: worst.needed,
      unit: 'cycles',
      direction: 'at least',
      guardBand: (guard.value / 100) * worst.needed,
    } as const
    const verdict = verdictOn(margin)
    const value = Math.ceil(worst.needed * (1 + guard.value / 100))
    return {
      verdict,
      found: `${test.test} asks ${formatQuantity(test.cycles, 'cycles', 6)}; ${formatQuantity(years, 'years')} of service need ${needs.map(({ model, needed }) => `${formatQuantity(Math.ceil(needed), 'cycles', 6)} by ${modelLabel(model)}`).join(', ')}.`,
      limit,
      margin,
      measured: {
        test: test.test,
        service: measure(years, 'years'),
        ...Object.fromEntries(
          needs.map(({ model, needed }) => [`needed by ${model.key}`, measure(needed, 'cycles')]),
        ),
      },
      working: cycles.flatMap((cycle) => workingOf(worst.model, test, cycle, years)),
      sources: models.map((model) => model.source),
      ...(verdict !== 'meets' && {
        remedy: {
          message: `Test for at least ${formatQuantity(value, 'cycles', 6)}, or with a wider swing.`,
        },
      }),
      notes: [
        SLOWNESS_DIRECTION,
        ...new Set(models.map((model) => model.caution)),
        ...(family === 'lead-free'
          ? ['No set of constants is agreed for tin-silver-copper: the greatest need of those known decides.']
          : []),
      ],
      cautions: [
        'An extrapolation for pins in plated holes: show their life by test and microsection, not by this number alone.',
      ],
    }
  },
})

/** Test cycles that stand for all cycles of the service, damage added up (Palmgren–Miner). */
const cyclesNeeded = (
  model: NorrisLandzbergConstants,
  test: CycleTest,
  cycles: readonly UseCycle[],
  years: number,
): number => cycles.reduce((sum, cycle) => sum + testCyclesFor(model, test, cycle, years), 0)

function workingOf(
  model: NorrisLandzbergConstants,
  test: CycleTest,
  cycle: UseCycle,
  years: number,
): WorkingLine[] {
  const { swingTerm, slownessTerm, temperatureTerm, factor } = accelerate(model, test, cycle)
  const print = (value: number): string => formatQuantity(value, '1')
  return [
    {
      label: `One test cycle for “${cycle.cycle}”`,
      formula: '(ΔT_test/ΔT_use)^n · (slowness)^m · exp(B · (1/T_use − 1/T_test))',
      numbers: `${modelLabel(model)}: ${print(swingTerm)} · ${print(slownessTerm)} · ${print(temperatureTerm)}`,
      result: `${print(factor)} cycles of use`,
    },
    {
      label: 'Test cycles needed for it',
      formula: 'cycles a year · years/factor',
      numbers: `${formatQuantity(cycle.perYear, '1')} · ${formatQuantity(years, '1')}/${print(factor)}`,
      result: formatQuantity(testCyclesFor(model, test, cycle, years), 'cycles'),
    },
  ]
}
