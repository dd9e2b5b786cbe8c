import type { ProducibilityLevel } from '@/shared/materials/hole-allowances'
import { published } from '@/shared/sources/provenance'
import { holeWindow } from '@/shared/physics/hole-window'
import {
  clearanceOutsideMax,
  flatLeadGapMax,
  radialClearanceMin,
  radialClearanceMax,
} from '@/shared/plan/limits/lead-holes'
import {
  clearanceShareGuard,
  clearanceWindowGuard,
  flatLeadGuard,
  leadEntryGuard,
} from '@/shared/plan/limits/specification-guards'
import {
  clearanceBasis,
  drillSeries,
  barrelPlating,
  leadHoles,
  producibilityLevel,
  toleranceSigmas,
  type LeadHole,
} from '@/shared/plan/parameters/lead-holes'
import { formatQuantity } from '@/shared/quantity/format'
import { undetermined, verdictOn, type Part } from '@/shared/rules/finding'
import { decidingPart, judgedByParts, partOrContradiction } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import { proposeHole, withinBoth, type ProposalTerms } from '@/shared/holes/hole-proposal'
import { clearanceOf, decidingCheck, type ClearanceTerms } from '@/shared/holes/lead-clearance-checks'
import { clearanceWorking } from '@/shared/holes/lead-clearance-working'

export const leadClearance = rule({
  id: 'lead-clearance',
  title: 'Clearance between lead and hole',
  why: 'Too tight, and the lead does not enter or flux and air cannot leave; too wide, and the gap does not hold the solder, which drops out or does not rise.',
  formula: '(hole − lead)/2 within the window: worst case, or share outside by √(hole² + lead²)/2',
  stage: 'specification',
  version: 2,
  reads: {
    holes: leadHoles,
    wall: barrelPlating,
    min: radialClearanceMin,
    max: radialClearanceMax,
    flatGap: flatLeadGapMax,
    outside: clearanceOutsideMax,
    windowGuard: clearanceWindowGuard,
    shareGuard: clearanceShareGuard,
    entryGuard: leadEntryGuard,
    flatGuard: flatLeadGuard,
    basis: optional(clearanceBasis),
    sigmas: optional(toleranceSigmas),
    series: optional(drillSeries),
    level: optional(producibilityLevel),
  },
  judge({ holes, wall, basis = 'worst-case', sigmas = 3, series, level, ...limits }) {
    const terms: ClearanceTerms = { ...limits, barrelUm: wall, basis, sigmas }
    if (!(terms.min.value < terms.max.value)) return emptyWindow(terms)
    const parts = holes.map((row, index) =>
      partOrContradiction(row.component, () =>
        judgeRow(row, terms, { index, barrelUm: wall, series, level }),
      ),
    )
    const deciding = decidingPart(parts)
    const row = deciding && holes[parts.indexOf(deciding)]
    return judgedByParts({
      parts,
      noun: 'joint types',
      limit: limitInWords(terms),
      working: row && deciding.margin ? clearanceWorking(row, clearanceOf(row, terms), terms) : [],
      sources: [
        terms.min.limit.byDefault.from,
        published(
          'IPC-2222B, hole rule applied to the diagonal of a lead with corners, as the source of KiCad does',
        ),
      ],
      notes: [
        `The share takes hole and lead as centred on nominal, independent and normal, with ± as ${formatQuantity(sigmas, '1')} standard deviations: an assumption until they are measured.`,
        ...(terms.min.relaxed || terms.max.relaxed ? ['The window in force is wider than the default.'] : []),
      ],
    })
  },
})

interface Proposal extends ProposalTerms {
  /** The remedy keeps to its window as well. */
  readonly level: ProducibilityLevel | undefined
}

function judgeRow(row: LeadHole, terms: ClearanceTerms, proposal: Proposal): Part {
  const clearance = clearanceOf(row, terms)
  const { margin, measured, message } = decidingCheck(row, clearance, terms)
  const verdict = verdictOn(margin)
  const part: Part = {
    subject: row.component,
    verdict,
    found: message,
    margin,
    ...(measured && { measured }),
  }
  if (verdict === 'meets') return part
  const { min, max } = terms
  const { hole, lead } = clearance
  const own = {
    minMm: lead.maxMm + 2 * Math.max(min.value, row.leadPositionMm ?? 0),
    maxMm: Math.min(lead.minMm + 2 * max.value, maxForFlat(row, terms)),
  }
  const byLevel = row.plated && proposal.level ? holeWindow(lead, proposal.level) : own
  return {
    ...part,
    remedy: proposeHole({
      ...proposal,
      row,
      hole,
      lead,
      ...withinBoth(own, byLevel, hole.toleranceMm),
      guardMm: 2 * (terms.windowGuard.value / 100) * (max.value - min.value),
    }),
  }
}

/** A hole's most as the flat-lead limit sees it, which speaks of nominal holes. */
function maxForFlat(row: LeadHole, { flatGap, flatGuard }: ClearanceTerms): number {
  const { leadShape, leadThicknessMm, holeToleranceMm } = row
  return leadShape === 'flat' && leadThicknessMm !== undefined
    ? leadThicknessMm + flatGap.value * (1 - flatGuard.value / 100) + holeToleranceMm
    : Infinity
}

const emptyWindow = ({ min, max }: ClearanceTerms) =>
  undetermined(
    `The window is empty: at least ${formatQuantity(min.value, 'mm')} (${min.document}), at most ${formatQuantity(max.value, 'mm')} (${max.document}).`,
    ['limits on the radial clearance that leave a window'],
  )

function limitInWords({ min, max, outside, basis }: ClearanceTerms): string {
  const documents = [...new Set([min.document, max.document])].join('; ')
  const window = `${formatQuantity(min.value, 'mm')} to ${formatQuantity(max.value, 'mm')} radial (${documents})`
  return basis === 'worst-case'
    ? `${window}, every lead in every hole`
    : `${window} for all but ${formatQuantity(outside.value, 'per million')} of the joints (${outside.document})`
}
