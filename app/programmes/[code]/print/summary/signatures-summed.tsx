import { gateAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { GateMark } from '@/app/ui/gate-mark'
import { RuledTable, type Column } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { GATE_SIGNATORIES, type GateState } from '@/shared/gate/gate'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import { STAGE_NAMES } from '@/shared/plan/stage'

/** The four gates with who signed each and when, and how many of its items are approved. */
export function SignaturesSummed({ view: { code, judgement } }: { view: ProgrammeView }) {
  const approved = ({ stage }: GateState): string => {
    const items = judgement.items.filter(
      ({ item, status }) => item.definition.stage === stage && status !== 'not applicable',
    )
    return `${items.filter(({ status }) => status === 'approved').length} of ${items.length}`
  }
  return (
    <Section heading="Signatures">
      <RuledTable
        caption="Gates and who signed them"
        captionHidden
        rows={judgement.gates}
        rowKey={({ stage }) => stage}
        columns={[
          {
            label: 'Gate',
            names: true,
            cell: ({ stage }) => <a href={gateAddress(code, stage)}>{STAGE_NAMES[stage]}</a>,
          },
          { label: 'Status', set: 'shrink', cell: ({ status }) => <GateMark status={status} /> },
          { label: 'Items approved', set: 'shrink', cell: approved },
          { label: 'In its way', set: 'shrink', cell: ({ blockers }) => blockers.length || 'nothing' },
          ...GATE_SIGNATORIES.map(signedBy),
        ]}
      />
    </Section>
  )
}

const signedBy = (department: Department): Column<GateState> => ({
  label: DEPARTMENT_NAMES[department],
  cell: ({ signatures }) => {
    const found = signatures.find((entry) => entry.department === department)
    if (!found?.signature) return <span className="faint">not signed</span>
    const { personName, at } = found.signature
    return (
      <>
        {personName}, <Day at={at} />
        {!found.holds && <strong> lapsed</strong>}
      </>
    )
  },
})
