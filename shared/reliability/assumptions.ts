import { computed, fromMemory } from '@/shared/sources/provenance'
import { demonstrationConfidenceMin } from '@/shared/plan/limits/assessment-proof'
import { lifeCyclesNeeded } from '@/shared/plan/parameters/assessment-proof'
import { boardQuality, failureRateEdition, survivalTarget } from '@/shared/plan/parameters/joint-budget'
import type { Parameter, ValueOf } from '@/shared/plan/parameter'
import { alloyFamily, environment, serviceYears } from '@/shared/plan/parameters/programme'
import { useCycles } from '@/shared/plan/parameters/thermal-fatigue'
import { governingRequirement } from '@/shared/plan/requirement'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import type { Facts } from '@/shared/rules/facts'
import {
  CONNECTION_BASE_RATES,
  ENVIRONMENT_FACTORS,
  ENVIRONMENT_SOURCE,
} from '@/shared/reliability/models/connection-rates'
import { ENGELMAIER } from '@/shared/reliability/models/engelmaier'
import { modelLabel } from '@/shared/reliability/models/model'
import { NORRIS_LANDZBERG } from '@/shared/reliability/models/norris-landzberg'
import type { Source } from '@/shared/sources/source'
import { PRESUMED_SHAPE, type LifeTestShown } from './life-tests-shown'
import type { ProgrammeTarget } from './programme-target'
import { sourceOf } from '@/shared/rules/governing-source'

/** One thing taken for granted on the way to a figure. */
export interface Assumption {
  readonly what: string
  readonly value: string
  readonly source: Source
  /** Who answers for it: a specified value, a limit, a life test's records, or nobody but the model. */
  readonly by:
    { readonly kind: 'parameter' | 'limit' | 'life test'; readonly key: string } | { readonly kind: 'model' }
}

/** Boltzmann's constant, eV/K (exact since 2019). */
const BOLTZMANN_EV_PER_K = 8.617333262e-5

/** Everything that the reliability figures of a programme take for granted, with where each comes from. */
export function assumptionsOf(
  { values, requirements }: Pick<Facts, 'values' | 'requirements'>,
  target: ProgrammeTarget,
  tests: readonly LifeTestShown[],
): Assumption[] {
  const read = <P extends Parameter>({ key }: P): ValueOf<P> | undefined =>
    values.get(key) as ValueOf<P> | undefined
  return [
    {
      what: 'The board holds while every joint holds; each fails at a constant rate',
      value: `${target.joints} joints in series`,
      source: fromMemory('The series model at constant rates that MIL-HDBK-217F presumes'),
      by: { kind: 'model' },
    },
    parameter(survivalTarget.key, 'Boards to outlive service', formatQuantity(target.survival * 100, '%', 6)),
    parameter(
      serviceYears.key,
      'Service life, always switched on',
      `${formatQuantity(target.serviceYears, 'years')} of 8760 h`,
    ),
    ...environmentRows(read(environment)),
    {
      what: 'Base failure rates',
      value: { 'notice-2': 'Notice 2, 1995', base: 'base issue, 1991', none: 'the higher of both issues' }[
        read(failureRateEdition) ?? 'none'
      ],
      source: CONNECTION_BASE_RATES[0].source,
      by: { kind: 'parameter', key: failureRateEdition.key },
    },
    {
      what: 'Quality factor of the bare board',
      value: {
        qualified: '1: military specification or top class',
        lower: '2: lower',
        none: 'not specified',
      }[read(boardQuality) ?? 'none'],
      source: ENVIRONMENT_SOURCE,
      by: { kind: 'parameter', key: boardQuality.key },
    },
    ...testRows(read, target, tests),
    {
      what: 'Confidence of what is shown, one-sided',
      value: formatQuantity(target.confidence * 100, '%'),
      source: sourceOf(governingRequirement(demonstrationConfidenceMin, requirements)),
      by: { kind: 'limit', key: demonstrationConfidenceMin.key },
    },
  ]
}

function environmentRows(letters: ValueOf<typeof environment> | undefined): Assumption[] {
  const row = ENVIRONMENT_FACTORS.find((candidate) => candidate.letters === letters)
  if (!row) return []
  return [
    {
      what: `Environment ${row.letters}: ${row.name}`,
      value: `×${row.platedHole} on plated holes, ×${row.connection} on other joints`,
      source: ENVIRONMENT_SOURCE,
      by: { kind: 'parameter', key: environment.key },
    },
  ]
}

function testRows(
  read: <P extends Parameter>(wanted: P) => ValueOf<P> | undefined,
  target: ProgrammeTarget,
  tests: readonly LifeTestShown[],
): Assumption[] {
  if (tests.length === 0) return []
  const families = NORRIS_LANDZBERG.filter(
    ({ family }) => (family === 'tin-lead') === (read(alloyFamily) === 'tin-lead'),
  )
  return [
    {
      what: 'Temperature cycles of a service life',
      value:
        target.lifeCycles === undefined ? 'not specified' : formatQuantity(target.lifeCycles, 'cycles', 6),
      source: computed('As specified; left open, cycles a year times years'),
      by: {
        kind: 'parameter',
        key: read(lifeCyclesNeeded) === undefined ? useCycles.key : lifeCyclesNeeded.key,
      },
    },
    ...tests.flatMap(({ test, accelerations }) =>
      accelerations.map(({ factor, model }): Assumption => ({
        what: `Acceleration of ${test}`,
        value: `${formatNumber(factor)} service cycles a test cycle`,
        source: model
          ? { cite: model, how: 'computed' }
          : { cite: 'No model is named: a claim, not a result', how: 'from memory' },
        by: { kind: 'life test', key: test },
      })),
    ),
    ...families.map((model): Assumption => ({
      what: `Activation of fatigue, ${modelLabel(model)}`,
      value: `${model.temperatureK} K (${formatNumber(model.temperatureK * BOLTZMANN_EV_PER_K, 3)} eV), swing to the power ${model.swingExponent}`,
      source: model.source,
      by: { kind: 'model' },
    })),
    {
      what: 'Weibull shape where too few failed to tell it (Weibayes)',
      value: formatNumber(PRESUMED_SHAPE),
      source: ENGELMAIER.source,
      by: { kind: 'model' },
    },
  ]
}

const parameter = (key: string, what: string, value: string): Assumption => ({
  what,
  value,
  source: computed('The programme’s own specification'),
  by: { kind: 'parameter', key },
})
