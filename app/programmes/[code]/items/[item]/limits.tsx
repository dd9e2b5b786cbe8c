import { LimitTable } from '@/app/findings/limit-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { limitsBehind } from '@/shared/gate/signed-content'
import type { ItemState } from '@/shared/gate/item-status'
import { governingRequirement } from '@/shared/plan/requirement'

/** The limits in force on the item, which document each comes from, and the layers that give way. */
export function Limits({ view, state }: { view: ProgrammeView; state: ItemState }) {
  const governingRequirements = limitsBehind(state.item).map((limit) =>
    governingRequirement(limit, view.state.facts.requirements),
  )
  if (governingRequirements.length === 0) return null
  return (
    <Section id="limits" heading={`Limits in force (${governingRequirements.length})`} fold="shut">
      <LimitTable code={view.code} governingRequirements={governingRequirements} statedOnPaper />
    </Section>
  )
}
