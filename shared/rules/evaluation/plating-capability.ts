import { namedRuling, sourceOf } from '@/shared/rules/ruling-source'
import { fromMemory } from '@/shared/materials/source'
import { platingCapabilityLeast, platingConfidenceLeast } from '@/shared/plan/limits/evaluation-plating'
import { formatAgainst, formatNumber } from '@/shared/quantity/format'
import { isUsable, lotName, partKey } from '@/shared/records/lot-identity'
import { PLATING_PLACES } from '@/shared/records/methods/plating-thickness'
import { verdictOn, type Judged, type Margin, type Part, type WorkingLine } from '@/shared/rules/finding'
import { rule } from '@/shared/rules/rule'
import { cpkLowerBound } from '@/shared/statistics/capability/intervals'
import { mean, standardDeviation } from '@/shared/statistics/sample-moments'
import { platingOf, type PlatingReadings } from './plating-readings'
import { platingReads, specificationFrom } from './plating-reads'
import { platingWindow, type PlatingWindow } from './plating-window'
import { demandsFrom, fractionOf, standingReads } from './sampling-reads'
import { spokenByWorst, worstPart } from './worst-part'

const SOURCE = fromMemory(
  'NIST/SEMATECH e-Handbook 6.1.6; bound by A. F. Bissell, Applied Statistics 39 (1990) 331',
)
/** Fewer readings than this leave an index anywhere between good and bad. */
const FEWEST_READINGS = 10

export const platingCapability = rule({
  id: 'plating-capability',
  title: 'Capability of the plating',
  why: 'A lot may reach its minimum by luck. How far the mean keeps from the minimum, in spreads, says whether the next lot will too, and over lots it says what the plater can do.',
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
    const demands = demandsFrom(inputs)
    const specification = specificationFrom(inputs)
    const groups = inputs.lots.filter(isUsable).flatMap((lot) => platingOf(lot, demands).groups)
    const judged = pooled(groups).flatMap((series) => {
      const window = platingWindow(series[0]!, specification)
      return typeof window === 'string' ? [] : [judgeSeries(series, window, least.value, confidence)]
    })
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
    const speaker = judged.find(({ part }) => part === worstPart(parts))!
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

/** One supplier's readings of one deposit at one place of one part, over his lots. */
function pooled(groups: readonly PlatingReadings[]): PlatingReadings[][] {
  const series = new Map<string, PlatingReadings[]>()
  for (const group of groups) {
    const { lot, deposit, place } = group
    const key = [lot.kind, partKey(lot.part), partKey(lot.supplier), deposit, place].join('\n')
    const own = series.get(key)
    if (own) own.push(group)
    else series.set(key, [group])
  }
  return [...series.values()]
}

function judgeSeries(
  series: readonly PlatingReadings[],
  { leastUm }: PlatingWindow,
  leastIndex: number,
  confidence: number,
): { readonly part: Part; readonly working: readonly WorkingLine[] } {
  const { lot, deposit, place } = series[0]!
  const where = `${deposit}, ${PLATING_PLACES[place].label.toLowerCase()}`
  const subject = series.length === 1 ? `${lotName(lot)}, ${where}` : `${lot.supplier}, ${lot.part}, ${where}`
  const readings = series.flatMap(({ thicknessesUm }) => thicknessesUm)
  const open = (found: string) => ({
    part: {
      subject,
      verdict: 'marginal' as const,
      found,
      remedy: { says: 'Measure more places over more specimens.' },
    },
    working: [],
  })
  if (readings.length < FEWEST_READINGS || !readings.every(Number.isFinite)) {
    return open(
      `${readings.length} readings are too few for an index: at least ${FEWEST_READINGS} are wanted.`,
    )
  }
  const spread = standardDeviation(readings)
  if (!(spread > 0)) return open('all readings are alike: the instrument is too coarse to show the spread.')
  const centre = mean(readings)
  const index = (centre - leastUm) / (3 * spread)
  const bound = cpkLowerBound(
    index,
    { readings: readings.length, degreesOfFreedom: readings.length - 1 },
    confidence,
  )
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
      verdict: verdictOn(margin),
      found: `index ${pair.found} (at least ${pair.limit}) from ${readings.length} readings of ${series.length} ${series.length === 1 ? 'lot' : 'lots'}; with ${formatNumber(confidence * 100)} % confidence at least ${formatNumber(bound, 3)}.`,
      margin,
    },
    working: [
      {
        label: 'Index',
        formula: '(mean − least) ÷ 3 s',
        numbers: `(${formatNumber(centre)} − ${formatNumber(leastUm)}) ÷ (3 · ${formatNumber(spread)})`,
        result: formatNumber(index),
      },
      {
        label: 'Lower bound',
        formula: 'index − z · √(1 ÷ 9n + index² ÷ 2(n − 1))',
        numbers: `n ${readings.length}, confidence ${confidence}`,
        result: formatNumber(bound),
      },
    ],
  }
}
