import { isUsable } from '@/shared/records/lot-identity'
import { governingName } from '@/shared/rules/governing-source'
import { ageingMethod } from '@/shared/materials/ageing-methods'
import { fromMemory } from '@/shared/sources/provenance'
import { TEST_SOLDERS } from '@/shared/materials/test-solders'
import { testTemperatureToleranceMax } from '@/shared/plan/limits/evaluation-solderability'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import type { Lot, LotTest } from '@/shared/records/lot'
import { SOLDERABILITY_METHODS, methodName } from '@/shared/methods/test-methods'
import { undetermined, type Judged, type Part, type Measured } from '@/shared/rules/finding'
import { lots } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import {
  conditionOf,
  unlikeConditions,
  type ConditionInputs,
  type ConditionDifference,
  differenceInWords,
  differenceMeasured,
} from '@/shared/lot-tests/condition-differences'
import { conditionInWords, type SpecifiedConditions } from '@/shared/lot-tests/stated-conditions'
import { testKey, testsAsked, type TestAsked } from '@/shared/lot-tests/tests-asked'
import { spokenByWorst } from '@/shared/rules/worst-part'
import { aboutLot } from '@/shared/records/lot-identity'
import { count } from '@/shared/rules/measure'

const SOURCES = [
  fromMemory('IEC 60068-2-20, Test Ta: solder, flux, temperature and ageing are part of the test'),
  fromMemory('MIL-STD-883 method 2003: 245 °C for leads'),
  fromMemory('J-STD-003: 235 °C for boards'),
]

export const testConditionsAlike = rule({
  id: 'test-conditions-alike',
  title: 'Solderability tested under the specified conditions',
  why: 'A hotter bath, a stronger flux or a skipped ageing turns a bad surface into a good result. Results under different conditions cannot be set side by side.',
  formula: 'alloy, flux, temperature and ageing of each test = those specified',
  stage: 'evaluation',
  version: 4,
  reads: {
    lots,
    conditions: testConditions,
    temperatureTolerance: testTemperatureToleranceMax,
    family: optional(alloyFamily),
  },
  judge(inputs): Judged {
    const { lots: all, conditions, temperatureTolerance: tolerance, family } = inputs
    const limit = `solder, flux and ageing as specified, the bath within ± ${formatNumber(tolerance.value)} K (${governingName(tolerance)})`
    const made = all.flatMap((lot) => SOLDERABILITY_METHODS.flatMap((method) => partOf(lot, method, inputs)))
    if (made.length === 0)
      return undetermined(
        'No solderability test of a lot is recorded yet.',
        ['a solderability test of a lot'],
        limit,
      )
    const spoken = spokenByWorst([...made, ...ofOtherFamily(conditions, family)])
    return {
      ...spoken,
      found: spoken.verdict === 'meets' ? 'Every solderability test was made as specified.' : spoken.found,
      limit,
      working: conditions.map((row) => ({
        label: `Specified for ${methodName(row.method)}`,
        result: `${TEST_SOLDERS[row.alloy].label}, ${formatQuantity(row.bathTemperatureC, '°C')}, ${ageingMethod(row.ageing)?.label ?? row.ageing}`,
      })),
      sources: SOURCES,
    }
  },
})

/** One lot under one method: nothing when the method was not used on it. */
function partOf(lot: Lot, method: string, inputs: ConditionInputs): Part[] {
  const tests = lot.tests.filter((test) => test.method === method)
  const unlike = tests
    .map((test) => ({ test, differences: unlikeConditions(lot, test, inputs) }))
    .filter(({ differences }) => differences.length > 0)
  if (tests.length === 0) return []
  const common = {
    subject: `lot ${lot.code}, ${methodName(method)}`,
    about: { ...aboutLot(lot), method },
    measured: unlikeMeasured(tests.length, unlike),
  }
  const untried = statedAndUntried(lot, method, inputs)
  if (untried.length > 0 && unlike.length < tests.length) {
    return [
      {
        ...common,
        verdict: isUsable(lot) ? 'undetermined' : 'not applicable',
        measured: { ...common.measured, untried: untried.map(testKey) },
        found: `not tested ${untried.map(({ condition, stated }) => conditionInWords(condition, stated)).join(', nor ')}, which is stated too.`,
        remedy: { message: 'Test a sample of the lot under each condition stated.' },
      },
    ]
  }
  if (unlike.length === 0) {
    return [{ ...common, verdict: 'meets', found: `${tests.length} made as specified.` }]
  }
  const message = unlike
    .map(({ test, differences }) => `${test.testedOn}: ${differences.map(differenceInWords).join('; ')}`)
    .join('. ')
  if (unlike.length < tests.length) {
    const found = `beside a test made as specified, kept for information and not compared (${message}).`
    return [{ ...common, verdict: 'meets', found }]
  }
  if (!isUsable(lot)) {
    return [{ ...common, verdict: 'not applicable', found: `rejected lot, not compared (${message}).` }]
  }
  return [
    {
      ...common,
      verdict: 'fails',
      found: `not compared, since made under other conditions (${message}).`,
      remedy: {
        message:
          'Test the lot under the specified conditions, or agree and specify other conditions for all lots.',
      },
    },
  ]
}

/** Conditions stated for the lot that none of its tests was made under, whatever else is wrong with a test. */
function statedAndUntried(lot: Lot, method: string, inputs: ConditionInputs): TestAsked[] {
  const alike = lot.tests.filter(
    (test) => test.method === method && unlikeConditions(lot, test, inputs).length === 0,
  )
  const made = new Set(alike.map((test) => conditionOf(lot, test, inputs)))
  return testsAsked(lot, method, inputs).filter(
    ({ condition }) => condition !== undefined && !made.has(condition),
  )
}

interface UnlikeTest {
  readonly test: LotTest
  readonly differences: readonly ConditionDifference[]
}

/** How many tests there are, and by number and day each that was made otherwise, with what differs. */
const unlikeMeasured = (tests: number, unlike: readonly UnlikeTest[]): Measured => ({
  tests: count(tests),
  ...Object.fromEntries(
    unlike.flatMap(({ test, differences }, index) =>
      differences.flatMap((difference) =>
        Object.entries(differenceMeasured(difference)).map(([name, value]) => [
          `${index + 1} ${test.testedOn} ${name}`,
          value,
        ]),
      ),
    ),
  ),
})

/** A tin-lead test says little about a lead-free joint, and the other way about: kept, and close at best. */
function ofOtherFamily(
  conditions: SpecifiedConditions,
  family: 'tin-lead' | 'lead-free' | undefined,
): Part[] {
  if (family === undefined) return []
  return conditions
    .filter(({ alloy }) => TEST_SOLDERS[alloy].family !== family)
    .map(({ method, alloy }) => ({
      subject: `${methodName(method)} as specified`,
      about: { method, alloy, matter: 'family' },
      verdict: 'marginal' as const,
      measured: { testedIn: TEST_SOLDERS[alloy].family, joints: family },
      found: `with ${TEST_SOLDERS[alloy].label}, while the joints are ${family}.`,
      remedy: { message: `Specify the test with a ${family} solder, or agree why this one will do.` },
    }))
}
