import { IndexAgainstLimit } from '@/app/drawing/index-against-limit'
import { findingAddress } from '@/app/addresses'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { platingCapabilityMin, platingConfidenceMin } from '@/shared/plan/limits/evaluation-plating'
import { governingRequirement } from '@/shared/plan/requirement'
import { formatNumber } from '@/shared/quantity/format'
import type { Lot } from '@/shared/records/lot'
import { platingIndexesOf } from '@/shared/plating/plating-index'

/** How surely the lot's plating keeps from its minimum, place by place; too few readings are said so. */
export function PlatingCapabilityDrawn({ view, lot }: { view: ProgrammeView; lot: Lot }) {
  const { facts } = view.state
  const sure = governingRequirement(platingConfidenceMin, facts.requirements).value
  const own = platingIndexesOf(facts, sure / 100).filter(({ lots }) => lots.some(({ id }) => id === lot.id))
  if (own.length === 0) return null
  return (
    <Section
      heading="Capability of the plating"
      lead="How far the mean keeps from the least thickness, in three standard deviations. An index speaks for the next lot only if the plating was steady."
      aside={<a href={findingAddress(view.code, 'plating-capability')}>The finding and its working</a>}
    >
      <IndexAgainstLimit
        title="Index against what is asked"
        atLeast={governingRequirement(platingCapabilityMin, facts.requirements).value}
        confidence={`${formatNumber(sure)} % confident`}
        rows={own.map(({ where, readings, lots, result }) => ({
          name: `${where}${lots.length > 1 ? ` (${lots.length} lots)` : ''}`,
          readings,
          ...('open' in result ? { none: result.open } : { index: result.index, bound: result.bound }),
        }))}
      />
    </Section>
  )
}
