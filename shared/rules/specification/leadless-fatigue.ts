import { LAMINATES, type Laminate } from '@/shared/materials/laminates'
import { fatigueShareFailedMost } from '@/shared/plan/limits/thermal-fatigue'
import { laminate } from '@/shared/plan/parameters/laminate'
import { alloyFamily, serviceYears } from '@/shared/plan/parameters/programme'
import {
  leadlessParts,
  useCycles,
  type LeadlessPart,
  type UseCycle,
} from '@/shared/plan/parameters/thermal-fatigue'
import { formatQuantity } from '@/shared/quantity/format'
import { undetermined, type Part } from '@/shared/rules/finding'
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

/** Within half of what is allowed is marginal: the model is no better known. */
const GUARD_DAMAGE = 0.5

export const leadlessFatigue = rule({
  id: 'leadless-fatigue',
  title: 'Fatigue of leadless parts',
  why: 'A stiff part that expands less than the board shears its outermost joints at every swing; the larger the part and the lower the joint, the sooner they crack.',
  stage: 'specification',
  version: 1,
  reads: {
    parts: optional(leadlessParts),
    cycles: optional(useCycles),
    laminate,
    years: serviceYears,
    family: alloyFamily,
    most: fatigueShareFailedMost,
  },
  judge({ parts: listed, cycles, laminate: key, years, family, most }) {
    const limit = `At most ${formatQuantity(most.value, '%')} of the joints failed at the end of service (${most.document})`
    const sources = [ENGELMAIER.source, most.limit.byDefault.from]
    if (listed === undefined || cycles === undefined) {
      const what = listed === undefined ? 'leadless parts' : 'temperature cycles in service'
      return {
        verdict: 'meets',
        found: `No ${what} are specified.`,
        measured: { leadlessParts: listed !== undefined, serviceCycles: cycles !== undefined },
        limit,
        working: [],
        sources,
      }
    }
    const { inPlaneExpansionPpmK: board, label }: Laminate = LAMINATES[key]
    if (board === undefined) {
      return undetermined(
        `The in-plane expansion of ${label} is not in the table.`,
        ['the in-plane expansion of the laminate'],
        limit,
      )
    }
    return judgedByParts({
      parts: listed.map((part) => forFamily(judgePart(part, board, cycles, years, most.value / 100), family)),
      noun: 'leadless parts',
      limit,
      working: [
        {
          label: 'Cycles to a share of failures',
          formula:
            'N₅₀ = ½ · (2ε_f/Δγ)^(−1/c), Δγ = L/h · |Δα · ΔT|, c = −0.442 − 6·10⁻⁴ · T̄ + 1.74·10⁻² · ln(1 + 360/t); N(x) = N₅₀ · (ln(1 − x)/ln ½)^(1/4)',
          numbers: `ε_f = 0.325, x = ${formatQuantity(most.value, '%')}, board ${formatQuantity(board, 'ppm/K')}`,
          result: 'damage = Σ cycles of service/N(x), by row below',
        },
      ],
      sources,
      notes: [ENGELMAIER.caution],
    })
  },
})

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

/** Share of the life used up, damage of all swings added up; at 1 the allowed share has failed. */
function judgePart(
  { part: subject, halfSpanMm, heightMm, expansionPpmK }: LeadlessPart,
  boardPpmK: number,
  cycles: readonly UseCycle[],
  years: number,
  shareFailed: number,
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
    margin: { found: damage, limit: 1, unit: '1', direction: 'at most', guardBand: GUARD_DAMAGE },
  })
  return part.verdict === 'meets'
    ? part
    : {
        ...part,
        remedy: {
          says: `${subject}: use a smaller or leaded part, a higher joint, or a laminate nearer to it in expansion.`,
        },
      }
}
