import { findingAddress } from '@/app/addresses'
import { FindingSheet } from '@/app/findings/finding-sheet'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { ItemState } from '@/shared/gate/standing'

/** What the item's rules find on the values and records as they stand. */
export function Findings({ view, state }: { view: ProgrammeView; state: ItemState }) {
  const { rules } = state.item.definition
  if (rules.length === 0) return null
  return (
    <Section
      heading="Findings"
      lead="Judged on the values and records as they stand; each leads to its working and to where every input comes from."
    >
      {rules.map((rule) => {
        const finding = view.judgement.findings.get(rule.id)
        return (
          finding && (
            <FindingSheet
              key={rule.id}
              title={rule.title}
              href={findingAddress(view.code, rule.id)}
              finding={finding}
            />
          )
        )
      })}
    </Section>
  )
}
