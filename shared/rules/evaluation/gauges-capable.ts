import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { gaugeShareGood } from '@/shared/plan/limits/evaluation-guards'
import {
  distinctCategoriesMin,
  gaugeShareMax,
  studyPartsMin,
  studyPeopleMin,
} from '@/shared/plan/limits/evaluation-instruments'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import { fromMemory } from '@/shared/sources/provenance'
import { formatAgainst, formatNumber, formatQuantity } from '@/shared/quantity/format'
import { byId } from '@/shared/instruments/calibration-status'
import { platingThickness } from '@/shared/methods/plating-thickness'
import type { Instrument } from '@/shared/records/instrument'
import type { Lot } from '@/shared/records/lot'
import { isUsable } from '@/shared/records/lot-identity'
import {
  undetermined,
  verdictOn,
  worstVerdict,
  type Judged,
  type Margin,
  type Part,
  type WorkingLine,
} from '@/shared/rules/finding'
import { measure, count } from '@/shared/rules/measure'
import { instruments, lots, recordsOf } from '@/shared/rules/record-source'
import { notApplicable } from '@/shared/rules/not-applicable'
import { optional, rule } from '@/shared/rules/rule'
import { studiedGauges, type StudiedGauge } from '@/shared/instruments/gauge-study'
import { spokenByWorst, worstPart } from '@/shared/rules/worst-part'
import { groupedBy } from '@/shared/grouped-by'

const SOURCE = fromMemory(
  'Measurement Systems Analysis, 4th edition (AIAG), chapter III: gauge study by analysis of variance',
)

export const gaugesCapable = rule({
  id: 'gauges-capable',
  title: 'Gauges fit for what they measure',
  why: 'Calibration says that an instrument is right on average. A gauge study says how far two people, or the same one twice, differ on the same piece: that spread is taken for the lot’s.',
  formula: 'gauge study: 100 · gauge/√(gauge² + parts²) ≤ most, and distinct categories 1.41 · parts/gauge',
  stage: 'evaluation',
  version: 3,
  reads: {
    lots,
    instruments,
    studies: recordsOf('gauge-reading', 'gauge-study readings'),
    needed: optional(lotsNeeded),
    share: gaugeShareMax,
    good: gaugeShareGood,
    minParts: studyPartsMin,
    minPeople: studyPeopleMin,
    categories: distinctCategoriesMin,
  },
  judge(inputs): Judged {
    const { lots: all, instruments: file, studies, share, categories, needed } = inputs
    const limit = `gauge spread at most ${formatQuantity(share.value, '%')} of the study’s (${governingName(share)}), ${categories.value} categories told apart (${governingName(categories)})`
    const studied = studiedGauges(studies)
    const uses = usesByTag(all, file)
    const judged = studied.map((one) => ({
      one,
      part: partOf(one, uses.get(one.instrumentTag) ?? [], {
        maxPct: share.value,
        goodPct: Math.min(inputs.good.value, share.value),
        minCategories: categories.value,
        minParts: inputs.minParts.value,
        minPeople: inputs.minPeople.value,
      }),
    }))
    const unstudied = thicknessGaugesWithoutStudy(all, file, studied)
    const parts = [...judged.map(({ part }) => part), ...unstudied]
    const base = { limit, sources: [SOURCE, sourceOf(share), sourceOf(inputs.minParts)] }
    if (parts.length === 0) {
      if (needed === undefined)
        return undetermined(
          'Which lots are to be judged by measured thickness is not specified, and no gauge study is recorded.',
          [lotsNeeded.label],
          limit,
        )
      return measuresThickness(needed)
        ? undetermined('Thickness is to be measured, and no gauge study is recorded.', [STUDY_WANTED], limit)
        : notApplicable('No gauge study is recorded, and no lot is or will be judged by measured thickness.')
    }
    const worst = worstPart(parts)
    const speaker = judged.find(({ part }) => part === worst)
    return { ...spokenByWorst(parts), working: speaker ? workingOf(speaker.one) : [], ...base }
  },
})

const STUDY_WANTED = 'a gauge study of the instrument that measures thickness'

const measuresThickness = (needed: readonly { readonly method: string }[]): boolean =>
  needed.some(({ method }) => method === platingThickness.key)

interface Asked {
  readonly maxPct: number
  readonly goodPct: number
  readonly minParts: number
  readonly minPeople: number
  readonly minCategories: number
}

function partOf(
  { study, instrumentTag, result }: StudiedGauge,
  uses: readonly GaugeUse[],
  asked: Asked,
): Part {
  const common = { subject: `${instrumentTag}, study ${study}`, about: { instrument: instrumentTag, study } }
  if ('incomplete' in result) {
    return {
      ...common,
      verdict: 'undetermined',
      measured: { fault: result.fault },
      found: `${result.incomplete}.`,
      remedy: { message: 'Complete the study.' },
    }
  }
  const more = moreWanted(result, asked)
  if (more.length > 0) {
    return {
      ...common,
      verdict: 'undetermined',
      measured: { parts: count(result.parts), people: count(result.appraisers) },
      found: `${result.parts} parts by ${result.appraisers} people are too few to tell the gauge’s spread from the pieces’.`,
      remedy: { message: `Add ${more.join(' and ')} to the study.` },
    }
  }
  const { gaugeShareOfTotalPct, distinctCategories } = result.figures
  const margins: Margin[] = [
    {
      found: gaugeShareOfTotalPct,
      limit: asked.maxPct,
      unit: '%',
      direction: 'at most',
      guardBand: asked.maxPct - asked.goodPct,
    },
    {
      found: distinctCategories,
      limit: asked.minCategories,
      unit: '1',
      direction: 'at least',
      guardBand: 0,
    },
  ]
  const verdict = worstVerdict(margins.map(verdictOn))
  const pair = formatAgainst(gaugeShareOfTotalPct, asked.maxPct, '%')
  const used =
    uses.length > 0 && verdict === 'fails' ? ` It was used for ${uses.map(useInWords).join('; ')}.` : ''
  return {
    ...common,
    verdict,
    measured: {
      gaugeShare: measure(gaugeShareOfTotalPct, '%'),
      gaugeShareMax: measure(asked.maxPct, '%'),
      categories: count(distinctCategories),
      categoriesMin: count(asked.minCategories),
      ...(verdict === 'fails' && {
        usedFor: uses.map(({ lot, method, testedOn }) => [lot, method, testedOn].join(' ')),
      }),
    },
    found: `gauge spread ${pair.found} of the study’s (at most ${pair.limit}), ${formatNumber(distinctCategories)} categories told apart.${used}`,
    margin: margins.find((margin) => verdictOn(margin) === verdict),
    remedy:
      verdict === 'fails'
        ? {
            message:
              'Mend what repeats badly (fixture, reading, person), study again, and repeat the tests made with it.',
          }
        : undefined,
  }
}

/** What a study lacks before its spreads say anything: a few pieces may happen to be alike. */
function moreWanted(
  { parts, appraisers }: { readonly parts: number; readonly appraisers: number },
  { minParts, minPeople }: Asked,
): string[] {
  const wanted = [
    { short: minParts - parts, of: 'pieces' },
    { short: minPeople - appraisers, of: 'people' },
  ]
  return wanted.flatMap(({ short, of }) => (short > 0 ? [`${short} more ${of}`] : []))
}

interface GaugeUse {
  readonly lot: string
  readonly method: string
  readonly testedOn: string
}

const useInWords = ({ lot, method, testedOn }: GaugeUse): string => `lot ${lot}, ${method} of ${testedOn}`

/** Which tests of lots that may be used rest on an instrument. */
function usesByTag(
  all: readonly Lot[],
  file: readonly Instrument[],
): ReadonlyMap<string, readonly GaugeUse[]> {
  const known = byId(file)
  const uses = all.filter(isUsable).flatMap((lot) =>
    lot.tests.flatMap(({ method, testedOn, instrumentId }) => {
      const tag = instrumentId === null ? undefined : known.get(instrumentId)?.tag
      return tag === undefined ? [] : [{ tag, use: { lot: lot.code, method, testedOn } }]
    }),
  )
  return groupedBy(
    uses,
    ({ tag }) => tag,
    ({ use }) => use,
  )
}

/** A thickness is a measured value whose spread is judged: its gauge ought to have been studied. */
function thicknessGaugesWithoutStudy(
  all: readonly Lot[],
  file: readonly Instrument[],
  studied: readonly StudiedGauge[],
): Part[] {
  const known = byId(file)
  const tags = new Set(
    all
      .filter(isUsable)
      .flatMap(({ tests }) => tests)
      .filter(({ method }) => method === platingThickness.key)
      .flatMap(({ instrumentId }) => known.get(instrumentId ?? '')?.tag ?? []),
  )
  return [...tags]
    .filter((tag) => !studied.some(({ instrumentTag }) => instrumentTag === tag))
    .map((tag) => ({
      subject: tag,
      about: { instrument: tag },
      verdict: 'undetermined' as const,
      found: 'measures plating thickness and has no gauge study: part of the spread it shows may be its own.',
      remedy: {
        message: 'Have two people measure ten pieces two or three times each, and enter the readings.',
      },
    }))
}

function workingOf({ result, readings }: StudiedGauge): WorkingLine[] {
  if ('incomplete' in result) return []
  const { byVariance, byRanges, figures } = result
  const line = (label: string, formula: string, value: number): WorkingLine => ({
    label,
    formula,
    result: formatNumber(value),
  })
  return [
    {
      label: 'Study',
      numbers: `${result.parts} parts × ${result.appraisers} people × ${result.trials} trials`,
      result: `${readings} readings; interaction ${byVariance.branch === 'pooled' ? 'pooled with the trials' : 'counted by itself'} (p ${formatNumber(byVariance.interactionPValue, 3)})`,
    },
    line('Repeatability', '√ mean square of the trials', byVariance.repeatability),
    line('Reproducibility', '√ (people + interaction)', byVariance.reproducibility),
    line('Gauge', '√ (repeatability² + reproducibility²)', byVariance.gauge),
    line('Parts', '√ part component', byVariance.parts),
    {
      label: 'Share of the study',
      formula: '100 · gauge ÷ √(gauge² + parts²)',
      result: formatQuantity(figures.gaugeShareOfTotalPct, '%'),
    },
    {
      label: 'Categories',
      formula: '1.41 · parts ÷ gauge, cut to whole',
      result: formatNumber(figures.distinctCategories),
    },
    ...(byRanges
      ? [line('Gauge by averages and ranges, for comparison', 'R̄ ÷ d₂ and ranges ÷ d₂*', byRanges.gauge)]
      : []),
  ]
}
