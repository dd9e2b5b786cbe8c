import { actionAddress, concessionAddress, findingAddress, gateAddress, itemAddress } from '@/app/addresses'
import { Notice } from '@/app/ui/notice'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { Blocker, GateState } from '@/shared/gate/gate'
import { stageBefore } from '@/shared/plan/stage'

/** Everything in the way of the gate, each with a link to where it is mended. */
export function Blockers({ code, gate }: { code: string; gate: GateState }) {
  if (gate.blockers.length === 0) {
    return (
      <Notice kind="success" title="Nothing is in the way">
        Every item of the stage is approved or set aside.
      </Notice>
    )
  }
  return (
    <Section
      heading="What is in the way"
      lead="The gate opens only when this list is empty and the three departments have signed."
    >
      <RuledTable
        caption="What is in the way of the gate"
        captionHidden
        groups={byItem(gate.blockers).map(({ title, blockers }) => ({
          key: title,
          heading: title,
          rows: blockers,
        }))}
        rowKey={(blocker, position) => `${blocker.itemKey} ${position}`}
        columns={[
          {
            label: 'What',
            names: true,
            cell: (blocker) => <a href={placeOf(code, gate, blocker)}>{blocker.says}</a>,
          },
        ]}
      />
    </Section>
  )
}

/** The blockers of one item together, in the order of the route card. */
function byItem(blockers: readonly Blocker[]) {
  const titles = [...new Set(blockers.map(({ title }) => title))]
  return titles.map((title) => ({ title, blockers: blockers.filter((blocker) => blocker.title === title) }))
}

function placeOf(code: string, gate: GateState, { itemKey, shortfall }: Blocker): string {
  if (!itemKey || !shortfall) {
    const before = stageBefore(gate.stage)
    return gateAddress(code, before ?? gate.stage)
  }
  const { kind, target } = shortfall
  if (kind === 'finding') return findingAddress(code, target)
  if (kind === 'action') return actionAddress(code, target)
  if (kind === 'concession') return concessionAddress(code, target)
  return `${itemAddress(code, itemKey)}${kind === 'value' ? `#${target}` : kind === 'approval' ? '#approvals' : kind === 'evidence' ? '#evidence' : ''}`
}
