import { BOARD_FINISHES, type BoardFinish } from '@/shared/materials/board-finishes'
import { ALLOYS, meltsAsItsFamily } from '@/shared/materials/alloys'
import { LAMINATES, type Laminate, type LaminateKey } from '@/shared/materials/laminates'
import { commonPractice, published } from '@/shared/sources/provenance'
import { floatShareUsed, throughExpansionPct } from '@/shared/physics/solder-exposure'
import { floatUsedMax } from '@/shared/plan/limits/laminate'
import { floatUsedGuard } from '@/shared/plan/limits/specification-guards'
import { boardFinish } from '@/shared/plan/parameters/finishes'
import {
  glassTransition,
  laminate,
  solderExposures,
  type SolderExposure,
} from '@/shared/plan/parameters/laminate'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { formatQuantity } from '@/shared/quantity/format'
import { verdictOn, worstVerdict, type Judged } from '@/shared/rules/finding'
import { optional, rule } from '@/shared/rules/rule'
import { measure, count } from '@/shared/rules/measure'

/** Hot-air levelling that the fabricator does, when the table does not list it. */
const LEVELLING: SolderExposure = {
  step: 'Levelling of the finish, not listed',
  kind: 'levelling',
  temperatureC: 260,
  seconds: 5,
  times: 1,
}

export const solderExposuresRule = rule({
  id: 'solder-exposures',
  title: 'Soldering heat the laminate bears',
  why: 'Each soldering strains barrels and bond; a laminate that has had too much blisters, measles or lifts its lands.',
  formula: 'Σ times · seconds/seconds the laminate floats at that temperature or above ≤ most',
  stage: 'specification',
  version: 2,
  reads: {
    laminate,
    exposures: solderExposures,
    finish: boardFinish,
    family: alloyFamily,
    certifiedTransition: optional(glassTransition),
    alloy: optional(solderAlloy),
    max: floatUsedMax,
    guard: floatUsedGuard,
  },
  judge({ laminate: key, exposures: listed, finish, family, certifiedTransition, alloy, max, guard }) {
    const grade: Laminate = LAMINATES[key]
    const exposures = exposuresCounted(listed, BOARD_FINISHES[finish])
    const unlisted = exposures.includes(LEVELLING)
    const hottest = exposures.reduce((max, row) => (row.temperatureC > max.temperatureC ? row : max))
    const share = floatShareUsed(grade.solderFloat, exposures)
    const common = {
      limit: `At most ${formatQuantity(max.value, '%')} of the time the laminate floats on solder (${max.document})`,
      sources: [
        grade.source,
        published(
          'One levelling of the finish counts as one solder shock (Coombs & Holden, Printed Circuits Handbook, 7th ed., 2016)',
        ),
        commonPractice('Exposure times add up in proportion; no published law'),
      ],
      notes: [
        ...(unlisted
          ? ['The finish is levelled in solder but no levelling is listed: one of 5 s at 260 °C is counted.']
          : []),
        ...expansionNote(grade, certifiedTransition ?? grade.glassTransitionC, hottest.temperatureC),
        ...(grade.note ? [grade.note] : []),
      ],
    }
    if (share === undefined) return tooHot(key, hottest, common)
    const margin = {
      found: share * 100,
      limit: max.value,
      unit: '%',
      direction: 'at most',
      guardBand: (guard.value / 100) * max.value,
    } as const
    // A lead-free solder that melts far below its family brings none of the family's heat.
    const hot = family === 'lead-free' && (alloy === undefined || meltsAsItsFamily(ALLOYS[alloy]))
    const leadFreeOnOrdinary = hot && !grade.leadFree
    const verdict = worstVerdict([verdictOn(margin), leadFreeOnOrdinary ? 'marginal' : 'meets'])
    return {
      verdict,
      found: `${exposures.reduce((sum, row) => sum + row.times, 0)} exposures use up ${formatQuantity(share * 100, '%', 3)} of what ${grade.label} bears.${leadFreeOnOrdinary ? ' The grade is not made for the heat of lead-free soldering.' : ''}`,
      margin,
      measured: {
        laminate: key,
        exposures: count(exposures.reduce((sum, row) => sum + row.times, 0)),
        forLeadFree: grade.leadFree,
        solder: family,
        hotSolder: hot,
      },
      working: exposures.map((row) => ({
        label: row.step,
        formula: 'times · seconds/seconds the laminate floats at that temperature or above',
        numbers: `${row.times} · ${formatQuantity(row.seconds, 's')} at ${formatQuantity(row.temperatureC, '°C')}`,
        result: formatQuantity((floatShareUsed(grade.solderFloat, [row]) ?? 0) * 100, '%', 3),
      })),
      ...(verdict !== 'meets' && {
        remedy: {
          message:
            'Allow fewer or shorter exposures (rework first), or choose a laminate that floats longer.',
        },
      }),
      ...common,
    }
  },
})

/** Every exposure that counts: those listed, and the levelling that a dipped finish has had unlisted. */
export function exposuresCounted(
  listed: readonly SolderExposure[],
  { hotDipped }: Pick<BoardFinish, 'hotDipped'>,
): readonly SolderExposure[] {
  return hotDipped && !listed.some((row) => row.kind === 'levelling') ? [LEVELLING, ...listed] : listed
}

function tooHot(
  key: LaminateKey,
  hottest: SolderExposure,
  common: Pick<Judged, 'limit' | 'sources' | 'notes'>,
): Judged {
  const grade: Laminate = LAMINATES[key]
  const last = grade.solderFloat[grade.solderFloat.length - 1]
  return {
    verdict: 'fails',
    measured: {
      laminate: key,
      kind: hottest.kind,
      ...(hottest !== LEVELLING && { step: hottest.step }),
      temperature: measure(hottest.temperatureC, '°C'),
      hottestFloat: measure(last?.temperatureC ?? 0, '°C'),
    },
    found: `${hottest.step} at ${formatQuantity(hottest.temperatureC, '°C')} is hotter than any float known of ${grade.label} (${formatQuantity(last?.temperatureC ?? 0, '°C')}).`,
    working: [],
    remedy: {
      message:
        'Solder cooler, give the temperature of the joint and not of the tip, or choose another laminate.',
    },
    ...common,
  }
}

function expansionNote(grade: Laminate, transitionC: number, peakC: number): string[] {
  if (!grade.throughExpansionPpmK) return []
  const percent = throughExpansionPct(grade.throughExpansionPpmK, transitionC, peakC)
  return [
    `From 20 °C to ${formatQuantity(peakC, '°C')} the laminate grows by ${formatQuantity(percent, '%', 2)} in thickness if it warms through, and the barrels with it.`,
  ]
}
