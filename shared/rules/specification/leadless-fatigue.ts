import { LAMINATES, type Laminate } from '@/shared/materials/laminates'
import { ALLOYS, meltsAsItsFamily } from '@/shared/materials/alloys'
import { fatigueShareFailedMax } from '@/shared/plan/limits/thermal-fatigue'
import { leadlessFatigueGuard } from '@/shared/plan/limits/specification-guards'
import { surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import { laminate } from '@/shared/plan/parameters/laminate'
import { alloyFamily, serviceYears } from '@/shared/plan/parameters/programme'
import {
  leadlessParts,
  leadlessPresent,
  steadyService,
  useCycles,
  type LeadlessPart,
  type UseCycle,
} from '@/shared/plan/parameters/thermal-fatigue'
import { formatQuantity } from '@/shared/quantity/format'
import { undetermined, type Judged, type Part } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts, partOn } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import {
  cyclesAtShareFailed,
  ENGELMAIER,
  engelmaierExponent,
  leadlessShearStrain,
  medianCyclesToFailure,
  SPREAD_SHAPES,
} from '@/shared/reliability/models/engelmaier'

export const leadlessFatigue = rule({
  id: 'leadless-fatigue',
  title: 'Fatigue of leadless parts',
  why: 'A stiff part that expands less than the board shears its outermost joints at every swing; the larger the part and the lower the joint, the sooner they crack.',
  formula:
    'Σ cycles/N(x) ≤ 1; N₅₀ = ½ · (2ε_f/Δγ)^(−1/c), Δγ = L/h · |Δα · ΔT|; N(x) = N₅₀ · (ln(1 − x)/ln ½)^(1/4)',
  stage: 'specification',
  version: 2,
  reads: {
    parts: optional(leadlessParts),
    present: optional(leadlessPresent),
    surfaceMount: optional(surfaceMountJoints),
    cycles: optional(useCycles),
    steady: optional(steadyService),
    alloy: optional(solderAlloy),
    laminate,
    years: serviceYears,
    family: alloyFamily,
    max: fatigueShareFailedMax,
    guard: leadlessFatigueGuard,
  },
  judge({ parts: listed, cycles, laminate: key, years, family, alloy, max, guard, ...stated }) {
    const limit = `At most ${formatQuantity(max.value, '%')} of the joints failed at the end of service (${max.document})`
    const sources = [ENGELMAIER.source, max.limit.byDefault.from]
    if (listed === undefined) return withoutParts(stated, limit)
    if (cycles === undefined)
      return stated.steady
        ? notApplicable('Service is stated to have no temperature cycles.')
        : undetermined(
            'Leadless parts are listed, but no temperature cycles in service.',
            [useCycles.label],
            limit,
          )
    if (alloy !== undefined && !meltsAsItsFamily(ALLOYS[alloy]))
      return undetermined(
        `The model has no constants for ${ALLOYS[alloy].label}.`,
        [`constants of fatigue of ${ALLOYS[alloy].label}`],
        limit,
      )
    const { inPlaneExpansionPpmK: board, label }: Laminate = LAMINATES[key]
    if (board === undefined) {
      return undetermined(
        `The in-plane expansion of ${label} is not in the table.`,
        ['the in-plane expansion of the laminate'],
        limit,
      )
    }
    return judgedByParts({
      parts: listed.map((part) =>
        forFamily(
          judgePart(part, {
            boardPpmK: board,
            cycles,
            years,
            shareFailed: max.value / 100,
            guardDamage: guard.value / 100,
          }),
          family,
        ),
      ),
      noun: 'leadless parts',
      limit,
      working: [
        {
          label: 'Cycles to a share of failures',
          formula:
            'N₅₀ = ½ · (2ε_f/Δγ)^(−1/c), Δγ = L/h · |Δα · ΔT|, c = −0.442 − 6·10⁻⁴ · T̄ + 1.74·10⁻² · ln(1 + 360/t); N(x) = N₅₀ · (ln(1 − x)/ln ½)^(1/4)',
          numbers: `ε_f = 0.325, x = ${formatQuantity(max.value, '%')}, board ${formatQuantity(board, 'ppm/K')}`,
          result: 'damage = Σ cycles of service/N(x), by row below',
        },
      ],
      sources,
      notes: [ENGELMAIER.caution],
    })
  },
})

interface Stated {
  readonly present: boolean | undefined
  readonly surfaceMount: number | undefined
}

/** Without a list: nothing to judge where there are none, and a question where nobody has said so. */
function withoutParts({ present, surfaceMount }: Stated, limit: string): Judged {
  if (present !== true && surfaceMount === 0) return notApplicable('The board has no surface-mount joints.')
  if (present === false) return notApplicable('The board is stated to have no leadless parts.')
  if (present)
    return undetermined('Leadless parts are on the board, and none is listed.', [leadlessParts.label], limit)
  return surfaceMount === undefined
    ? undetermined(
        'It is not specified whether the board has surface-mount joints.',
        [surfaceMountJoints.label],
        limit,
      )
    : undetermined(
        'The board has surface-mount joints, and it is not specified whether parts without leads are among them.',
        [leadlessPresent.label],
        limit,
      )
}

/** The constants are those of tin-lead: for lead-free they can warn, not acquit. */
const forFamily = (part: Part, family: 'tin-lead' | 'lead-free'): Part =>
  family === 'lead-free' && part.verdict === 'meets'
    ? {
        ...part,
        verdict: 'marginal',
        measured: { constants: 'tin-lead', solder: family },
        found: `${part.found}, by constants of tin-lead`,
      }
    : part

interface Terms {
  readonly boardPpmK: number
  readonly cycles: readonly UseCycle[]
  readonly years: number
  readonly shareFailed: number
  /** Of the life, kept free. */
  readonly guardDamage: number
}

/** Share of the life used up, damage of all swings added up; at 1 the allowed share has failed. */
function judgePart(
  { part: subject, halfSpanMm, heightMm, expansionPpmK }: LeadlessPart,
  { boardPpmK, cycles, years, shareFailed, guardDamage }: Terms,
): Part {
  const damage = cycles.reduce((sum, { swingK, hottestC, perYear, dwellMin }) => {
    const strain = leadlessShearStrain({
      halfSpanMm,
      heightMm,
      expansionMismatchPpmPerK: boardPpmK - expansionPpmK,
      swingK,
    })
    if (!(strain > 0)) return sum
    const median = medianCyclesToFailure(strain, engelmaierExponent(hottestC - swingK / 2, dwellMin))
    const allowed = cyclesAtShareFailed(median, shareFailed, SPREAD_SHAPES['stiff leadless'])
    return sum + (perYear * years) / allowed
  }, 0)
  const part = partOn({
    subject,
    found: `${formatQuantity(damage * 100, '%', 3)} of the allowed fatigue life is used up by service`,
    margin: { found: damage, limit: 1, unit: '1', direction: 'at most', guardBand: guardDamage },
  })
  return part.verdict === 'meets'
    ? part
    : {
        ...part,
        remedy: {
          message: `${subject}: use a smaller or leaded part, a higher joint, or a laminate nearer to it in expansion.`,
        },
      }
}
