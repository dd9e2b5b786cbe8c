import { sourceOf } from '@/shared/rules/governing-source'
import { fromMemory, published } from '@/shared/sources/provenance'
import { distinctCategoriesMin, gaugeShareMax } from '@/shared/plan/limits/evaluation-instruments'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { byId } from '@/shared/instruments/calibration-status'
import type { Instrument } from '@/shared/records/instrument'
import type { Lot } from '@/shared/records/lot'
import { isUsable, kindAndPart, lotName, aboutLot } from '@/shared/records/lot-identity'
import {
  PLATING_PLACES,
  platingThickness as method,
  type PlatingPlace,
} from '@/shared/methods/plating-thickness'
import { undetermined, type Judged, type Part } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { recordsOf } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import { judgePlatingGroup } from '@/shared/plating/judge-plating-group'
import { platingOf, type PlatingOfLot, type PlatingReadings } from '@/shared/plating/plating-readings'
import { unfitGauges } from '@/shared/instruments/gauge-study'
import { platingDemandReads, platingReads, specificationFrom } from '@/shared/plating/plating-reads'
import { asksThickness, leadCoatToMeasure, type PlatingSpecification } from '@/shared/plating/plating-window'
import { countingReads } from '@/shared/lot-tests/counted-tests'
import { spokenByWorst, worstPart } from '@/shared/rules/worst-part'

const SOURCE = published(
  'NIST/SEMATECH e-Handbook 7.2.6.3, tolerance bounds: one-sided by the noncentral t, two-sided for a window with two limits',
)
const GROUPS_SOURCE = fromMemory(
  'Mee and Owen, J. Am. Stat. Assoc. 78 (1983) 901: tolerance factors where readings come in groups',
)

export const platingThickness = rule({
  id: 'plating-thickness',
  title: 'Plating thickness shown',
  why: 'A mean above the minimum lets half the lot lie below it. A tolerance bound says what share of all places reaches the minimum, and how sure a few readings make us.',
  formula: 'mean ∓ k · s on the right side of the limits, k the tolerance factor for coverage and confidence',
  stage: 'evaluation',
  version: 2,
  reads: {
    ...countingReads,
    ...platingReads,
    needed: lotsNeeded,
    holes: optional(leadHoles),
    studies: recordsOf('gauge-reading', 'gauge-study readings'),
    gaugeShare: gaugeShareMax,
    gaugeCategories: distinctCategoriesMin,
    ...platingDemandReads,
  },
  judge(inputs): Judged {
    const limit = `at least ${inputs.coverage.value} % of the places inside the specified thickness with ${inputs.platingConfidence.value} % confidence`
    const asked = new Set(inputs.needed.filter((row) => row.method === method.key).map(kindAndPart))
    const specification = specificationFrom(inputs)
    const lots = inputs.lots
      .filter(isUsable)
      .map((lot) => platingOf(lot, inputs))
      .filter(
        ({ lot, groups, tests }) =>
          groups.length + tests.excluded.length > 0 ||
          asked.has(kindAndPart(lot)) ||
          leadCoatToMeasure(lot, specification) !== undefined,
      )
    if (lots.length === 0) return nothingMeasured(asked.size > 0, specification, limit)

    const hasPlatedHoles = inputs.holes?.some(({ plated }) => plated) ?? false
    const unfit = unfitGauges(inputs.studies, {
      maxSharePct: inputs.gaugeShare.value,
      minCategories: inputs.gaugeCategories.value,
    })
    const groups = lots.flatMap((one) =>
      one.groups.map((group) => {
        const judged = judgePlatingGroup(group, inputs)
        return { ...judged, part: flagged(judged.part, group, inputs.instruments, unfit) }
      }),
    )
    const parts = [
      ...groups.map(({ part }) => part),
      ...lots.flatMap((one) => missingPlaces(one, hasPlatedHoles)),
      ...lots.flatMap((one) => missingLeadCoat(one, specification)),
    ]
    const spoken = spokenByWorst(parts)
    const speaker = worstPart(parts)
    return {
      ...spoken,
      limit,
      working: groups.find(({ part }) => part === speaker)?.working ?? [],
      sources: [
        SOURCE,
        GROUPS_SOURCE,
        sourceOf(inputs.voidShare),
        sourceOf(inputs.coverage),
        sourceOf(inputs.holeCopper),
      ],
      notes: [
        'The bound takes specimens as normal and independent; several readings on one specimen are alike and are counted as such. It speaks for this lot only.',
        ...lots.flatMap(({ lot, tests }) =>
          tests.excluded.map(
            ({ test, because }) => `Lot ${lot.code}, test of ${test.testedOn}, set aside: ${because}.`,
          ),
        ),
      ],
      cautions: method.cautions,
    }
  },
})

function nothingMeasured(asked: boolean, specification: PlatingSpecification, limit: string): Judged {
  const missing = ['plating-thickness readings of a lot']
  if (asked) return undetermined('Thickness readings are planned, and no lot has any yet.', missing, limit)
  return asksThickness(specification)
    ? undetermined('A plating thickness is specified, and no lot has been measured.', missing, limit)
    : notApplicable('No plating thickness is specified or planned to be measured, and none was.')
}

/** A result read with a gauge that a study shows to be unfit is close at best, and says so. */
function flagged(
  part: Part,
  { instrumentIds }: PlatingReadings,
  instruments: readonly Instrument[],
  unfit: ReadonlyMap<string, string>,
): Part {
  const tags = [...instrumentIds].flatMap((id) => byId(instruments).get(id)?.tag ?? [])
  const tag = tags.find((one) => unfit.has(one))
  if (tag === undefined) return part
  const study = unfit.get(tag) ?? ''
  const found = `${part.found} Read with ${tag}, which study ${study} shows to be unfit.`
  const measured = { ...part.measured, readWith: tag, unfitByStudy: study }
  return { ...part, found, measured, verdict: part.verdict === 'meets' ? 'marginal' : part.verdict }
}

/** Boards are plated on tracks and, where they have plated holes, in them. */
function missingPlaces({ lot, groups, tests }: PlatingOfLot, hasPlatedHoles: boolean): Part[] {
  const reasons = tests.excluded.map(({ test, because }) => `test of ${test.testedOn}: ${because}`)
  const why = reasons.length > 0 ? ` (no result counts: ${reasons.join('; ')})` : ''
  const places = placesOf(lot, hasPlatedHoles)
  if (places.length === 0 && groups.length > 0) return []
  if (places.length === 0) {
    return [
      {
        subject: lotName(lot),
        about: aboutLot(lot),
        verdict: 'undetermined',
        found: `no thickness reading${why}.`,
      },
    ]
  }
  return places
    .filter((place) => !groups.some((group) => group.place === place))
    .map((place) => ({
      subject: `${lotName(lot)}, ${PLATING_PLACES[place].label.toLowerCase()}`,
      about: { ...aboutLot(lot), place },
      verdict: 'undetermined' as const,
      found: `no thickness reading${why}.`,
      remedy: { message: 'Measure it on several specimens of the lot.' },
    }))
}

/** A thin noble coat of the leads that nobody measured, though another deposit of the lot may have been. */
function missingLeadCoat({ lot, groups }: PlatingOfLot, specification: PlatingSpecification): Part[] {
  const coat = leadCoatToMeasure(lot, specification)
  if (coat === undefined || groups.length === 0 || groups.some(({ deposit }) => deposit === coat)) return []
  return [
    {
      subject: `${lotName(lot)}, ${coat}`,
      about: { ...aboutLot(lot), deposit: coat },
      verdict: 'undetermined',
      found: `its ${coat} was not measured.`,
      remedy: { message: `Measure the ${coat} on leads of several specimens.` },
    },
  ]
}

/** Where a lot of its kind has to be measured; elsewhere any place will do. */
function placesOf({ kind }: Lot, hasPlatedHoles: boolean): readonly PlatingPlace[] {
  if (kind === 'component') return ['lead']
  if (kind !== 'bare board' && kind !== 'coupon') return []
  return hasPlatedHoles ? ['track', 'hole'] : ['track']
}
