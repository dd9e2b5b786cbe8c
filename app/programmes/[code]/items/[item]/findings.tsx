import { concessionAddress, findingAddress } from '@/app/addresses'
import { FindingBody, findingLook } from '@/app/findings/finding-sheet'
import { Balloon } from '@/app/ui/balloon'
import { Disclosure } from '@/app/ui/disclosure'
import { marginText } from '@/app/ui/margin-text'
import { Section } from '@/app/ui/section'
import { verdictMark } from '@/app/ui/verdict-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { concessionName, concessionStatus } from '@/shared/gate/concession'
import type { ItemState } from '@/shared/gate/item-status'
import { refusal } from '@/shared/policy'
import { counted } from '@/shared/quantity/counted'
import { canBeConceded, WANTS_REMEDY, type Finding, type Verdict } from '@/shared/rules/finding'
import type { AnyRule } from '@/shared/rules/rule'

/** What needs a hand comes first. */
const FIRST: Record<Verdict, number> = {
  fails: 0,
  undetermined: 1,
  marginal: 2,
  meets: 3,
  'not applicable': 4,
}

interface Judged {
  /** In the order of the item's declaration, from 1. */
  readonly number: number
  readonly rule: AnyRule
  readonly finding: Finding
}

/** What the item's rules find on the values and records as they stand; what raises no question is one line. */
export function Findings({ view, state }: { view: ProgrammeView; state: ItemState }) {
  const judged = state.item.definition.rules
    .flatMap((rule, position) => {
      const finding = view.judgement.findings.get(rule.id)
      return finding ? [{ number: position + 1, rule, finding }] : []
    })
    .toSorted((a, b) => FIRST[a.finding.verdict] - FIRST[b.finding.verdict])
  if (judged.length === 0) return null
  const raised = judged.filter(({ finding }) => finding.verdict !== 'not applicable')
  const others = judged.filter(({ finding }) => finding.verdict === 'not applicable')
  return (
    <Section
      id="findings"
      heading="Findings"
      lead="Judged on the values and records as they stand; each leads to its working and to where every input comes from."
    >
      <div className="finding-list">
        {raised.map((entry) => (
          <ItemFinding key={entry.rule.id} view={view} {...entry} />
        ))}
        {others.length > 0 && (
          <Disclosure
            summary={`${counted(others.length, 'check', 'checks')} that this programme does not raise`}
          >
            <ul className="finding-others">
              {others.map(({ rule, finding }) => (
                <li key={rule.id}>
                  <a href={findingAddress(view.code, rule.id)}>{rule.title}</a>: {finding.found}
                </li>
              ))}
            </ul>
          </Disclosure>
        )}
      </div>
    </Section>
  )
}

/** A finding with its number; unfolded where it wants a hand. */
function ItemFinding({ view, number, rule, finding }: Judged & { view: ProgrammeView }) {
  return (
    <details
      id={`finding-${rule.id}`}
      className={`disclosure-printed finding-line ${findingLook(finding)}`}
      open={WANTS_REMEDY[finding.verdict]}
      suppressHydrationWarning
    >
      <summary className="finding-summary">
        <Balloon number={number} verdict={finding.verdict} />
        <h3>{rule.title}</h3>
        {finding.margin && <span className="finding-short">{marginText(finding.margin)}</span>}
        {verdictMark(finding.verdict)}
      </summary>
      <FindingBody title={rule.title} finding={finding} code={view.code} cautioned>
        <ConcessionState view={view} finding={finding} />
        <p className="finding-more print-hidden">
          <a href={findingAddress(view.code, rule.id)}>
            Inputs and sources<span className="sr-only"> of {rule.title}</span>
          </a>
        </p>
      </FindingBody>
    </details>
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
