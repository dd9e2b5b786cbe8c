import type { LeadHole } from '@/shared/plan/parameters/lead-holes'
import { formatQuantity } from '@/shared/quantity/format'
import type { WorkingLine } from '@/shared/rules/finding'
import { clean, shareInWords, type Clearance, type ClearanceTerms } from './lead-clearance-checks'

const LEAD_FORMULA: Record<LeadHole['leadShape'], string> = {
  round: 'diameter ± tolerance',
  square: '√2 · (side ± tolerance)',
  rectangular: '√(width² + thickness²), both sides ± tolerance',
  flat: '√(width² + thickness²), both sides ± tolerance',
}

const mm = (value: number): string => formatQuantity(clean(value), 'mm')

/** One row's clearance, so that it can be redone by hand. */
export function clearanceWorking(row: LeadHole, clearance: Clearance, terms: ClearanceTerms): WorkingLine[] {
  const { hole, lead, radial, tight, wide } = clearance
  const spreadMm = Math.hypot(hole.toleranceMm, lead.rootSumSquareMm) / 2
  return [
    ...platingWorking(row, clearance, terms),
    {
      label: `Lead of ${row.component}, least and most`,
      formula: LEAD_FORMULA[row.leadShape],
      result: `${mm(lead.minMm)} and ${mm(lead.maxMm)}`,
    },
    {
      label: 'Worst case, least',
      formula: '(hole least − lead most)/2',
      numbers: `(${mm(hole.minMm)} − ${mm(lead.maxMm)})/2`,
      result: mm(radial.worstCase.minMm),
    },
    {
      label: 'Worst case, most',
      formula: '(hole most − lead least)/2',
      numbers: `(${mm(hole.maxMm)} − ${mm(lead.minMm)})/2`,
      result: mm(radial.worstCase.maxMm),
    },
    {
      label: 'Root-sum-square',
      formula: 'nominal ± √(hole tolerance² + lead tolerance²)/2',
      numbers: `${mm(radial.nominalMm)} ± √(${mm(hole.toleranceMm)}² + ${mm(lead.rootSumSquareMm)}²)/2`,
      result: `${mm(radial.rootSumSquare.minMm)} to ${mm(radial.rootSumSquare.maxMm)}`,
    },
    {
      label: 'Share outside the window',
      formula:
        'Φ((least − c)/s) too tight and 1 − Φ((most − c)/s) too wide; s = √(hole² + lead²)/2 in standard deviations',
      numbers: `c = ${mm(radial.nominalMm)}, s = ${mm(spreadMm)}/${terms.sigmas} = ${mm(spreadMm / terms.sigmas)}`,
      result: `${shareInWords(tight)} and ${shareInWords(wide)}`,
    },
  ]
}

function platingWorking(row: LeadHole, { hole }: Clearance, { barrelUm }: ClearanceTerms): WorkingLine[] {
  if (row.holeGiven !== 'drilled' || !row.plated) return []
  return [
    {
      label: 'Finished hole',
      formula: 'drill − 2 · metal on the wall',
      numbers: `${mm(row.holeMm)} − 2 · ${formatQuantity(barrelUm, 'µm')}`,
      result: mm(hole.nominalMm),
    },
  ]
}
