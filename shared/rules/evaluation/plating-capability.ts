import { namedRuling, sourceOf } from '@/shared/rules/ruling-source'
import { fromMemory } from '@/shared/sources/provenance'
import { platingCapabilityLeast, platingConfidenceLeast } from '@/shared/plan/limits/evaluation-plating'
import { formatAgainst, formatNumber } from '@/shared/quantity/format'
import { verdictOn, type Judged, type Margin, type Part, type WorkingLine } from '@/shared/rules/finding'
import { measure, count } from '@/shared/rules/measure'
import { rule } from '@/shared/rules/rule'
import { platingIndexes, type PlatingIndex } from '@/shared/plating/plating-index'
import { platingReads } from '@/shared/plating/plating-reads'
import { fractionOf, standingReads } from '@/shared/sampling/sampling-reads'
import { spokenByWorst, worstPart } from '@/shared/rules/worst-part'

const SOURCE = fromMemory(
  'NIST/SEMATECH e-Handbook 6.1.6; bound by A. F. Bissell, Applied Statistics 39 (1990) 331',
)

export const platingCapability = rule({
  id: 'plating-capability',
  title: 'Capability of the plating',
  why: 'A lot may reach its minimum by luck. How far the mean keeps from the minimum, in spreads, says whether the next lot will too, and over lots it says what the plater can do.',
  formula: '(mean − least)/3s with its lower bound ≥ least, specimens and lots as the units',
  stage: 'evaluation',
  version: 1,
  reads: {
    ...standingReads,
    ...platingReads,
    least: platingCapabilityLeast,
    confidence: platingConfidenceLeast,
  },
  judge(inputs): Judged {
    const { least } = inputs
    const confidence = fractionOf(inputs.confidence)
    const limit = `(mean − least thickness) ÷ 3 s at least ${formatNumber(least.value)} (${namedRuling(least)})`
    const judged = platingIndexes(inputs, confidence).map((one) => judgeIndex(one, least.value, confidence))
    const base = { limit, sources: [SOURCE, sourceOf(least)] }
    if (judged.length === 0) {
      return {
        verdict: 'meets',
        found: 'No plating is measured against a specified minimum.',
        working: [],
        ...base,
      }
    }
    const parts = judged.map(({ part }) => part)
    const worst = worstPart(parts)
    const speaker = judged.find(({ part }) => part === worst)!
    return {
      ...spokenByWorst(parts),
      working: speaker.working,
      notes: [
        'An index speaks for tomorrow only if the plating was in a stable state; from a few lots nobody can know. The spread counted is that of all readings.',
      ],
      ...base,
    }
  },
})

function judgeIndex(
  { subject, about, lots, readings, leastUm, result }: PlatingIndex,
  leastIndex: number,
  confidence: number,
): { readonly part: Part; readonly working: readonly WorkingLine[] } {
  if ('open' in result) {
    const remedy = { says: 'Measure more places over more specimens.' }
    const measured = { readings: count(readings) }
    return {
      part: { subject, about, verdict: 'marginal', measured, found: result.open, remedy },
      working: [],
    }
  }
  const { index, bound } = result
  const margin: Margin = {
    found: index,
    limit: leastIndex,
    unit: '1',
    direction: 'at least',
    // What sampling error may have added: an index is meets only when its lower bound is.
    guardBand: Math.max(0, index - bound),
  }
  const pair = formatAgainst(index, leastIndex, '1')
  return {
    part: {
      subject,
      about,
      verdict: verdictOn(margin),
      measured: {
        readings: count(readings),
        lots: count(lots.length),
        confidence: measure(confidence * 100, '%'),
        bound: measure(bound, '1'),
      },
      found: `index ${pair.found} (at least ${pair.limit}) from ${readings} readings of ${lots.length} ${lots.length === 1 ? 'lot' : 'lots'}; with ${formatNumber(confidence * 100)} % confidence at least ${formatNumber(bound, 3)}.`,
      margin,
    },
    working: [
      {
        label: 'Index',
        formula: '(mean − least) ÷ 3 s',
        numbers: `(${formatNumber(result.mean)} − ${formatNumber(leastUm)}) ÷ (3 · ${formatNumber(result.spread)})`,
        result: formatNumber(index),
      },
      {
        label: 'Lower bound',
        formula: 'index − z · √(1 ÷ 9n + index² ÷ 2(n − 1))',
        numbers: `n ${readings}, confidence ${confidence}`,
        result: formatNumber(bound),
      },
    ],
  }
}
