import type { Margin } from '@/shared/rules/finding'
import type { LotSampleFound } from './lot-sample'
import { memory } from '@/shared/memo'
import type { SampledLot } from './sampled-series'
import type { SampledMethod } from '@/shared/lot-tests/sampled-methods'
import type { Question } from './sampled-question'
import { acceptanceNumber, firstAccepts, rejectionNumber, type CountingPlan } from './sampling-plan'
import type { SamplingInputs } from './sampling-reads'
import type { SpecimenTally } from '@/shared/lot-tests/specimen-tally'

/** Bad pieces against the acceptance number, and the worst reading of the good ones against its limit. */
export function marginsOf(
  plan: SampledLot['plan'],
  sample: LotSampleFound,
  question: Question,
  { variablesGuard }: Pick<SamplingInputs, 'variablesGuard'>,
): Margin[] {
  const margins: Margin[] = []
  if (plan.kind === 'variables') {
    if (sample.variables) {
      margins.push({
        found: sample.variables.qualityIndex,
        limit: plan.acceptabilityConstant,
        unit: '1',
        direction: 'at least',
        guardBand: (variablesGuard.value / 100) * plan.acceptabilityConstant,
      })
    }
    return margins
  }
  const { nonconforming, accept } = countOf(plan, sample)
  const counted: Margin = {
    found: nonconforming,
    limit: accept,
    unit: 'pieces',
    direction: 'at most',
    guardBand: accept > 0 ? 1 : 0,
  }
  const worst = worstOfTheGood(sample, question.method)
  const { reading } = question.method
  if (reading && worst !== undefined) {
    const direction = reading.worseIs === 'greater' ? 'at most' : 'at least'
    margins.push({
      found: worst,
      limit: question.governing.value,
      unit: reading.unit,
      direction,
      guardBand: question.guardBand,
    })
  }
  // The count leads where anything is bad: it decides.
  return nonconforming > 0 ? [counted, ...margins] : [...margins, counted]
}

/** The count that decides: of the first sample of a double plan where that accepts, else of all. */
function countOf(plan: CountingPlan, { nonconforming, nonconformingInFirst, outcome }: LotSampleFound) {
  if (plan.kind === 'double' && firstAccepts(plan, nonconformingInFirst))
    return { nonconforming: nonconformingInFirst!, accept: plan.firstAccept }
  const inGap = outcome.decided === 'accepted in the gap'
  return { nonconforming, accept: inGap ? rejectionNumber(plan) - 1 : acceptanceNumber(plan) }
}

const rememberedWorst = memory<SpecimenTally, number | undefined>(1)
const worstOfTheGood = ({ tally }: LotSampleFound, { reading }: SampledMethod): number | undefined =>
  rememberedWorst(tally, [reading?.worseIs], () => {
    let worst: number | undefined
    for (const [specimen, value] of tally.worstBySpecimen) {
      if (tally.faults.get(specimen) !== undefined) continue
      const isWorse = worst === undefined || (reading?.worseIs === 'smaller' ? value < worst : value > worst)
      if (isWorse) worst = value
    }
    return worst
  })
