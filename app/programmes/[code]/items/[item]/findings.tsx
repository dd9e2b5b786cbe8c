import { concessionAddress, findingAddress } from '@/app/addresses'
import { FindingSheet } from '@/app/findings/finding-sheet'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { concessionName, concessionStatus } from '@/shared/gate/concession'
import type { ItemState } from '@/shared/gate/item-status'
import { refusal } from '@/shared/policy'
import { canBeConceded, type Finding, type Verdict } from '@/shared/rules/finding'

/** What needs a hand comes first. */
const FIRST: Record<Verdict, number> = {
  fails: 0,
  undetermined: 1,
  marginal: 2,
  meets: 3,
  'not applicable': 4,
}

/** What the item's rules find on the values and records as they stand. */
export function Findings({ view, state }: { view: ProgrammeView; state: ItemState }) {
  const judged = state.item.definition.rules
    .flatMap((rule) => {
      const finding = view.judgement.findings.get(rule.id)
      return finding ? { rule, finding } : []
    })
    .toSorted((a, b) => FIRST[a.finding.verdict] - FIRST[b.finding.verdict])
  if (judged.length === 0) return null
  return (
    <Section
      id="findings"
      heading="Findings"
      lead="Judged on the values and records as they stand; each leads to its working and to where every input comes from."
    >
      {judged.map(({ rule, finding }) => (
        <FindingSheet
          key={rule.id}
          title={rule.title}
          href={findingAddress(view.code, rule.id)}
          finding={finding}
          code={view.code}
          cautioned
        >
          <ConcessionState view={view} finding={finding} />
        </FindingSheet>
      ))}
    </Section>
  )
}

/** Concessions and permits on the finding, or the way to ask for one while it does not pass. */
function ConcessionState({ view, finding }: { view: ProgrammeView; finding: Finding }) {
  const own = view.state.concessions.filter(({ rule }) => rule === finding.rule)
  if (own.length > 0)
    return (
      <p>
        {own.map((entry) => (
          <span key={entry.number} className="block">
            <a href={concessionAddress(view.code, entry.number)}>{concessionName(entry)}</a>:{' '}
            {concessionStatus(entry, finding, view.state.facts)}
            {entry.untilOn && `, until ${entry.untilOn}`}
          </span>
        ))}
      </p>
    )
  if (!canBeConceded(finding) || refusal('request-concession', view.actor)) return null
  return (
    <p>
      <a href={`${findingAddress(view.code, finding.rule)}#concessions`}>Ask for a concession</a> where it
      cannot be mended.
    </p>
  )
}
