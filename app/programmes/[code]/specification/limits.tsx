import { LimitTable } from '@/app/findings/limit-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { ALL_LIMITS, itemHolding } from '@/shared/catalogue/standard-plan'
import { governingRequirement } from '@/shared/plan/requirement'
import { isNarrowed, type SheetFilter } from './sheet-filter'

/** Every limit of the programme with its layers, as far as the filter lets it through. */
export function Limits({ view, filter }: { view: ProgrammeView; filter: SheetFilter }) {
  if (filter.shown === 'missing') return null
  const governingRequirements = ALL_LIMITS.filter((limit) => {
    const item = itemHolding.limit(limit.key)
    return (
      (!filter.stage || item?.stage === filter.stage) &&
      (!filter.department || item?.owner === filter.department)
    )
  })
    .map((limit) => governingRequirement(limit, view.state.facts.requirements))
    .filter(({ relaxed }) => filter.shown !== 'relaxed' || relaxed)
  return (
    <Section
      id="limits"
      heading={`Limits in force: ${governingRequirements.length}`}
      fold={isNarrowed(filter) ? 'open' : 'shut'}
      lead="The strictest layer rules, unless one of higher authority expressly permits the looser value."
    >
      {governingRequirements.length > 0 ? (
        <LimitTable code={view.code} governingRequirements={governingRequirements} />
      ) : (
        <p>{filter.shown === 'relaxed' ? 'No limit is looser than its default.' : 'No limits here.'}</p>
      )}
    </Section>
  )
}
