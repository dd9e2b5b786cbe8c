import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import { platingCapabilityMin, platingConfidenceMin } from '@/shared/plan/limits/evaluation-plating'
import { platingThickness } from '@/shared/methods/plating-thickness'
import { platingIndexes, unitsEnough, type PlatingIndex } from '@/shared/plating/plating-index'
import { platingReads } from '@/shared/plating/plating-reads'
import { formatAgainst, formatNumber, formatQuantity } from '@/shared/quantity/format'
import {
  undetermined,
  type Judged,
  type Margin,
  type Part,
  type Verdict,
  type WorkingLine,
} from '@/shared/rules/finding'
import { measure, count } from '@/shared/rules/measure'
import { notApplicable } from '@/shared/rules/not-applicable'
import { optional, rule } from '@/shared/rules/rule'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { spokenByWorst, worstPart } from '@/shared/rules/worst-part'
import { fractionOf } from '@/shared/plan/limit-fraction'
import { countingReads } from '@/shared/lot-tests/counted-tests'
import { fromMemory } from '@/shared/sources/provenance'

const SOURCES = [
  fromMemory('NIST/SEMATECH e-Handbook 6.1.6, index against one limit'),
  fromMemory('Chou, Owen and Borrego, Journal of Quality Technology 22 (1990) 223: its exact lower bound'),
  fromMemory('Mee and Owen, J. Am. Stat. Assoc. 78 (1983) 901: readings in groups'),
]

export const platingCapability = rule({
  id: 'plating-capability',
  title: 'Capability of the plating',
  why: 'A lot may reach its minimum by luck. How far the mean keeps from the minimum, in spreads, says how near the lot came to it, and over lots it says what the plater can do.',
  formula: '(mean − least)/3s with its lower bound ≥ least, specimens and lots as the units',
  stage: 'evaluation',
  version: 2,
  reads: {
    ...countingReads,
    ...platingReads,
    needed: optional(lotsNeeded),
    min: platingCapabilityMin,
    confidence: platingConfidenceMin,
  },
  judge(inputs): Judged {
    const { min, needed = [] } = inputs
    const confidence = fractionOf(inputs.confidence)
    const limit = `(mean − least thickness) ÷ 3 s at least ${formatNumber(min.value)} (${governingName(min)}), shown with ${inputs.confidence.value} % confidence`
    const judged = platingIndexes(inputs, confidence).map((one) => judgeIndex(one, min.value, confidence))
    if (judged.length === 0) {
      return needed.some(({ method }) => method === platingThickness.key)
        ? undetermined('No plating is measured yet against a specified minimum.', [MISSING], limit)
        : notApplicable('No plating is to be measured against a specified minimum, and none was.')
    }
    const counted = judged.filter(({ part }) => part.verdict !== 'not applicable')
    const parts = judged.map(({ part }) => part)
    const speaker = counted.find(({ part }) => part === worstPart(counted.map((one) => one.part)))!
    return {
      ...spokenByWorst(parts),
      limit,
      working: speaker.working,
      sources: [...SOURCES, sourceOf(min)],
      notes: [
        'The index of a lot speaks for that lot. For the next it speaks only over several lots, and if the plating was in a stable state.',
      ],
    }
  },
})

const MISSING = 'plating-thickness readings of a lot with a specified minimum'

interface JudgedIndex {
  readonly part: Part
  readonly working: readonly WorkingLine[]
}

function judgeIndex(one: PlatingIndex, minIndex: number, confidence: number): JudgedIndex {
  const { subject, about, lots, readings, units, result } = one
  if ('open' in result) {
    const remedy = { message: 'Measure more places over more specimens.' }
    const measured = { readings: count(readings), specimens: count(units.count) }
    return {
      part: { subject, about, verdict: 'undetermined', measured, found: result.open, remedy },
      working: [],
    }
  }
  const { index, bound } = result
  const verdict = verdictOf(one, result, minIndex)
  const margin: Margin = {
    found: verdict === 'fails' ? index : bound,
    limit: minIndex,
    unit: '1',
    direction: 'at least',
    guardBand: 0,
  }
  const pair = formatAgainst(index, minIndex, '1')
  const isShown = verdict === 'meets' || verdict === 'fails'
  const enough = isShown ? undefined : unitsEnough(one, minIndex, confidence)
  const over = units.of === 'lots' ? `${units.count} lots` : `${units.count} specimens`
  const claim = verdict === 'not applicable' ? ': too few lots to claim anything over lots' : ''
  return {
    part: {
      subject,
      about,
      verdict,
      measured: {
        readings: count(readings),
        lots: count(lots.length),
        units: count(units.count),
        index: measure(index, '1'),
        confidence: measure(confidence * 100, '%'),
        bound: measure(bound, '1'),
        ...(enough !== undefined && { enough: count(enough) }),
      },
      found: `index ${pair.found} (at least ${pair.limit}) from ${readings} readings of ${over}; with ${formatNumber(confidence * 100)} % confidence at least ${formatNumber(bound, 3)}${claim}.`,
      margin,
      ...(!isShown && { remedy: { message: moreWanted(one, enough) } }),
    },
    working: workingOf(one, result, confidence),
  }
}

type Index = Exclude<PlatingIndex['result'], { readonly open: string }>

/** What a lot shows has to be shown; over lots a few prove nothing either way, and nothing is claimed. */
function verdictOf({ units }: PlatingIndex, { index, bound }: Index, min: number): Verdict {
  if (bound >= min) return 'meets'
  if (index < min) return 'fails'
  return units.of === 'lots' ? 'not applicable' : 'undetermined'
}

const moreWanted = ({ units }: PlatingIndex, enough: number | undefined): string =>
  enough === undefined
    ? `No number of ${units.of} shows an index so near the least.`
    : `With the same mean and spread ${enough} ${units.of} would show it: ${enough - units.count} more.`

function workingOf(
  { minUm }: PlatingIndex,
  { spread, index, bound }: Index,
  confidence: number,
): WorkingLine[] {
  return [
    ...spread.components.map(({ level, meanSquare, degreesOfFreedom, weight }): WorkingLine => ({
      label: `Spread between ${level}`,
      formula: 'its share of the variance is the weight times the mean square',
      numbers: `weight ${formatNumber(weight, 3)}, mean square ${formatNumber(meanSquare)} µm², ${degreesOfFreedom} degrees of freedom`,
      result: formatQuantity(Math.sqrt(weight * meanSquare), 'µm'),
    })),
    {
      label: 'Index',
      formula: '(mean − least) ÷ 3 s',
      numbers: `(${formatNumber(spread.mean)} − ${formatNumber(minUm)}) ÷ (3 · ${formatNumber(spread.standardDeviation)})`,
      result: formatNumber(index),
    },
    {
      label: 'Lower bound',
      formula:
        'the index for which 3 · index · √n, noncentral t with f degrees of freedom, exceeds what was seen only once in 1 ÷ (1 − confidence)',
      numbers: `n worth ${formatNumber(spread.effectiveReadings)}, f ${formatNumber(spread.degreesOfFreedom)}, confidence ${confidence}`,
      result: formatNumber(bound),
    },
  ]
}
