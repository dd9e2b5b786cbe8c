import { FindingSheet } from '@/app/findings/finding-sheet'
import { StampRow } from '@/app/frame/stamp-row'
import { DepartmentTag } from '@/app/ui/department-tag'
import { Section } from '@/app/ui/section'
import { StatusMark } from '@/app/ui/status-mark'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { learntIn } from '@/shared/lessons/lesson'
import type { ItemState } from '@/shared/gate/item-status'
import { EvidencePrinted } from './evidence-printed'
import { itemPart } from './parts'
import { ValuesPrinted } from './values-printed'

/** One item in full: what it asks, what is specified, what was found with its working, and who agreed. */
export function ItemPrinted({ view, state }: { view: ProgrammeView; state: ItemState }) {
  const { definition, tailoredOut, lesson } = state.item
  const findings = definition.rules.flatMap((rule) => {
    const finding = view.judgement.findings.get(rule.id)
    return finding ? [{ rule, finding }] : []
  })
  return (
    <Section
      id={itemPart(definition.key)}
      level={3}
      heading={definition.title}
      aside={<StatusMark status={state.status} />}
    >
      <p>
        <DepartmentTag department={definition.owner} /> {definition.asks}
        {lesson && !lesson.inAsks && ` ${learntIn(lesson)}`}
      </p>
      {tailoredOut && (
        <p>
          Not applicable, proposed by {tailoredOut.proposedByName}: {tailoredOut.reason}{' '}
          {tailoredOut.agreed ? `Agreed by ${tailoredOut.agreed.byName}.` : 'Not agreed yet.'}
        </p>
      )}
      <ValuesPrinted view={view} parameters={definition.parameters} />
      {findings.map(({ rule, finding }) => (
        <FindingSheet key={rule.id} title={rule.title} finding={finding} cautioned printedInFull />
      ))}
      <EvidencePrinted entries={view.state.evidence.filter(({ itemKey }) => itemKey === definition.key)} />
      <StampRow
        meaning="Approved"
        wanted="not approved yet"
        signed={state.approvals.map(({ approval, ...rest }) => ({ ...rest, signature: approval }))}
      />
    </Section>
  )
}
